import type { Argv } from 'yargs'
import { flagMeanings } from '../order/flag-meaning.js'
import { type FlagValues, ORDER_FLAGS } from '../order/flags.js'
import { done, type Outcome, type Problem, refused } from '../order/problem.js'

/** What yargs hands to a command: every value is text, a switch, or a list when a flag was repeated. */
export type Typed = Readonly<Record<string, unknown>>

/**
 * The flags every command takes: those that stand for keys of the order, and --star.
 *
 * @param told whether their meanings will be shown; yargs composes the help of every run otherwise, for a third of
 *   its time
 */
export const addOrderFlags = (command: Argv, told: boolean): Argv => {
  const withOrder = command
    .positional('ORDER', {
      type: 'string',
      describe: 'The order, a YAML or JSON file; - reads standard input',
    })
    .option('star', {
      type: 'string',
      requiresArg: true,
      describe: 'Only the star of this name; star flags change this one',
    })
  const meanings = told ? flagMeanings(ORDER_FLAGS) : undefined
  return ORDER_FLAGS.reduce((flags, { name, kind }) => {
    const shown = {
      describe: meanings?.get(name) ?? '',
      hidden: !told,
      group: 'In place of an order, or over it:',
    }
    return kind === 'switch'
      ? flags.option(name, { type: 'boolean', ...shown })
      : flags.option(name, { type: 'string', requiresArg: true, ...shown })
  }, withOrder)
}

/** The typed flags as text, or a problem for each that was given twice. */
export const flagValues = (typed: Typed): Outcome<FlagValues> => {
  const values: Record<string, string | true> = {}
  const problems: Problem[] = []
  for (const { name } of ORDER_FLAGS) {
    const value = typed[name]
    if (Array.isArray(value)) problems.push(twice(name))
    else if (value === true || typeof value === 'string') values[name] = value
  }
  for (const name of ['star', 'out', 'to', 'furniture'])
    if (Array.isArray(typed[name])) problems.push(twice(name))
  return problems.length > 0 ? refused(problems) : done(values)
}

const twice = (name: string): Problem => ({
  place: `--${name}`,
  given: 'more than one value',
  advice: 'Give the flag once.',
})
