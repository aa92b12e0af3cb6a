import { MEDIUM, SMALL, wrapText } from '../drawing/lettering.js'
import type { Label, Shape } from '../drawing/model.js'
import { centredLabel, label, line } from '../drawing/shapes.js'
import type { Furniture } from '../furniture/furniture-set.js'
import { type Point, point } from '../geometry/point.js'
import { PRINT_CHECK_LENGTHS } from '../order/fields.js'
import { officePaper } from '../order/office-paper.js'
import type { Order } from '../order/order.js'
import { type PaperName, paperSize } from '../tables/paper.js'
import { inches, mm, radians } from '../units/convert.js'
import type { Units } from '../units/read-length.js'
import { showLength } from '../units/show.js'
import type { PrintedBook } from './page.js'
import { pieceOfRoll, type Sheet, sheetOfSize, uncorrected, windowSize } from './sheet.js'
import { strip } from './strip.js'

/** Length of window that the rulers and the words need. */
const WINDOW_ALONG = 190

/**
 * One page with a ruler across the sheet and one along it, to find out what a printer makes of true lengths. It is
 * never corrected itself.
 */
export const printCheck = (order: Order, furniture: Furniture): PrintedBook => {
  // A printer's error is measured on a page that is not corrected.
  const paper = uncorrected(order.shop.paper)
  const asPrinted = { ...order, shop: { ...order.shop, paper } }
  const sheet = checkSheet(asPrinted)
  const { window } = sheet
  const { across, along } = windowSize(sheet)
  const middle = point(window.min.x + across / 2, window.min.y + along / 2)
  const { units } = order.lengths
  const start = point(middle.x - LONGEST / 2, middle.y - LONGEST / 2)
  return {
    title: 'Print check',
    bookmarks: [],
    pages: [
      {
        name: '1',
        sheet,
        views: [
          {
            shapes: [
              ...ruler(units, acrossFrom(start, middle.y)),
              ...ruler(units, alongFrom(start, middle.x)),
              ...words(asPrinted, middle),
            ],
            window,
            shift: point(0, 0),
          },
        ],
        furniture: () => {
          const title = { title: paperTitle(asPrinted), documentType: 'print check', sheet: '1', sheets: 1 }
          return strip(sheet, title, asPrinted, furniture)
        },
      },
    ],
  }
}

/** The sheet that the patterns are printed on; for patterns of their own sizes the desk's. */
const checkedSize = (order: Order): PaperName => {
  const { sheet } = order.shop.paper
  return 'size' in sheet ? sheet.size : officePaper(order)
}

const checkSheet = (order: Order): Sheet => {
  const { paper } = order.shop
  return 'roll' in paper.sheet
    ? pieceOfRoll(paper, paper.sheet.roll, WINDOW_ALONG)
    : sheetOfSize(paper, paperSize(checkedSize(order)), false)
}

/** A printer may treat each paper in its own way. */
const paperTitle = (order: Order): string =>
  'roll' in order.shop.paper.sheet
    ? `Print check, roll of ${showLength(order.shop.paper.sheet.roll, order.lengths)}`
    : `Print check, ${checkedSize(order)}`

/** The paper as an order names it. */
const paperKey = ({ shop: { paper }, lengths }: Order): string => {
  if ('roll' in paper.sheet) return `roll: ${showLength(paper.sheet.roll, lengths)}`
  return `size: ${'size' in paper.sheet ? paper.sheet.size : 'single'}`
}

/** A ruler: its place `at` along it and `aside` to its left, and the figure there, which reads from the bottom. */
interface Way {
  readonly place: (at: number, aside: number) => Point
  readonly figure: (text: string, at: number, aside: number, height: number) => Label
}

const acrossFrom = (start: Point, level: number): Way => {
  const place = (at: number, aside: number): Point => point(start.x + at, level + aside)
  return {
    place,
    figure: (text, at, aside, height) =>
      centredLabel(text, place(at, aside + (Math.sign(aside) * height) / 2), { height }),
  }
}

const alongFrom = (start: Point, level: number): Way => {
  const place = (at: number, aside: number): Point => point(level - aside, start.y + at)
  return {
    place,
    figure: (text, at, aside, height) => {
      const { x, y } = place(at, aside)
      return label(text, point(x, y - height / 2), { height, anchor: aside > 0 ? 'end' : 'start' })
    },
  }
}

/** Heights of the ruler's lines over its edge: ends and whole figures, halves, the rest. */
const TALL = 7
const MIDDLE = 4.5
const SHORT = 3

/** Both scales on one edge, the shop's own on its left side, where it is read first, and larger. */
const ruler = (units: Units, { place, figure }: Way): Shape[] => [
  line('PATTERN', place(0, 0), place(LONGEST, 0), 'narrow'),
  ...scaleLines(units, { place, figure }, 1, SMALL),
  ...scaleLines(units === 'mm' ? 'in' : 'mm', { place, figure }, -1, 1.8),
]

const scaleLines = (units: Units, { place, figure }: Way, side: 1 | -1, height: number): Shape[] => {
  const { step, count, half, whole, each } = SCALES[units]
  return Array.from({ length: count + 1 }, (_, index): Shape[] => {
    const at = index * step
    if (Math.abs(at - LONGEST / 2) < CROSSING) return []
    const isWhole = index % whole === 0
    const reach = isWhole ? TALL : index % half === 0 ? MIDDLE : SHORT
    const mark = line('PATTERN', place(at, 0), place(at, side * reach), 'narrow')
    const text = `${(index / whole) * each}${index === count ? ` ${units}` : ''}`
    return isWhole ? [mark, figure(text, at, side * (TALL + 1), height)] : [mark]
  }).flat()
}

/** Millimetres and sixteenths; a figure at every ten and at every inch. */
const SCALES = {
  mm: { step: mm(1), count: 150, half: 5, whole: 10, each: 10 },
  in: { step: inches(1 / 16), count: 96, half: 8, whole: 16, each: 1 },
} as const

/** Half the width of a ruler with its figures: so much of it is left out where the other one crosses. */
const CROSSING = 16

const LONGEST = Math.max(...Object.values(PRINT_CHECK_LENGTHS))

/** How far words stand off the rulers. */
const BESIDE = 22

/** What a printer's two ways are called on the paper. */
interface Ways {
  readonly across: string
  readonly along: string
}

const SHEET_WAYS: Ways = { across: 'along the short side of the sheet', along: 'the long side' }
const ROLL_WAYS: Ways = { across: "over the roll's width", along: 'as the roll runs' }

/** Words in the four fields between the rulers. */
const words = (order: Order, middle: Point): Shape[] => {
  const { units } = order.lengths
  const ways = 'roll' in order.shop.paper.sheet ? ROLL_WAYS : SHEET_WAYS
  const [one, other] = units === 'mm' ? ['150 mm', '6 in'] : ['6 in', '150 mm']
  const sample = units === 'mm' ? ['149.2 mm', '149.6 mm'] : ['5 31/32 in', '5 63/64 in']
  const fineness = units === 'mm' ? 'half a millimetre (1/64 in)' : '1/64 in (half a millimetre)'
  const field = (title: string, lines: readonly string[], side: -1 | 1, level: -1 | 1): Label[] => {
    const x = side < 0 ? middle.x - LONGEST / 2 : middle.x + BESIDE
    const y = level > 0 ? middle.y + LONGEST / 2 : middle.y - BESIDE - 4
    return [
      label(title, point(x, y - MEDIUM), { height: MEDIUM }),
      ...wrapped(lines).map((text, row) =>
        label(text.trimStart(), point(x + indentOf(text), y - 9 - row * 4.2), { height: SMALL }),
      ),
    ]
  }
  return [
    ...field(
      '1. Print this page',
      [
        'on the paper of the patterns, with the same settings: scale 100 % ("actual size"), "fit to page" and "borderless" off.',
      ],
      -1,
      1,
    ),
    ...field(
      '2. Measure both rulers',
      [
        `with a steel rule, from the first line to the last, to ${fineness}. Take the scale of ${one}; ${other} will do as well, but write its unit.`,
      ],
      1,
      1,
    ),
    ...field(
      '3. Write it into the order',
      [
        ' shop:',
        `   paper: { ${paperKey(order)}, printed: {`,
        `     across: ${sample[0]},`,
        `     along: ${sample[1]} } }`,
        'in place of the line paper: that stands there. Make the files anew: every page is then corrected both ways, and says so. This page never is.',
      ],
      -1,
      -1,
    ),
    ...field(
      'Exact, or far off?',
      [
        'No difference to be seen, both ways: there is nothing to enter. More than 3 % off is a print setting: change it and print this page again.',
        'Check the scale on every pattern all the same before you cut.',
      ],
      1,
      -1,
    ),
    label(`across: ${ways.across}`, point(middle.x - LONGEST / 2, middle.y + 13), {
      height: SMALL,
    }),
    label(`along: ${ways.along}`, point(middle.x - 18, middle.y - LONGEST / 2), {
      height: SMALL,
      turn: radians(Math.PI / 2),
    }),
  ]
}

/** Lines that begin with spaces are set as they stand. */
const wrapped = (lines: readonly string[]): string[] =>
  lines.flatMap((text) => (text.startsWith(' ') ? [text] : wrapText(text, SMALL, mm(LONGEST / 2 - BESIDE))))

const indentOf = (text: string): number => (text.length - text.trimStart().length) * 1.2
