import type { GenericSchema } from 'valibot'
import type { Units } from '../units/read-length.js'
import { type Group, isGroup } from './group.js'
import { bareNode, isLength, type SchemaNode } from './schema-node.js'

/** `70`, `70,5` or `3 1/2`: a length that leaves its unit to the order. */
const BARE = /^[\d., /½⅓⅔¼¾⅛⅜⅝⅞-]+$/

/**
 * Writes the order's unit behind every bare length, in place, so that a flag that changes the units changes how lengths
 * are shown and how bare flags are read, but not the lengths of the file.
 */
export const spellUnits = (schema: GenericSchema, root: unknown, units: Units): void =>
  spell(schema as unknown as SchemaNode, root, units)

const spell = (node: SchemaNode, value: unknown, units: Units): void => {
  const { item, entries } = bareNode(node)
  if (item && Array.isArray(value)) for (const entry of value) spell(item, entry, units)
  if (entries && isGroup(value))
    for (const key of Object.keys(value)) spellKey(entries[key], value, key, units)
}

const spellKey = (node: SchemaNode | undefined, group: Group, key: string, units: Units): void => {
  if (!node) return
  const value = group[key]
  if (!isLength(node)) spell(node, value, units)
  else if (typeof value === 'number' || (typeof value === 'string' && BARE.test(value)))
    group[key] = `${value} ${units}`
}
