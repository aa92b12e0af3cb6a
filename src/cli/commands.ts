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
    words: 'risk [ORDER]',
    says: 'Print the chance that stars close: one, the whole batch, and what decides it',
    positionals: {},
    options: {
      set: {
        type: 'string',
        requiresArg: true,
        choices: ['told', 'marks', 'bare'],
        describe:
          'How the saw is set: told, as the plan tells; marks, on the nearest marks; bare, with a learned bias left in',
      },
      seed: { type: 'string', requiresArg: true, describe: 'Another number cuts other simulated stars' },
      simulated: { type: 'string', requiresArg: true, describe: 'How many stars are simulated; 200000' },
      json: { type: 'boolean', describe: 'For programs: mm, degrees and chances, unrounded' },
      to: {
        type: 'string',
        requiresArg: true,
        describe: "A file for the histogram of one star's gaps: .svg, .pdf or .dxf",
      },
      replace: REPLACE,
      furniture: OWN_FURNITURE,
      quiet: QUIET,
    },
    examples: [
      ['$0 risk winter-fair.yaml', 'the chances of each star of an order'],
      ['$0 risk winter-fair.yaml --set marks', 'with the saw on its nearest marks'],
      ['$0 risk winter-fair.yaml --star Chapel --to gaps.svg', 'and the histogram as a drawing'],
    ],
    handle: async (typed) => (await import('./risk.js')).risk(typed),
  },
  {
    words: 'choose [ORDER]',
    says: 'List the stars that your saw, boards and wall allow, the best first; compare two',
    positionals: {},
    options: {
      rank: {
        type: 'string',
        requiresArg: true,
        choices: ['ease', 'marks', 'size', 'wood'],
        describe:
          'The best first by: ease, likeliest to close on marks; marks, smallest gap on them; size; wood, least waste',
      },
      most: { type: 'string', requiresArg: true, describe: 'How many to list; 24' },
      compare: {
        type: 'string',
        nargs: 2,
        describe: 'Two stars, by number in the list or by name: 5/2, 5@45 (points@tip angle), Boathouse',
      },
      json: { type: 'boolean', describe: 'For programs: mm and degrees, unrounded; all stars' },
      to: {
        type: 'string',
        requiresArg: true,
        describe:
          'A file for the list with pictures, or for the two compared at true size: .svg, .pdf or .dxf',
      },
      replace: REPLACE,
      furniture: OWN_FURNITURE,
      quiet: QUIET,
    },
    examples: [
      ['$0 choose winter-fair.yaml --points 5', 'stars of five points for this shop'],
      ['$0 choose --board-width 70mm --wall-across 300mm', 'of all points, for a board and a wall'],
      ['$0 choose winter-fair.yaml --compare 5/2 Boathouse --to two.pdf', 'two stars over each other'],
    ],
    handle: async (typed) => (await import('./choose.js')).choose(typed),
  },
]
