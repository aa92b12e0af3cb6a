import type { Options, PositionalOptions } from 'yargs'
import { DRAWN_NAMES } from '../compose/drawing-names.js'
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
const SECONDS: Options = {
  type: 'string',
  requiresArg: true,
  describe: 'Longest search for room on panels; to its last step when left out',
}
const QUIET: Options = { type: 'boolean', describe: 'Print nothing but problems' }

const measured = (describe: string): Options => ({ type: 'string', requiresArg: true, describe })

const DRY_FIT_OPTIONS: Readonly<Record<string, Options>> = {
  gap: measured('Gap at the open end of the last joint, as 2.8mm or 2.8mm+-0.2mm; 0 when it closes'),
  'opens-at': {
    choices: ['valley', 'centre'],
    coerce: (end: unknown) => (end === 'center' ? 'centre' : end),
    requiresArg: true,
    describe: 'The end at which that gap opens',
  },
  'will-not-drop-in-by': measured(
    'The last arm will not drop in: laid against one neighbour, it overlaps the other by this much at the valley',
  ),
  'measured-tip': measured('Tip angle of an arm, as 45.2 or 45.2+-0.1; may be repeated, like the next four'),
  'measured-side': measured('Side angle of an arm, at the valley'),
  'measured-centre': measured('Centre angle of an arm'),
  'measured-tip-edge': measured('Tip edge of an arm, tip to valley'),
  'measured-across': measured('Tip to tip at the widest, over joints that are closed'),
  'angles-by': {
    choices: ['bevel-gauge', 'protractor'],
    requiresArg: true,
    describe: 'Tool for angles without +-: bevel-gauge (0.5 degrees either way) or digital protractor (0.2)',
  },
  'lengths-by': {
    choices: ['tape', 'rule', 'caliper'],
    requiresArg: true,
    describe: 'Tool for lengths without +-: tape (1 mm), rule (0.3 mm, usual for gaps) or caliper (0.1 mm)',
  },
  'cut-at': measured('What the saw read at the joint cuts; as planned when it is left out'),
  'clean-up': measured('Least thickness a new joint face takes off; 0.5 mm when it is left out'),
  json: { type: 'boolean', describe: 'For programs: mm and degrees, unrounded' },
  to: { type: 'string', requiresArg: true, describe: 'Draw it too: FILE.svg or FILE.pdf' },
  replace: REPLACE,
  save: { type: 'boolean', describe: "Write the saw's learned bias into the order file" },
}

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
      seconds: SECONDS,
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
    words: 'season [ORDER]',
    says: 'Tell how the wood moves from workshop to wall, and what to do about it',
    positionals: {},
    options: { json: { type: 'boolean', describe: 'For programs: mm, degrees and %, unrounded' } },
    examples: [
      ['$0 season winter-fair.yaml', 'the stars of an order, in winter and summer'],
      ['$0 season --points 5 --tip-angle 45 --board-width 70mm --species "white oak"', 'one star from flags'],
    ],
    handle: async (typed) => (await import('./season.js')).season(typed),
  },
  {
    words: 'stock [ORDER]',
    says: 'Choose the cheapest boards and say where to cut them; what each star costs',
    positionals: {},
    options: {
      json: { type: 'boolean', describe: "For programs: mm and the order's currency, unrounded" },
      to: {
        type: 'string',
        requiresArg: true,
        describe: 'A file for the drawn cutting list: .svg or .pdf',
      },
      seconds: {
        type: 'string',
        requiresArg: true,
        describe: 'Longest search for the cheapest boards; 8 when left out',
      },
      replace: REPLACE,
      quiet: QUIET,
    },
    examples: [
      ['$0 stock winter-fair.yaml', 'boards to take, cutting list, price of a star'],
      ['$0 stock winter-fair.yaml --to boards.pdf', 'the same drawn to scale'],
      ['$0 stock winter-fair.yaml --rip-kerf 3mm', 'wide boards may be ripped into strips'],
    ],
    handle: async (typed) => (await import('./stock.js')).stock(typed),
  },
  {
    words: 'draw <DRAWING> [ORDER]',
    says: `Write one drawing: ${DRAWN_NAMES.join(', ')}`,
    positionals: { DRAWING: { type: 'string', choices: DRAWN_NAMES, describe: 'Which drawing' } },
    options: {
      to: {
        type: 'string',
        requiresArg: true,
        demandOption: 'Say which file: --to FILE.svg, FILE.dxf or FILE.pdf',
        describe: 'The file; its ending says the format: .svg, .dxf or .pdf',
      },
      panel: {
        type: 'string',
        requiresArg: true,
        describe: 'For panel: the number of one of them, as make numbers them; 1 when left out',
      },
      seconds: SECONDS,
      replace: REPLACE,
      furniture: OWN_FURNITURE,
      quiet: QUIET,
    },
    examples: [
      ['$0 draw backing winter-fair.yaml --star Chapel --to chapel.dxf', 'one backing for the router'],
      ['$0 draw panel winter-fair.yaml --to panel.dxf', 'the backings of all stars on a panel'],
      ['$0 draw arm-pattern --regular 6/2 --across 300mm --to arm.pdf', 'one pattern from flags'],
    ],
    handle: async (typed) => (await import('./draw.js')).draw(typed),
  },
  {
    words: 'dryfit [ORDER]',
    says: 'From one dry-fitted star: what to turn at the saw, how far to move the stop, what to recut',
    positionals: {},
    options: DRY_FIT_OPTIONS,
    examples: [
      [
        '$0 dryfit winter-fair.yaml --star Boathouse --gap 2.2mm --opens-at centre',
        'a last joint that gapes',
      ],
      [
        '$0 dryfit fair.yaml --star Boathouse --will-not-drop-in-by 2mm --measured-tip 45.2+-0.1',
        'and a tip angle',
      ],
      ['$0 dryfit fair.yaml --star Boathouse --gap 1mm --opens-at valley --to fit.pdf', 'with a drawing'],
    ],
    handle: async (typed) => (await import('./dryfit.js')).dryfit(typed),
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
      ['$0 choose --board-width 70mm --space-across 300mm', 'of all points, for a board and a wall'],
      ['$0 choose winter-fair.yaml --compare 5/2 Boathouse --to two.pdf', 'two stars over each other'],
    ],
    handle: async (typed) => (await import('./choose.js')).choose(typed),
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
