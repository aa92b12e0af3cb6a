import { type Document, isMap, isScalar, isSeq, type Node, parseDocument, visit } from 'yaml'
import { MOST_ALIASES, readYaml } from './read-yaml.js'
import { YAML_OPTIONS } from './yaml-options.js'

/** Where a value stands in an order: `['stars', 0, 'tip-angle']`. */
export type OrderPlace = readonly (string | number)[]

/** What a place can be given: a scalar as people type it, or a whole entry of a list. */
export type OrderValue =
  | string
  | number
  | boolean
  | readonly OrderValue[]
  | { readonly [key: string]: OrderValue }

/** An order's YAML with its comments and spelling. */
export type OrderDocument = Document

/** The order as a document that keeps the maker's comments and spelling. */
export const orderDocument = (text: string): OrderDocument => parseDocument(text, YAML_OPTIONS)

/** Widths of the writer are set so that it breaks no line of the maker's. */
const AS_WRITTEN = { lineWidth: 0, flowCollectionPadding: true } as const

/** With the line breaks of the text it was. */
const writtenAs = (document: OrderDocument, text: string): string => {
  const written = document.toString(AS_WRITTEN)
  return text.includes('\r\n') ? written.replaceAll(/\r?\n/g, '\r\n') : written
}

/** Signs that a word can hold anywhere in YAML without quotes. */
const PLAIN = /^[\p{L}\d][\p{L}\d ./½¼¾°'"+-]*$/u

/**
 * The order's text with one value set, or taken out where it is undefined, a group that held nothing else with it;
 * everything else stays as the maker wrote it, comments too. The text must be YAML that can be read.
 */
export const editedOrder = (text: string, place: OrderPlace, value: OrderValue | undefined): string => {
  const document = orderDocument(text)
  const node: unknown = document.getIn(place, true)
  if (value === undefined) {
    if (node === undefined) return text
    document.deleteIn(place)
    leaveNoEmptyGroup(document, place.slice(0, -1))
    return writtenAs(document, text)
  }
  // The range of a block text takes in the line break after it.
  const range = isScalar(node) && !node.type?.startsWith('BLOCK') && isSimple(value) ? node.range : undefined
  if (range)
    return text.slice(0, range[0]) + scalarText(value as string | number | boolean) + text.slice(range[1])
  const written = document.createNode(value)
  // A list on one line stays on one, with what is said behind it.
  if (isSeq(written) && isSeq(node) && node.flow === true) {
    written.flow = true
    written.comment = node.comment ?? null
  }
  document.setIn(place, written)
  return writtenAs(document, text)
}

/**
 * The order's text with every alias (`*size`) written out, so that a change of one value changes no other. A text without
 * one, or one that cannot be read, stays as it is.
 */
export const withoutAliases = (text: string): string => {
  if (!text.includes('*') || !readYaml(text).ok) return text
  const document = orderDocument(text)
  let found = 0
  visit(document, {
    Alias: (_, alias) => {
      found += 1
      // One that holds itself has no end.
      if (found > MOST_ALIASES) return visit.BREAK
      return alias.resolve(document)?.clone() as Node | undefined
    },
  })
  if (found === 0 || found > MOST_ALIASES) return text
  visit(document, {
    Node: (_, node) => {
      if ('anchor' in node) delete node.anchor
    },
  })
  return writtenAs(document, text)
}

/** A backing with every key left open is still a backing, a star still a star; other groups say nothing then. */
const leaveNoEmptyGroup = (document: Document, place: OrderPlace): void => {
  const node: unknown = document.getIn(place, true)
  if (!isMap(node) || node.items.length > 0 || typeof place.at(-1) !== 'string' || place.at(-1) === 'backing')
    return
  document.deleteIn(place)
  leaveNoEmptyGroup(document, place.slice(0, -1))
}

/** The value at a place as the maker wrote it; undefined where there is none, or a group or list. */
export const writtenAt = (document: Document, place: OrderPlace): string | undefined => {
  const node: unknown = document.getIn(place, true)
  return isScalar(node) && node.value !== null ? String(node.source ?? node.value) : undefined
}

/** How many entries the list at a place has as it is written; 0 where there is none. */
export const countAt = (document: Document, place: OrderPlace): number => {
  const node: unknown = document.getIn(place, true)
  return isSeq(node) ? node.items.length : 0
}

/** What stands in the list at a place, as the maker wrote it; empty words for groups and lists within. */
export const entriesAt = (document: Document, place: OrderPlace): readonly string[] =>
  Array.from({ length: countAt(document, place) }, (_, index) => writtenAt(document, [...place, index]) ?? '')

const isSimple = (value: OrderValue): boolean => typeof value !== 'object'

/** A number stays a number; words that YAML could take for something else are quoted. */
const scalarText = (value: string | number | boolean): string => {
  if (typeof value !== 'string') return String(value)
  const { contents } = orderDocument(value)
  const read: unknown = isScalar(contents) ? contents.value : undefined
  return PLAIN.test(value) && read === value && value === value.trim() ? value : JSON.stringify(value)
}
