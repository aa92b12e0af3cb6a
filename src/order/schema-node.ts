/** A node of the order's schema, as far as a walk needs to see into it. */
export interface SchemaNode {
  readonly type?: string
  readonly entries?: Readonly<Record<string, SchemaNode>>
  readonly item?: SchemaNode
  readonly wrapped?: SchemaNode
  readonly pipe?: readonly SchemaNode[]
  readonly metadata?: Readonly<Record<string, unknown>>
}

/** The node itself, without what makes it optional or checks it further; the pipe of a value is kept. */
export const bareNode = (node: SchemaNode): SchemaNode => {
  const inner = node.wrapped ?? (node.entries || node.item ? undefined : node.pipe?.[0])
  return inner && inner !== node ? bareNode(inner) : node
}

/** Does the node stand for a length? `fields.ts` marks them. */
export const isLength = (node: SchemaNode): boolean =>
  (node.wrapped ?? node).pipe?.some(({ metadata }) => metadata?.length === true) ?? false
