import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { planOf } from '../orders.js'
import { starPlan } from './shop-orders.js'

type Keys = Readonly<Record<string, unknown>>

/** An order without a fault: a large five-point star on a saw that reaches everything. */
const STAR = { points: 5, 'tip-angle': 45, 'board-width': 200, thickness: 19 }
const BACKING = { shape: 'star', inset: 12, thickness: 4 }
const SAW = { limit: 50, kerf: 2.4, 'reads-to': 0.5, crosscut: 400 }
const SHOP = {
  saw: SAW,
  boards: [{ width: 200, thickness: 19, length: 2400 }],
  panels: [{ length: 1500, width: 1500, thickness: 4 }],
}

const board = (keys: Keys): Keys => ({ ...SHOP, boards: [{ ...SHOP.boards[0], ...keys }] })
const panel = (keys: Keys): Keys => ({ ...SHOP, panels: [{ ...SHOP.panels[0], ...keys }] })
const saw = (keys: Keys): Keys => ({ ...SHOP, saw: { ...SAW, ...keys } })
const star = (keys: Keys): Keys => ({ ...STAR, ...keys })
/** The same with another shape. */
const shaped = (points: number, tip: number, keys: Keys = {}): Keys => ({
  ...STAR,
  points,
  'tip-angle': tip,
  ...keys,
})
const onlySaw = (keys: Keys): Keys => ({ saw: { ...SAW, ...keys } })
const inInches = (width: string): readonly [Keys, Keys, Keys] => [
  { points: 5, 'tip-angle': 45, 'board-width': width, thickness: '3/4' },
  { saw: { limit: 50, kerf: '3/32' } },
  { units: 'in' },
]

const CASES: readonly (readonly [string, readonly string[], Keys, Keys, Keys?])[] = [
  ['nothing wrong', [], STAR, SHOP],
  ['nothing known of boards and panels', [], star({ backing: BACKING }), { saw: SAW }],

  ['first cut steeper than the saw', ['saw-limit'], STAR, saw({ limit: 40 })],
  ['first cut just at the limit', [], STAR, saw({ limit: 45 })],
  [
    'first cut too steep the other way',
    ['crosscut', 'saw-limit', 'unusual-size'],
    shaped(24, 145, { 'board-width': undefined, 'tip-edge': 200 }),
    onlySaw({ crosscut: undefined }),
  ],
  [
    'joint cuts steeper than the saw',
    ['crosscut', 'saw-limit', 'unusual-size'],
    shaped(24, 60, { 'board-width': undefined, 'tip-edge': 900 }),
    onlySaw({ crosscut: undefined }),
  ],
  [
    'no star of so many points within the limit',
    ['crosscut', 'saw-limit', 'unusual-size'],
    shaped(24, 90, { 'board-width': undefined, 'tip-edge': 900 }),
    onlySaw({ limit: 20, crosscut: undefined }),
  ],

  ['blade does not reach across', ['crosscut'], STAR, saw({ crosscut: 282 })],
  ['blade just reaches across (200 / cos 45 = 282.84)', [], STAR, saw({ crosscut: 282.9 })],
  [
    'blade does not reach along the joint cuts: 250 / cos 37.5 = 315.1',
    ['crosscut'],
    shaped(8, 60, { 'board-width': 250 }),
    onlySaw({ crosscut: 300 }),
  ],
  [
    'blade just reaches along the joint cuts',
    [],
    shaped(8, 60, { 'board-width': 250 }),
    onlySaw({ crosscut: 315.2 }),
  ],
  ['reach of the blade not known', [], STAR, saw({ crosscut: undefined })],
  [
    'reach not known, and a cut of 311 mm (220 / cos 45), more than usual saws reach',
    ['crosscut'],
    star({ 'board-width': 220 }),
    onlySaw({ crosscut: undefined }),
  ],

  [
    'a star that fits a hand',
    ['short-arm', 'unusual-size'],
    star({ 'board-width': undefined, across: 59 }),
    SHOP,
  ],
  ['a star as wide as a hand', ['short-arm'], star({ 'board-width': undefined, across: 60 }), SHOP],

  ['board narrower than the arms', ['board-too-narrow'], STAR, board({ width: 199 })],
  ['board narrower by less than can be seen', [], STAR, board({ width: 199.95 })],
  ['board thinner than the arms', ['board-too-narrow'], STAR, board({ thickness: 18 })],
  ['board thicker than the arms', [], STAR, board({ thickness: 22 })],
  ['board too short for one arm (200 + 286.2)', ['board-too-narrow'], STAR, board({ length: 486 })],
  ['board just long enough for one arm', [], STAR, board({ length: 486.3 })],

  ['two boards of two arms each for five', ['boards-too-few'], STAR, board({ length: 1000, count: 2 })],
  ['three boards of two arms each for five', [], STAR, board({ length: 1000, count: 3 })],
  ['one long board for two stars', ['boards-too-few'], star({ quantity: 2 }), board({ count: 1 })],

  ['a width that is only a name', ['nominal-width', 'short-arm'], ...inInches('4')],
  ['the true width of that board', ['short-arm'], ...inInches('3 1/2')],
  ['the same width in millimetres', ['short-arm'], star({ 'board-width': 101.6 }), SHOP],
  [
    'a name given as the radius',
    ['short-arm'],
    { points: 5, 'tip-angle': 45, radius: '6' },
    { saw: { limit: 50 } },
    { units: 'in' },
  ],

  ['arms too short to hold', ['short-arm'], star({ 'board-width': 145 }), SHOP],
  [
    'arms just long enough: 180 / cos 31.5 = 211.1 mm',
    [],
    star({ 'board-width': undefined, 'tip-edge': 211.2 }),
    SHOP,
  ],
  ['arms just too short', ['short-arm'], star({ 'board-width': undefined, 'tip-edge': 211 }), SHOP],

  ['slim tips', ['fragile-tip'], shaped(5, 29), onlySaw({ limit: 65, crosscut: 900 })],
  ['tips of 30 degrees', [], shaped(5, 30), onlySaw({ limit: 65, crosscut: 900 })],

  [
    'first cut of 44.8 between the marks, joint cuts of 31.4 on one',
    ['marks-leave-gap'],
    shaped(5, 45.2),
    saw({ detents: [31.4] }),
  ],
  ['joint cuts between the marks', ['marks-leave-gap'], STAR, saw({ 'reads-to': 1 })],
  ['a mark near enough: 0.1 mm at the last joint', [], shaped(5, 45.005), SHOP],
  ['both cuts between the marks (44.8, 31.4), and the errors cancel', [], shaped(5, 45.2), SHOP],
  [
    'both cuts between the marks (44.75, 31.375), and the errors add',
    ['marks-leave-gap'],
    shaped(5, 45.25),
    SHOP,
  ],

  [
    'panel smaller than the backing',
    ['panel-too-small'],
    star({ backing: BACKING }),
    panel({ length: 700, width: 700 }),
  ],
  ['panel of another thickness', ['panel-too-small'], star({ backing: BACKING }), panel({ thickness: 6 })],
  ['panel large enough', [], star({ backing: BACKING }), SHOP],
  [
    'panel whose kept edge is in the way',
    ['panel-too-small'],
    star({ backing: BACKING }),
    panel({ edge: 400 }),
  ],
  ['no backing, no panel needed', [], STAR, panel({ length: 50, width: 50 })],

  [
    'backing covers less than half of the joints',
    ['backing-covers-little'],
    star({ backing: { ...BACKING, inset: 110 } }),
    SHOP,
  ],
  [
    'backing covers just more than half of the joints (157 mm from edge to centre)',
    [],
    star({ backing: { ...BACKING, inset: 78 } }),
    SHOP,
  ],
  [
    'backing covers just less than half of the joints',
    ['backing-covers-little'],
    star({ backing: { ...BACKING, inset: 79 } }),
    SHOP,
  ],

  [
    'backing larger than what the cutter takes',
    ['beyond-bed'],
    star({ backing: BACKING }),
    { ...SHOP, cutter: { bed: { width: 300, length: 5000 } } },
  ],
  [
    'backing that the cutter takes, turned',
    [],
    star({ backing: BACKING }),
    { ...SHOP, cutter: { bed: { width: 2000, length: 1500 } } },
  ],
  [
    'tabs asked of a disc, whose edge is all curve',
    ['tabs-missing'],
    star({ backing: { ...BACKING, shape: 'disc' } }),
    { ...SHOP, cutter: { kind: 'router', tabs: 3 } },
  ],
  [
    'tabs on ten straight edges',
    [],
    star({ backing: BACKING }),
    { ...SHOP, cutter: { kind: 'router', tabs: 10 } },
  ],
  ['a detent a tenth beside the joint cuts', ['near-detent'], STAR, saw({ detents: [31.6] })],
  ['a detent on the setting, others beside it', [], STAR, saw({ detents: [31, 31.5, 32, 45] })],
  ['detents more than a degree away', [], STAR, saw({ detents: [30.4, 32.6] })],

  [
    'one tab more than there are edges',
    ['tabs-missing'],
    star({ backing: BACKING }),
    { ...SHOP, cutter: { kind: 'router', tabs: 11 } },
  ],

  [
    'everything at once',
    [
      'backing-covers-little',
      'board-too-narrow',
      'crosscut',
      'fragile-tip',
      'marks-leave-gap',
      'panel-too-small',
      'saw-limit',
      'short-arm',
    ],
    {
      points: 5,
      'tip-angle': 20.5,
      'board-width': 60,
      thickness: 19,
      backing: { shape: 'polygon', inset: 25 },
    },
    {
      saw: { limit: 45, kerf: 2.4, 'reads-to': 1, crosscut: 100 },
      boards: [{ width: 50, length: 900 }],
      panels: [{ length: 30, width: 30, edge: 2 }],
    },
  ],
]

const codesOf = ([, , star, shop, rest]: (typeof CASES)[number]) =>
  starPlan(star, shop, rest).warnings.map(({ code }) => code)

describe('warnings', () => {
  it.each(CASES.map((row) => [row[0], row] as const))('%s', (_, row) => {
    expect(codesOf(row).toSorted()).toEqual(row[1])
  })

  it('come in every kind the plan knows, each with a sentence that ends', () => {
    const source = readFileSync(new URL('../../src/plan/warnings.ts', import.meta.url), 'utf8')
    const union = /type WarningCode =([^/]*?)\n\n/.exec(source)?.[1] ?? ''
    const known = [...union.matchAll(/'([a-z-]+)'/g)].map((found) => found[1])
    expect(known.length).toBeGreaterThanOrEqual(10)
    expect([...new Set(CASES.flatMap(([, codes]) => codes))].toSorted()).toEqual(known.toSorted())
    for (const [, , star, shop, rest] of CASES) {
      for (const { text } of starPlan(star, shop, rest).warnings) {
        expect(text).toMatch(/^[A-Z0-9].*\.$/)
        expect(text).not.toMatch(/NaN|undefined|Infinity|null/)
      }
    }
  })
})

it('a detent beside a setting is told with the gap it makes: ten faces 0.1 degrees off, 2 x 184.1 mm x sin 0.5', () => {
  // Joint edge 200 / sin 45 x sin 22.5 / sin 36; half of that for five first cuts.
  const texts = (detent: number) =>
    starPlan(STAR, saw({ detents: [detent] })).warnings.map(({ text }) => text)
  expect(texts(31.6)).toEqual([
    "The joint cuts' 31.5° is 0.1° beside the detent at 31.6°: hold the table until it is locked, or it clicks in and opens the last joint by 3.2 mm.",
  ])
  expect(texts(45.1)[0]).toContain("The first cut's 45° is 0.1° beside the detent at 45.1°")
  expect(texts(45.1)[0]).toContain('by 1.6 mm.')
})

/*
 * Five points, tips of 45°, from 200 mm boards: joints of 184.1 mm, see above. 12 mm inside the valleys a plate without
 * dents covers 172.1 mm at most.
 */
it('a backing that covers little is told what makes it cover more', () => {
  const told = (backing: Record<string, unknown>) =>
    starPlan(star({ backing }), { saw: { kerf: 2.4 } })
      .warnings.filter(({ code }) => code === 'backing-covers-little')
      .map(({ text }) => text.slice(text.indexOf('joint.') + 7))
  expect(told({ shape: 'star', inset: 110 })).toEqual(['A smaller inset makes the star stronger.'])
  expect(told({ shape: 'auto', inset: 110 })).toEqual(['A smaller inset makes the star stronger.'])
  expect(told({ shape: 'auto', covers: 60 })).toEqual([
    'A longer covers (up to 172.1 mm) makes the star stronger.',
  ])
  expect(told({ shape: 'auto', inset: 110, covers: 74.1 })).toEqual([
    'A longer covers with a smaller inset makes the star stronger.',
  ])
})

it('too few boards of the first one\u2019s thickness: the plan tells that others would carry the arms', () => {
  const shop = {
    saw: { kerf: 2.4 },
    boards: [
      { width: 70, length: 400, thickness: 19, count: 1 },
      { width: 70, length: 2400, thickness: 12 },
      { width: 60, length: 2400, thickness: 25 },
    ],
  }
  const five = { points: 5, 'tip-angle': 45, 'board-width': 70 }
  const texts = (more: Record<string, unknown>) =>
    starPlan({ ...five, ...more }, shop).warnings.flatMap(({ code, text }) =>
      code === 'boards-too-few' ? [text] : [],
    )
  expect(texts({})).toEqual([
    'It takes at least 2 boards of 70.0 mm × 400.0 mm × 19.0 mm; the order has 1. Boards 12.0 mm thick would carry the arms too: give the star that thickness to use them.',
  ])
  expect(texts({ thickness: 12 })).toEqual([])
})

describe('too few boards of one kind', () => {
  const codes = (shop: Record<string, unknown>, stars: readonly Record<string, unknown>[]) =>
    planOf(JSON.stringify({ shop, stars })).stars.flatMap(({ warnings }) => warnings.map(({ code }) => code))
  // 70 mm of slant, then 102.4 mm an arm: a board of 1600 mm gives fourteen.
  const scarce = { width: 70, length: 1600, count: 1 }
  const saw = { kerf: 2.4 }
  const five = { points: 5, 'tip-angle': 45, 'board-width': 70 }
  const stars = ['Jetty', 'Pier', 'Boathouse'].map((name) => ({ ...five, name }))

  it('are not told of where stars can share one: two stars take ten of its arms, three stars fifteen', () => {
    expect(codes({ saw, boards: [scarce] }, stars.slice(0, 2))).not.toContain('boards-too-few')
    expect(codes({ saw, boards: [scarce] }, stars)).toContain('boards-too-few')
  })

  it('are not told of where another board would do', () => {
    const boards = [scarce, { width: 95, length: 3000 }]
    expect(codes({ saw, boards }, stars)).not.toContain('boards-too-few')
  })
})
