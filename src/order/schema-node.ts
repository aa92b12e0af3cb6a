import { type GenericSchema, getDescription } from 'valibot'

/** A node of the order's schema, as far as a walk needs to see into it. */
export interface SchemaNode {
  readonly type?: string
  readonly entries?: Readonly<Record<string, SchemaNode>>
  readonly item?: SchemaNode
  readonly wrapped?: SchemaNode
  readonly pipe?: readonly SchemaNode[]
  readonly metadata?: Readonly<Record<string, unknown>>
}

export const schemaNode = (schema: GenericSchema): SchemaNode => schema as unknown as SchemaNode

/** The node itself, without what makes it optional or checks it further; the pipe of a value is kept. */
export const bareNode = (node: SchemaNode): SchemaNode => {
  const inner = node.wrapped ?? (node.entries || node.item ? undefined : node.pipe?.[0])
  return inner && inner !== node ? bareNode(inner) : node
}

/** The node a path of keys leads to; list positions may be any number. */
export const nodeAt = (root: SchemaNode, path: readonly (string | number)[]): SchemaNode | undefined =>
  path.reduce<SchemaNode | undefined>((at, step) => {
    const inside = at && bareNode(at)
    return typeof step === 'number' ? inside?.item : inside?.entries?.[step]
  }, root)

/** What the node's key means, as the schema describes it. */
export const meaningOf = (node: SchemaNode): string | undefined =>
  getDescription((node.wrapped ?? node) as unknown as GenericSchema)

/** Does the node stand for a length? `fields.ts` marks them. */
export const isLength = (node: SchemaNode): boolean =>
  (node.wrapped ?? node).pipe?.some(({ metadata }) => metadata?.length === true) ?? false

/** The unit of a bare number there, of a measure that is no length; `measure-field.ts` tells it. */
export const bareUnit = (node: SchemaNode): string | undefined =>
  (node.wrapped ?? node).pipe?.flatMap(({ metadata }) =>
    typeof metadata?.bareUnit === 'string' ? [metadata.bareUnit] : [],
  )[0]

/** Every group of keys in which a key stands, as the words that lead to it: `['shop', 'saw']`. */
export const groupsWith = (root: SchemaNode, key: string): string[][] => {
  const { entries, item } = bareNode(root)
  if (item) return groupsWith(item, key)
  return Object.entries(entries ?? {}).flatMap(([name, inside]) => [
    ...(name === key ? [[]] : []),
    ...groupsWith(inside, key).map((group) => [name, ...group]),
  ])
}
