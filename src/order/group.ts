/** A group of keys, as an order file has it. */
export type Group = Record<string, unknown>

export const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

export const asGroup = (value: unknown): Readonly<Group> | undefined => (isGroup(value) ? value : undefined)

export const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : [])
