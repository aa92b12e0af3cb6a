import yargs, { type Argv } from 'yargs'
import { didYouMean } from '../order/did-you-mean.js'
import { ORDER_FLAGS } from '../order/flags.js'
import { COMMANDS, type Command } from './commands.js'
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
  const meant = unknown.map((word) =>
    (FLAGS.includes(word) ? undefined : didYouMean(word, FLAGS))?.replace('Did you mean ', 'Did you mean --'),
  )
  return [usage, ...meant].filter(Boolean).join('\n')
}

const FLAGS: readonly string[] = [
  ...ORDER_FLAGS.map(({ name }) => name),
  ...COMMANDS.flatMap(({ options }) => Object.keys(options)),
  'star',
  'help',
  'version',
]

const isUsageMistake = (error: unknown): error is UsageMistake =>
  typeof error === 'object' && error !== null && 'usage' in error

type After = (handle: (typed: Typed) => Promise<number>) => (typed: Typed) => Promise<void>

/** Words that ask for help or for the completion of a word. */
const ASKS = ['--help', '-h', 'help', '--get-yargs-completions']

/** After these a lone `-` is a name, not standard input. */
const NAMED_AFTER = ['--star', '--out', '--to', '--furniture']

const commandLine = (words: readonly string[], after: After): Argv => {
  // Meanings and examples only where they will be shown: yargs lays out the whole help on every run.
  const told = words.some((word) => ASKS.includes(word))
  // yargs loses a lone `-` among positionals.
  const line = yargs(
    words.map((word, index) =>
      word === '-' && !NAMED_AFTER.includes(words[index - 1] ?? '') ? STANDARD_INPUT : word,
    ),
  )
  for (const command of COMMANDS) addCommand(line, command, told, after)
  return line
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
    .usage(
      told
        ? 'Cut plans and full-size patterns for flat wooden stars.\n\nUsage: $0 <command> [ORDER] [flags]'
        : '',
    )
    .completion('completion', 'Print a script that completes commands and flags in your shell')
    .demandCommand(1, `Say what to do: ${COMMANDS.map(({ words }) => words.split(' ')[0]).join(', ')}.`)
    .strict()
    .recommendCommands()
    .alias({ help: 'h' })
    .version(VERSION)
    .exitProcess(false)
    .fail((message, error) => {
      throw message ? ({ usage: message } satisfies UsageMistake) : error
    })
}

const addCommand = (line: Argv, command: Command, told: boolean, after: After): void => {
  const build = (own: Argv): Argv => {
    const flags = addOrderFlags(own, told).options(command.options)
    for (const [name, positional] of Object.entries(command.positionals)) flags.positional(name, positional)
    if (told) for (const [example, does] of command.examples) flags.example(example, does)
    return flags
  }
  // `false` keeps a command out of the help; the types know that only in an overload of its own.
  const says = (told ? command.says : false) as string
  line.command(command.words, says, build, after(command.handle))
}

/** Set by the build from package.json. */
declare const STARWRIGHT_VERSION: string | undefined
const VERSION = typeof STARWRIGHT_VERSION === 'string' ? STARWRIGHT_VERSION : 'development'
