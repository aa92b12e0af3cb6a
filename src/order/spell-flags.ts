import type { GenericSchema } from 'valibot'
import type { Units } from '../units/read-length.js'
import { isBareLength } from './bare-length.js'
import { type FlagValues, ORDER_FLAGS, orderPath } from './flags.js'
import { isLength, nodeAt, schemaNode } from './schema-node.js'

/**
 * Flags over an order in other units: the unit is written behind every bare length among the flags, so that the order
 * can be read in its own.
 */
export const spellFlags = (schema: GenericSchema, values: FlagValues, units: Units): FlagValues => {
  const lengths = ORDER_FLAGS.filter((flag) => {
    const node = nodeAt(schemaNode(schema), orderPath(flag))
    return node !== undefined && isLength(node)
  }).map(({ name }) => name)
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) =>
      typeof value === 'string' && lengths.includes(name) && isBareLength(value, units)
        ? [name, `${value} ${units}`]
        : [name, value],
    ),
  )
}
