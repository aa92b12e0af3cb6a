import yargs, { type Argv } from 'yargs'
import { DRAWING_NAMES } from '../compose/drawing-names.js'
import { addOrderFlags, type Typed } from './order-flags.js'
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
    if (isUsageMistake(error)) return usageError(error.usage)
    return fault(error)
  }
}

const isUsageMistake = (error: unknown): error is UsageMistake =>
  typeof error === 'object' && error !== null && 'usage' in error

type After = (handle: (typed: Typed) => Promise<number>) => (typed: Typed) => Promise<void>

const commandLine = (words: readonly string[], after: After): Argv =>
  yargs([...words])
    .scriptName('starwright')
    .locale('en')
    .wrap(90)
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
        addOrderFlags(command)
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
        addOrderFlags(command)
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
        addOrderFlags(command)
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
      throw error ?? ({ usage: message } satisfies UsageMistake)
    })

/** Set by the build from package.json. */
declare const STARWRIGHT_VERSION: string | undefined
const VERSION = typeof STARWRIGHT_VERSION === 'string' ? STARWRIGHT_VERSION : 'development'
