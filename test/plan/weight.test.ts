import { describe, expect, test } from 'vitest'
import { weightText } from '../../src/compose/body-words.js'
import type { StarPlan } from '../../src/plan/plan.js'
import { weighStar } from '../../src/plan/weight.js'
import { mm } from '../../src/units/convert.js'
import { oneStar } from '../orders.js'

const BODY = {
  armsVolume: 1e6,
  plateVolume: 2e5,
  coated: { front: 0, chamfers: 0, edges: 0, back: 0, all: 0 },
  glue: { joints: mm(0), jointArea: 0, plateArea: 5e4 },
}

const WOOD = { name: 'oak', density: 500 }

test('a litre of wood and a fifth of a litre of plywood, and a hanger for four times that', () => {
  const weight = weighStar(BODY, { arms: WOOD, panels: [700] })
  expect(weight.arms).toBeCloseTo(0.5, 12)
  expect(weight.plate).toBeCloseTo(0.14, 12)
  expect(weight.whole?.mass).toBeCloseTo(0.64, 12)
  expect(weight.whole?.hanger).toBeCloseTo(2.56, 12)
})

test('a plate of unknown density is not guessed, and no hanger is chosen without it', () => {
  expect(weighStar(BODY, { arms: WOOD, panels: [] })).toEqual({ arms: 0.5, wood: { name: 'oak' } })
  const { plateVolume, ...thin } = BODY
  expect(plateVolume).toBeGreaterThan(0)
  expect(weighStar(thin, { arms: WOOD, panels: [700] })).toEqual({ arms: 0.5, wood: { name: 'oak' } })
})

test('a star without a plate hangs on its arms alone', () => {
  const { plateVolume, ...arms } = { ...BODY, glue: { ...BODY.glue, plateArea: 0 } }
  expect(plateVolume).toBeGreaterThan(0)
  expect(weighStar(arms, { arms: WOOD, panels: [] })).toEqual({
    arms: 0.5,
    wood: { name: 'oak' },
    whole: { mass: 0.5, hanger: 2 },
  })
})

/*
 * By hand. Wood Handbook (FPL-GTR-282), Table 5-3: white oak at 12 % moisture has a specific gravity of 0.68, based on
 * its volume then and its mass oven-dry; so it weighs 0.68 × 1.12 × 1000 = 761.6 kg/m³ (chapter 4, density from gravity).
 * {6/2} with a tip edge of 100 mm: six rhombi of 60°, 6 × 100² × sin 60° = 51 961.524 mm², 19 mm thick: 987 268.96 mm³.
 * Its valleys lie 100 mm from the centre; the hexagon through them, moved in by 6 mm, has an apothem of
 * 100 cos 30° - 6 = 80.602540 mm and an area of 2√3 × 80.602540² = 22 505.47 mm²; 4 mm thick: 90 021.9 mm³, at 680 kg/m³.
 */
test('a star of white oak behind which a hexagon of plywood hangs, from handbook figures', () => {
  const [star] = oneStar(
    'regular: 6/2, tip-edge: 100, thickness: 19, backing: { shape: polygon, inset: 6, thickness: 4 }',
    'shop: { wood: { species: white oak }, panels: [{ length: 1500, width: 1500, thickness: 4, density: 680 kg/m³ }] }',
  ).stars
  expect(star?.weight?.arms).toBeCloseTo(0.751904, 6)
  expect(star?.weight?.plate).toBeCloseTo(0.0612149, 6)
  expect(star?.weight?.whole?.mass).toBeCloseTo(0.813119, 6)
  expect(star?.weight?.whole?.hanger).toBeCloseTo(4 * 0.813119, 5)
})

/*
 * The same star. Its hexagon of 90 021.9 mm³ weighs 0.0270066 kg at 300 kg/m³ and 0.0810197 kg at 900: a hanger chosen by
 * the first panel would be rated 0.216 kg too low where the second is bought for its price.
 */
describe('of several panels', () => {
  const starOf = (...panels: readonly string[]): StarPlan | undefined =>
    oneStar(
      'regular: 6/2, tip-edge: 100, thickness: 19, backing: { shape: polygon, inset: 6, thickness: 4 }',
      `shop: { wood: { species: white oak }, panels: [${panels.join(', ')}] }`,
    ).stars[0]
  const light = '{ length: 1500, width: 1500, thickness: 4, price: 40, density: 300 kg/m³ }'
  const heavy = '{ length: 1200, width: 600, thickness: 4, price: 5, density: 900 kg/m³ }'

  test.each([
    [light, heavy],
    [heavy, light],
  ])('the hanger is rated for the heaviest that holds the plate, whichever comes first', (...panels) => {
    const star = starOf(...panels)
    expect(star?.weight?.plate).toBeCloseTo(0.0810197, 6)
    expect(star?.weight?.whole?.mass).toBeCloseTo(0.751904 + 0.0810197, 6)
    expect(star?.weight?.whole?.hanger).toBeCloseTo(3.331695, 5)
    expect(star && weightText(star, oneStar('points: 5, tip-angle: 45, across: 300').order)).toContain(
      'backing 0.081 kg of the heaviest panel that holds it; a hanger rated for 3.33 kg',
    )
  })

  test('one that is too small, or of another thickness, does not count', () => {
    const small = heavy.replace('1200', '100')
    const thick = heavy.replace('thickness: 4', 'thickness: 9')
    const star = starOf(light, small, thick)
    expect(star?.weight?.plate).toBeCloseTo(0.0270066, 6)
    expect(star?.weight?.ofHeaviest).toBeUndefined()
  })

  test('one that holds the plate and whose density is unknown leaves the hanger open', () => {
    const star = starOf(light, heavy.replace(', density: 900 kg/m³', ''))
    expect(star?.weight).toEqual({ arms: star?.weight?.arms, wood: { name: 'white oak' } })
  })
})

/*
 * The same six rhombi, 51 961.524 mm² of wood. White oak weighs 761.6 kg/m³, eastern white pine, with a specific gravity of
 * 0.35 in the same table, 0.35 × 1.12 × 1000 = 392: 19 mm of the one are 0.751904 kg, 38 mm of the other 0.774019 kg.
 */
describe('of several boards', () => {
  const PINE = 'length: 2400, width: 100, wood: { species: eastern white pine }'
  const OAK = 'length: 2400, width: 100, wood: { species: white oak }'
  const starOn = (...boards: string[]): StarPlan | undefined =>
    oneStar(
      'regular: 6/2, tip-edge: 100',
      `shop: { boards: [${boards.map((each) => `{ ${each} }`).join(', ')}] }`,
    ).stars[0]

  test.each([
    [[`${PINE}, thickness: 19`, `${OAK}, thickness: 19`], 0.751904, 'white oak'],
    [[`${OAK}, thickness: 19`, PINE], 0.751904, 'white oak'],
  ])('the arms are weighed as of the one they weigh most of: %s', (boards, mass, name) => {
    const star = starOn(...boards)
    expect(star?.weight?.arms).toBeCloseTo(mass, 5)
    expect(star?.weight?.whole?.hanger).toBeCloseTo(4 * mass, 4)
    expect(star && weightText(star, oneStar('points: 5, tip-angle: 45, across: 300').order)).toContain(
      `of ${name}, of the heaviest board that carries them`,
    )
  })

  test.each([
    [[`${OAK}, thickness: 19`, `${PINE}, thickness: 38`], 0.751904, 'white oak'],
    [[`${PINE}, thickness: 38`, `${OAK}, thickness: 19`], 0.774019, 'eastern white pine'],
  ])('one of another thickness than the star has does not count: %s', (boards, mass, name) => {
    const star = starOn(...boards)
    expect(star?.weight?.arms).toBeCloseTo(mass, 5)
    expect(star?.weight?.wood).toEqual({ name })
  })

  test('one that is too narrow does not count', () => {
    const star = starOn(`${PINE}, thickness: 19`, `${OAK}, thickness: 19`.replace('width: 100', 'width: 40'))
    expect(star?.weight?.wood).toEqual({ name: 'eastern white pine' })
  })
})
