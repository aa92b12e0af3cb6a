import { expect, test } from 'vitest'
import { weighStar } from '../../src/plan/weight.js'
import { mm } from '../../src/units/convert.js'

const BODY = {
  armsVolume: 1e6,
  plateVolume: 2e5,
  coated: { front: 0, chamfers: 0, edges: 0, back: 0, all: 0 },
  glue: { joints: mm(0), jointArea: 0, plateArea: 0 },
}

test('a litre of wood and a fifth of a litre of plywood, and a hanger for four times that', () => {
  const weight = weighStar(BODY, { wood: 500, panel: 700 })
  expect(weight.arms).toBeCloseTo(0.5, 12)
  expect(weight.plate).toBeCloseTo(0.14, 12)
  expect(weight.all).toBeCloseTo(0.64, 12)
  expect(weight.hanger).toBeCloseTo(2.56, 12)
})

test('a plate of unknown density is left out, not guessed', () => {
  expect(weighStar(BODY, { wood: 500 })).toEqual({ arms: 0.5, all: 0.5, hanger: 2 })
})
