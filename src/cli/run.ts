import yargs, { type Argv } from 'yargs'
import { DRAWING_NAMES } from '../compose/drawing-names.js'
import { ORDER_FLAGS } from '../order/flags.js'
import { didYouMean } from '../order/unknown-keys.js'
import { addOrderFlags, type Typed } from './order-flags.js'
import { STANDARD_INPUT } from './standard-input.js'
import { fault, usageError } from './terminal.js'

/** A mistake in the words of the command line itself, as yargs tells it. */
interface UsageMistake {
  readonly usage: string
}

/**
 * Runs one command line.
 *
 * @returns the exit code: 0 done, 1 a fault of ours, 2 the order or the command line must be mended
 */
export const run = async (words: readonly string[]): Promise<number> => {
  let exitCode = 0
  const after = (handle: (typed: Typed) => Promise<number>) => async (typed: Typed) => {
    exitCode = await handle(typed)
  }
  try {
    await commandLine(words, after).parseAsync()
    return exitCode
  } catch (error) {
    if (isUsageMistake(error)) return usageError(withSuggestions(error.usage))
    return fault(error)
  }
}

/** Adds the flag that was probably meant to yargs's `Unknown argument: pints`. */
const withSuggestions = (usage: string): string => {
  const unknown = /^Unknown arguments?: (.+)$/m.exec(usage)?.[1]?.split(', ') ?? []
  const flags = [
    ...ORDER_FLAGS.map(({ name }) => name),
    'star',
    'out',
    'to',
    'quiet',
    'json',
    'help',
    'version',
  ]
  const meant = unknown.map((word) =>
    didYouMean(word, flags).replace('Did you mean ', 'Did you mean --').trim(),
  )
  return [usage, ...meant].filter(Boolean).join('\n')
}

const isUsageMistake = (error: unknown): error is UsageMistake =>
  typeof error === 'object' && error !== null && 'usage' in error

type After = (handle: (typed: Typed) => Promise<number>) => (typed: Typed) => Promise<void>

/** Words that ask for help or for the completion of a word. */
const ASKS = ['--help', '-h', 'help', '--get-yargs-completions']

const commandLine = (words: readonly string[], after: After): Argv => {
  const told = words.some((word) => ASKS.includes(word))
  // yargs loses a lone `-` among positionals.
  return yargs(words.map((word) => (word === '-' ? STANDARD_INPUT : word)))
    .scriptName('starwright')
    .locale('en')
    .wrap(told ? 90 : null)
    .parserConfiguration({
      'camel-case-expansion': false,
      'dot-notation': false,
      'boolean-negation': false,
      'parse-numbers': false,
      'parse-positional-numbers': false,
    })
    .usage('Cut plans and full-size patterns for flat wooden stars.\n\nUsage: $0 <command> [ORDER] [flags]')
    .command(
      'make [ORDER]',
      'Write every file of an order: patterns, mats, backings, cut plan',
      (command) =>
        addOrderFlags(command, told)
          .option('out', {
            type: 'string',
            requiresArg: true,
            demandOption: 'Say where the files go: --out FOLDER',
            describe: 'Folder for the files; made when it is not there',
          })
          .option('quiet', { type: 'boolean', describe: 'Print nothing but problems' })
          .example('$0 make winter-fair.yaml --out fair', 'every file of an order')
          .example('$0 make --points 5 --slenderest --board-width 70mm --out star', 'one star from flags'),
      after(async (typed) => (await import('./make.js')).make(typed)),
    )
    .command(
      'plan [ORDER]',
      'Print the cut plan: angles, stops, boards, warnings',
      (command) =>
        addOrderFlags(command, told)
          .option('json', { type: 'boolean', describe: 'For programs: mm and degrees, unrounded' })
          .example('$0 plan winter-fair.yaml', 'the cut plan of an order')
          .example(
            '$0 plan --points 5 --tip-angle 45 --board-width 3-1/2in --units in',
            'of one star from flags',
          )
          .example(
            '$0 plan winter-fair.yaml --paper letter --kerf 3mm',
            'with two values of the order changed',
          ),
      after(async (typed) => (await import('./plan.js')).plan(typed)),
    )
    .command(
      'draw <DRAWING> [ORDER]',
      `Write one drawing: ${DRAWING_NAMES.join(', ')}`,
      (command) =>
        addOrderFlags(command, told)
          .positional('DRAWING', { type: 'string', choices: DRAWING_NAMES, describe: 'Which drawing' })
          .option('to', {
            type: 'string',
            requiresArg: true,
            demandOption: 'Say which file: --to FILE.svg, FILE.dxf or FILE.pdf',
            describe: 'The file; its ending says the format: .svg, .dxf or .pdf',
          })
          .option('quiet', { type: 'boolean', describe: 'Print nothing but problems' })
          .example(
            '$0 draw backing winter-fair.yaml --star Chapel --to chapel.dxf',
            'one backing for the router',
          )
          .example('$0 draw arm-pattern --regular 6/2 --across 300mm --to arm.pdf', 'one pattern from flags'),
      after(async (typed) => (await import('./draw.js')).draw(typed)),
    )
    .completion('completion', 'Print a script that completes commands and flags in your shell')
    .demandCommand(1, 'Say what to do: make, plan or draw.')
    .strict()
    .recommendCommands()
    .alias({ help: 'h' })
    .version(VERSION)
    .exitProcess(false)
    .fail((message, error) => {
      throw message ? ({ usage: message } satisfies UsageMistake) : error
    })
}

/** Set by the build from package.json. */
declare const STARWRIGHT_VERSION: string | undefined
const VERSION = typeof STARWRIGHT_VERSION === 'string' ? STARWRIGHT_VERSION : 'development'
