import type { Units } from '../units/read-length.js'
import { isBareLength } from './bare-length.js'
import { editedOrder, type OrderPlace, orderDocument, writtenAt } from './edit-text.js'
import { isGroup } from './group.js'
import { orderSchema } from './schema.js'
import { bareNode, bareUnit, isLength, type SchemaNode, schemaNode } from './schema-node.js'

/**
 * The order's text in other units: every bare length, temperature or other measure keeps what it says and gets its old
 * unit written after it.
 *
 * @param units what bare numbers were read in
 */
export const withUnits = (text: string, units: Units, wanted: Units): string => {
  const document = orderDocument(text)
  const measured = measuredPlaces(schemaNode(orderSchema(units)), document.toJS(), [], units)
  const spelt = measured.reduce((before, { place, unit, isLength }) => {
    const written = writtenAt(document, place)
    const bare = written !== undefined && (isLength ? isBareLength(written, units) : NUMBER.test(written))
    return bare ? editedOrder(before, place, `${written} ${unit}`.trim()) : before
  }, text)
  return editedOrder(spelt, ['units'], wanted)
}

const NUMBER = /^[-+−]?[\d.,]+$/

interface Measured {
  readonly place: OrderPlace
  /** Of a bare number. */
  readonly unit: string
  readonly isLength: boolean
}

const measuredPlaces = (node: SchemaNode, value: unknown, place: OrderPlace, units: Units): Measured[] => {
  if (isLength(node)) return [{ place, unit: units, isLength: true }]
  const unit = bareUnit(node)
  if (unit !== undefined) return [{ place, unit, isLength: false }]
  const { item, entries } = bareNode(node)
  if (item && Array.isArray(value))
    return value.flatMap((inside, index) => measuredPlaces(item, inside, [...place, index], units))
  if (!entries || !isGroup(value)) return []
  return Object.entries(value).flatMap(([key, inside]) => {
    const known = Object.hasOwn(entries, key) ? entries[key] : undefined
    return known ? measuredPlaces(known, inside, [...place, key], units) : []
  })
}
