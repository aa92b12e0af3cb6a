import { expect, test } from 'vitest'
import { weighStar } from '../../src/plan/weight.js'
import { mm } from '../../src/units/convert.js'

const BODY = {
  armsVolume: 1e6,
  plateVolume: 2e5,
  coated: { front: 0, chamfers: 0, edges: 0, back: 0, all: 0 },
  glue: { joints: mm(0), jointArea: 0, plateArea: 5e4 },
}

test('a litre of wood and a fifth of a litre of plywood, and a hanger for four times that', () => {
  const weight = weighStar(BODY, { wood: 500, panel: 700 })
  expect(weight.arms).toBeCloseTo(0.5, 12)
  expect(weight.plate).toBeCloseTo(0.14, 12)
  expect(weight.whole?.mass).toBeCloseTo(0.64, 12)
  expect(weight.whole?.hanger).toBeCloseTo(2.56, 12)
})

test('a plate of unknown density is not guessed, and no hanger is chosen without it', () => {
  expect(weighStar(BODY, { wood: 500 })).toEqual({ arms: 0.5 })
  const { plateVolume, ...thin } = BODY
  expect(plateVolume).toBeGreaterThan(0)
  expect(weighStar(thin, { wood: 500, panel: 700 })).toEqual({ arms: 0.5 })
})

test('a star without a plate hangs on its arms alone', () => {
  const { plateVolume, ...arms } = { ...BODY, glue: { ...BODY.glue, plateArea: 0 } }
  expect(plateVolume).toBeGreaterThan(0)
  expect(weighStar(arms, { wood: 500 })).toEqual({ arms: 0.5, whole: { mass: 0.5, hanger: 2 } })
})
