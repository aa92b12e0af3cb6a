import { type GenericSchema, getDescription } from 'valibot'
import type { OrderFlag } from './flags.js'
import { orderSchema } from './schema.js'

interface Walkable {
  readonly entries?: Readonly<Record<string, GenericSchema & Walkable>>
  readonly item?: GenericSchema & Walkable
  readonly wrapped?: GenericSchema & Walkable
}

/** Tells of each flag what its key's description in the schema says. */
export const flagMeanings = (flags: readonly OrderFlag[]): ReadonlyMap<string, string> => {
  const order = orderSchema('mm')
  return new Map(flags.map((flag) => [flag.name, meaningOf(flag, order)]))
}

const meaningOf = ({ name, path, of }: OrderFlag, order: GenericSchema): string => {
  const steps = of === 'star' ? ['stars', 0, ...path] : path
  const schema = steps.reduce<(GenericSchema & Walkable) | undefined>((at, step) => {
    const inside = at?.wrapped ?? at
    return typeof step === 'number' ? inside?.item : inside?.entries?.[step]
  }, order)
  const meaning = schema && getDescription(schema.wrapped ?? schema)
  if (meaning === undefined) throw new Error(`the schema does not describe --${name}`)
  return meaning
}
