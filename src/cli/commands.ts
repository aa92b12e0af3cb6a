import type { Options, PositionalOptions } from 'yargs'
import { DRAWING_NAMES } from '../compose/drawing-names.js'
import type { Typed } from './order-flags.js'

/** One command: its words, its own flags beside those of an order, and what it does when it is run. */
export interface Command {
  readonly words: string
  readonly says: string
  readonly positionals: Readonly<Record<string, PositionalOptions>>
  readonly options: Readonly<Record<string, Options>>
  /** Command line and what it does. */
  readonly examples: readonly (readonly [string, string])[]
  /** Loads its code when it is run, and gives the exit code. */
  readonly handle: (typed: Typed) => Promise<number>
}

const REPLACE: Options = { type: 'boolean', describe: 'Overwrite a file that is there' }
const OWN_FURNITURE: Options = {
  type: 'string',
  requiresArg: true,
  describe: 'Folder with your own title block, scale check and so on, as SVG; see templates/README.md',
}
const QUIET: Options = { type: 'boolean', describe: 'Print nothing but problems' }

export const COMMANDS: readonly Command[] = [
  {
    words: 'make [ORDER]',
    says: 'Write every file of an order: patterns, mats, backings, cut plan',
    positionals: {},
    options: {
      out: {
        type: 'string',
        requiresArg: true,
        demandOption: 'Say where the files go: --out FOLDER',
        describe: 'Folder for the files; made when it is not there',
      },
      furniture: OWN_FURNITURE,
      quiet: QUIET,
    },
    examples: [
      ['$0 make winter-fair.yaml --out fair', 'every file of an order'],
      ['$0 make --points 5 --slenderest --board-width 70mm --out star', 'one star from flags'],
    ],
    handle: async (typed) => (await import('./make.js')).make(typed),
  },
  {
    words: 'plan [ORDER]',
    says: 'Print the cut plan: angles, stops, boards, warnings',
    positionals: {},
    options: { json: { type: 'boolean', describe: 'For programs: mm and degrees, unrounded' } },
    examples: [
      ['$0 plan winter-fair.yaml', 'the cut plan of an order'],
      ['$0 plan --points 5 --tip-angle 45 --board-width 3-1/2in --units in', 'of one star from flags'],
      ['$0 plan winter-fair.yaml --paper letter --kerf 3mm', 'with two values of the order changed'],
    ],
    handle: async (typed) => (await import('./plan.js')).plan(typed),
  },
  {
    words: 'draw <DRAWING> [ORDER]',
    says: `Write one drawing: ${DRAWING_NAMES.join(', ')}`,
    positionals: { DRAWING: { type: 'string', choices: DRAWING_NAMES, describe: 'Which drawing' } },
    options: {
      to: {
        type: 'string',
        requiresArg: true,
        demandOption: 'Say which file: --to FILE.svg, FILE.dxf or FILE.pdf',
        describe: 'The file; its ending says the format: .svg, .dxf or .pdf',
      },
      replace: REPLACE,
      furniture: OWN_FURNITURE,
      quiet: QUIET,
    },
    examples: [
      ['$0 draw backing winter-fair.yaml --star Chapel --to chapel.dxf', 'one backing for the router'],
      ['$0 draw arm-pattern --regular 6/2 --across 300mm --to arm.pdf', 'one pattern from flags'],
    ],
    handle: async (typed) => (await import('./draw.js')).draw(typed),
  },
  {
    words: 'print-check [ORDER]',
    says: 'Write a page of rulers that tells what your printer makes of true lengths',
    positionals: {},
    options: {
      to: {
        type: 'string',
        requiresArg: true,
        describe: 'The PDF file; print-check.pdf when it is left out',
      },
      replace: REPLACE,
      furniture: OWN_FURNITURE,
      quiet: QUIET,
    },
    examples: [
      ['$0 print-check --paper a4', 'print-check.pdf for sheets of A4'],
      ['$0 print-check winter-fair.yaml --to check.pdf', "on the order's paper"],
    ],
    handle: async (typed) => (await import('./print-check.js')).printCheck(typed),
  },
  {
    words: 'page',
    says: 'Write the page for the workshop: one file that does all this in a browser',
    positionals: {},
    options: {
      to: { type: 'string', requiresArg: true, describe: 'The HTML file; star.html when it is left out' },
      open: { type: 'boolean', describe: 'Open it in the browser' },
      replace: REPLACE,
      quiet: QUIET,
    },
    examples: [['$0 page --to star.html --open', 'the page, opened']],
    handle: async (typed) => (await import('./page.js')).page(typed),
  },
]
