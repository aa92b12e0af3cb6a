import * as v from 'valibot'
import { FEWEST_POINTS, MOST_POINTS } from '../geometry/star.js'
import { LONGEST_PAGE, PAPER_NAMES, type PaperName } from '../tables/paper.js'
import { mm } from '../units/convert.js'
import type { Units } from '../units/read-length.js'
import {
  amountField,
  angleField,
  choiceField,
  dateField,
  lengthField,
  printedField,
  textField,
  wholeField,
} from './fields.js'
import { jigStockKeys } from './jig-keys.js'
import { JIG_NAMES } from './order.js'
import { plateKeys } from './plate-keys.js'
import { group, listOf } from './schema-group.js'
import { signedAngleField } from './signed-angle-field.js'
import { seasonKeys } from './wood-keys.js'

/** What a star's size may be written as, whichever of its measures it names; `planStar` has narrower limits for some. */
export const SIZES = { least: mm(5), most: mm(20_000) } as const

/**
 * The order as a person writes it: the one source of the reader's checks, of the JSON Schema that editors use and of
 * the flags' help. Rules that join several keys stand in `checks.ts`.
 *
 * @param units how bare numbers are read
 */
export const orderSchema = (units: Units) => {
  const optionalLength = (least: number, most: number, says: string, wayOut?: string) =>
    v.optional(lengthField(units, { least, most, says, ...(wayOut === undefined ? {} : { wayOut }) }))
  const size = (says: string) => optionalLength(SIZES.least, SIZES.most, says)
  const price = v.optional(
    amountField({ least: 0, most: 1_000_000, says: 'Price of one, in your own currency' }),
  )
  const season = seasonKeys(units)
  const plate = plateKeys(units)
  const thickness = (says: string) => optionalLength(0.5, 200, says)

  const saw = group({
    limit: v.optional(
      angleField({
        above: 2,
        inclusive: true,
        most: 75,
        says: 'Steepest miter angle the saw reaches, from square',
        wayOut: 'Read it off the saw: most stop between 45 and 60.',
      }),
    ),
    kerf: optionalLength(0.1, 10, 'Width of wood the saw blade removes', 'Measure the slot of a test cut.'),
    'reads-to': v.optional(
      angleField({
        above: 0.01,
        inclusive: true,
        most: 5,
        says: 'Finest step of the saw scale you can set, in degrees',
        wayOut: 'Look at the scale: lines every half degree are 0.5.',
      }),
    ),
    detents: v.optional(
      v.pipe(
        v.array(
          angleField({
            above: 0,
            most: 75,
            inclusive: true,
            says: 'A miter angle at which the saw clicks in',
          }),
          'Allowed: a list of angles, such as [0, 15, 22.5, 31.6, 45].',
        ),
        v.description('Miter angles at which the saw clicks in, such as 0, 15, 22.5, 45'),
      ),
    ),
    crosscut: optionalLength(
      20,
      2_000,
      'Longest cut the blade makes across a board',
      "The saw's manual names it.",
    ),
    bias: v.optional(
      group({
        miter: signedAngleField({
          most: MOST_BIAS,
          says: 'What the joint cuts come out at, less what the scale reads; dryfit learns it',
          wayOut: 'Below zero the cuts come out shallower than the scale says.',
        }),
        uncertainty: v.optional(
          angleField({ above: 0, inclusive: true, most: MOST_BIAS, says: 'How sure that is, either way' }),
        ),
      }),
    ),
    'repeats-to': v.optional(
      angleField({
        above: 0,
        inclusive: true,
        most: 2,
        says: 'How far one cut comes out from the next at the same setting, in degrees (one standard deviation)',
        wayOut: 'Cut five offcuts at one setting and measure them: half of the whole range will do.',
      }),
    ),
    'true-to': v.optional(
      angleField({
        above: 0,
        inclusive: true,
        most: 5,
        says: 'How far all cuts may be from what the scale reads, in 95 of 100 cases',
        wayOut: 'A scale nobody checked is true to about 0.2; a dry fit tells more.',
      }),
    ),
  })

  const stop = group({
    'repeats-to': optionalLength(
      0,
      5,
      'How far one piece comes to lie from the next against the stop (one standard deviation)',
      'Cut five pieces against it and measure them: half of the whole range will do.',
    ),
  })

  const stretch = group({
    from: lengthField(units, {
      least: 0,
      most: 20_000,
      says: "Where it begins, from the end that will be the board's first: mark that end",
    }),
    to: lengthField(units, { least: 0, most: 20_000, says: 'Where it ends, from the same end' }),
  })

  const board = group({
    name: v.optional(
      textField({ longest: 60, use: 'name', says: 'What you call this board, as chalked on its end' }),
    ),
    width: lengthField(units, { least: 5, most: 1_000, says: 'True width, as measured' }),
    thickness: thickness('True thickness, as measured'),
    length: lengthField(units, { least: 50, most: 20_000, says: 'Length' }),
    price,
    count: v.optional(
      wholeField({ least: 1, most: 10_000, says: 'How many there are; left out: as many as needed' }),
    ),
    defects: v.optional(
      v.pipe(
        v.array(stretch, 'Allowed: a list such as [{ from: 400 mm, to: 460 mm }].'),
        v.maxLength(200, 'Allowed: up to 200 defects on a board.'),
        v.description('Knots, splits and nail holes: stretches that no arm may touch'),
      ),
    ),
    wood: season.wood,
  })

  const panel = group({
    length: lengthField(units, { least: 20, most: 20_000, says: 'Length' }),
    width: lengthField(units, { least: 20, most: 20_000, says: 'Width' }),
    thickness: thickness('Thickness'),
    price,
    ...plate.panel,
    density: season.panelDensity,
  })

  const cutter = group({
    kind: v.optional(choiceField(['laser', 'router', 'hand'], { says: 'What cuts the backing' })),
    kerf: optionalLength(0.01, 10, 'Width of material the beam removes'),
    bit: optionalLength(0.1, 50, "Diameter of the router's bit"),
    ...plate.cutter,
    bed: v.optional(
      group({
        width: lengthField(units, { least: 50, most: 5_000, says: 'What the cutter takes across its bed' }),
        length: lengthField(units, { least: 50, most: 5_000, says: 'What it takes along its bed' }),
      }),
    ),
    dxf: v.optional(
      choiceField(['r12', 'r2000'], { says: 'DXF version: r12 for old importers, r2000 for newer ones' }),
    ),
  })

  const paper = group({
    size: v.optional(
      choiceField(
        PAPER_WORDS,
        {
          says: `Paper the patterns are printed on: ${PAPER_NAMES.join(', ')}; or single, one page of each drawing's own size`,
        },
        [...PAPER_NAMES, SINGLE],
      ),
    ),
    roll: optionalLength(200, 2_000, 'Width of a roll of paper, instead of a size'),
    longest: optionalLength(300, LONGEST_PAGE, 'Longest piece of the roll to print at once'),
    margin: optionalLength(3, 25, 'White edge the printer cannot reach', 'Most printers need 5 mm or more.'),
    overlap: optionalLength(5, 30, 'Strip that neighbouring pages share, for tape'),
    printed: v.optional(
      group({
        across: printedField(units, "What your printer makes of the print check's ruler across the sheet"),
        along: printedField(units, "What your printer makes of the print check's ruler along the sheet"),
      }),
    ),
  })

  const shop = group({
    saw: v.optional(saw),
    stop: v.optional(stop),
    'accepted-gap': optionalLength(0.01, 20, 'Widest gap at the last joint that still passes'),
    boards: listOf(board, 100, 'Boards on the rack or to buy'),
    panels: listOf(panel, 100, 'Sheet goods for backings'),
    'panel-seed': v.optional(
      wholeField({
        least: 0,
        most: 999_999_999,
        says: 'Another number lays plates on panels in other ways; the same number lays them alike every time',
      }),
    ),
    cutter: v.optional(cutter),
    'jig-stock': v.optional(jigStockKeys(units)),
    paper: v.optional(paper),
    'end-allowance': optionalLength(0, 1_000, "Cut off each board's end before the first arm"),
    wood: season.wood,
    ...season.products,
    sound: v.optional(
      choiceField(['arm', 'blank'], {
        says: 'What must be free of defects: the arm, or the whole blank it is cut from',
      }),
    ),
    'rip-kerf': optionalLength(
      0.1,
      10,
      'Wide boards may be ripped into several strips, by a blade that removes this width',
      'Measure the slot of a test cut, or leave it out: then each board gives one strip.',
    ),
  })

  const backing = group({
    ...plate.backing,
    thickness: thickness('Thickness of the backing; left out: that of the first panel that holds it'),
  })

  const star = group({
    name: v.optional(
      textField({
        longest: 60,
        use: 'name',
        says: 'Name of the star; it is lettered on the patterns and begins the file names',
      }),
    ),
    note: v.optional(
      textField({
        longest: 200,
        use: 'note',
        says: 'A line of your own, lettered among the notes of the arm pattern, the star mat and the shop card',
      }),
    ),
    quantity: v.optional(wholeField({ least: 1, most: 10_000, says: 'How many of this star' })),
    points: v.optional(wholeField({ least: FEWEST_POINTS, most: MOST_POINTS, says: 'Number of points' })),
    'tip-angle': v.optional(angleField({ above: 0, most: 179, says: 'Angle at the tip of an arm' })),
    regular: v.optional(
      v.pipe(
        v.string(REGULAR_ADVICE),
        v.regex(/^\d{1,2} ?\/ ?\d{1,2}$/, REGULAR_ADVICE),
        v.description('Regular star n/k: n points, each joined to the k-th next, such as 5/2'),
      ),
    ),
    slenderest: v.optional(
      v.pipe(
        v.literal(true, 'Allowed: true, or leave the key out.'),
        v.description('The slenderest star with these points that the saw can cut'),
      ),
    ),
    'board-width': size('Size by the board: the largest star its width carries'),
    across: size('Size by the width of the star, one tip up'),
    height: size('Size by the height of the star, one tip up'),
    radius: size('Size by the distance from centre to tip'),
    'tip-edge': size('Size by the edge from tip to valley'),
    chamfer: optionalLength(0.2, 50, 'Width of the chamfer along the tip edges'),
    thickness: thickness('Thickness of the arms; left out: that of the first board that carries them'),
    backing: v.optional(backing),
    wall: season.wall,
    hardware: v.optional(
      amountField({
        least: 0,
        most: 1_000_000,
        says: 'Price of hanger, screws, glue and finish for one star',
      }),
    ),
  })

  return group({
    $schema: v.optional(
      v.pipe(v.string(), v.description('Where an editor finds the description of these keys')),
    ),
    title: v.optional(textField({ longest: 60, use: 'name', says: 'Title of the order' })),
    date: v.optional(dateField('Day of issue, for the title block, such as 2026-11-28')),
    creator: v.optional(
      textField({ longest: 40, use: 'name', says: 'Who makes the drawings, for the title block' }),
    ),
    units: v.optional(
      choiceField(['mm', 'in'], { says: 'How bare numbers are read and lengths are shown: mm or in' }),
    ),
    nearest: v.optional(
      choiceField(['1/8', '1/16', '1/32', '1/64'], {
        says: 'Finest fraction of an inch that is shown: 1/8, 1/16, 1/32 or 1/64',
      }),
    ),
    shop: v.optional(shop),
    climate: season.climate,
    space: v.optional(
      group({
        across: size('Room on the wall from side to side'),
        height: size('Room on the wall from top to bottom'),
      }),
    ),
    jigs: v.optional(
      v.pipe(
        v.array(
          choiceField(JIG_NAMES, { says: `A jig to cut: ${JIG_NAMES.join(', ')}` }),
          `Allowed: a list of ${JIG_NAMES.join(', ')}; [] for none.`,
        ),
        v.description(`Jigs to cut for every star: ${JIG_NAMES.join(', ')}`),
      ),
    ),
    stars: v.pipe(
      v.array(star, STARS_ADVICE),
      v.minLength(1, STARS_ADVICE),
      v.maxLength(100, 'Allowed: up to 100 stars in one order. Split the order.'),
      v.description('The stars to make'),
    ),
  })
}

/** A saw that is further off is not read, it is out of order. */
export const MOST_BIAS = 5

export type WrittenOrder = v.InferOutput<ReturnType<typeof orderSchema>>

const STARS_ADVICE =
  'Allowed: a list of one star or more, such as stars: [{ points: 5, tip-angle: 45, board-width: 70 mm }].'
export const REGULAR_ADVICE =
  'Allowed: n/k with 5 to 24 points and k from 2 to less than half of n, such as 5/2 or 8/3.'

/** Instead of a paper size: pages of the drawings' own size. */
export const SINGLE = 'single'

/** Paper names in the spelling of the standards and in lower case. */
const PAPER_WORDS = [SINGLE, ...PAPER_NAMES.flatMap((name) => [name, name.toLowerCase()])] as const

export const paperName = (word: string): PaperName | undefined =>
  PAPER_NAMES.find((name) => name.toLowerCase() === word.toLowerCase())
