import type { Units } from '../units/read-length.js'
import { isBareLength } from './bare-length.js'
import { editedOrder, type OrderPlace, orderDocument, writtenAt } from './edit-text.js'
import { isGroup } from './group.js'
import { orderSchema } from './schema.js'
import { bareNode, isLength, type SchemaNode, schemaNode } from './schema-node.js'

/**
 * The order's text in other units: every bare length keeps what it measures and gets its old unit written after it.
 *
 * @param units what bare numbers were read in
 */
export const withUnits = (text: string, units: Units, wanted: Units): string => {
  const document = orderDocument(text)
  const bare = lengthPlaces(schemaNode(orderSchema(units)), document.toJS(), []).flatMap((place) => {
    const written = writtenAt(document, place)
    return written !== undefined && isBareLength(written, units)
      ? [[place, `${written} ${units}`] as const]
      : []
  })
  const spelt = bare.reduce((before, [place, value]) => editedOrder(before, place, value), text)
  return editedOrder(spelt, ['units'], wanted)
}

const lengthPlaces = (node: SchemaNode, value: unknown, place: OrderPlace): OrderPlace[] => {
  if (isLength(node)) return [place]
  const { item, entries } = bareNode(node)
  if (item && Array.isArray(value))
    return value.flatMap((inside, index) => lengthPlaces(item, inside, [...place, index]))
  if (!entries || !isGroup(value)) return []
  return Object.entries(value).flatMap(([key, inside]) => {
    const known = Object.hasOwn(entries, key) ? entries[key] : undefined
    return known ? lengthPlaces(known, inside, [...place, key]) : []
  })
}
