import { type OrderFlag, orderPath } from './flags.js'
import { orderSchema } from './schema.js'
import { meaningOf, nodeAt, schemaNode } from './schema-node.js'

/** Tells of each flag what its key's description in the schema says. */
export const flagMeanings = (flags: readonly OrderFlag[]): ReadonlyMap<string, string> => {
  const order = schemaNode(orderSchema('mm'))
  return new Map(
    flags.map((flag) => {
      const node = nodeAt(order, orderPath(flag))
      const meaning = node && meaningOf(node)
      if (meaning === undefined) throw new Error(`the schema does not describe --${flag.name}`)
      return [flag.name, meaning]
    }),
  )
}
