import { describe, expect, it } from 'vitest'
import { solveStar } from '../../src/geometry/star.js'
import { pulledRadius, pulledTipAngle, steppedRange } from '../../src/page/pull.js'
import { degrees, mm } from '../../src/units/convert.js'

/** As on a phone. */
const PER_PIXEL = 1 / 130

describe('the valley of a star that is pulled', () => {
  it('stays under the finger where there is room, as the geometry of the star has it', () => {
    const before = solveStar(5, degrees(40), 'radius', mm(300))
    const from = { points: 5, tipAngle: before.tipAngle, range: undefined }
    for (const pixels of [-20, -3, 1, 12]) {
      const after = solveStar(5, pulledTipAngle(from, pixels, 1 / 300), 'radius', mm(300))
      expect(after.valleyRadius).toBeCloseTo(before.valleyRadius + pixels, 6)
    }
  })

  it('turns the tip by no more than a degree a pixel where the saw cuts, of the bluntest stars too', () => {
    for (const tipAngle of [60, 100, 140]) {
      const from = { points: 24, tipAngle: degrees(tipAngle), range: undefined }
      expect(Math.abs(pulledTipAngle(from, 1, PER_PIXEL) - tipAngle)).toBeLessThan(1.01)
    }
  })

  it('halts at the ends of what the saw cuts, and goes on when it is pulled further', () => {
    const range = { least: degrees(36), most: degrees(50) }
    const from = { points: 5, tipAngle: degrees(45), range }
    expect(pulledTipAngle(from, 3, PER_PIXEL)).toBeLessThan(50)
    for (const pixels of [20, 30, 40]) expect(pulledTipAngle(from, pixels, PER_PIXEL)).toBeCloseTo(50, 9)
    expect(pulledTipAngle(from, 90, PER_PIXEL)).toBeGreaterThan(51)
    for (const pixels of [-20, -40]) expect(pulledTipAngle(from, pixels, PER_PIXEL)).toBeCloseTo(36, 9)
    expect(pulledTipAngle(from, -70, PER_PIXEL)).toBeLessThan(35)
  })

  it('halts at an end that it begins at, not at one that it comes from behind', () => {
    const range = { least: degrees(36), most: degrees(50) }
    const atEnd = { points: 5, tipAngle: degrees(50), range }
    expect(pulledTipAngle(atEnd, 30, PER_PIXEL)).toBeCloseTo(50, 9)
    expect(pulledTipAngle(atEnd, -5, PER_PIXEL)).toBeLessThan(50)
    const behind = { points: 5, tipAngle: degrees(60), range }
    expect(pulledTipAngle(behind, 2, PER_PIXEL)).toBeGreaterThan(60)
    expect(pulledTipAngle(behind, -2, PER_PIXEL)).toBeLessThan(60)
  })

  it('has ends in whole steps of the scale, within what the saw cuts', () => {
    expect(steppedRange({ least: degrees(36.2), most: degrees(89.9) }, degrees(0.5))).toEqual({
      least: 36.5,
      most: 89.5,
    })
    expect(steppedRange({ least: degrees(45.1), most: degrees(45.4) }, degrees(0.5))).toBeUndefined()
  })
})

describe('the tip of a star that is pulled', () => {
  const from = { radius: 300, largest: undefined }

  it('stays under the finger, and does not pass the centre', () => {
    expect(pulledRadius(from, 20, 2)).toBe(340)
    expect(pulledRadius(from, -20, 2)).toBe(260)
    expect(pulledRadius(from, -400, 2)).toBe(0)
  })

  it('halts at the largest that the saw takes, and goes on when it is pulled further', () => {
    const within = { radius: 300, largest: 350 }
    expect(pulledRadius(within, 20, 2)).toBe(340)
    for (const pixels of [25, 40, 65]) expect(pulledRadius(within, pixels, 2)).toBe(350)
    expect(pulledRadius(within, 75, 2)).toBe(370)
    expect(pulledRadius(within, -20, 2)).toBe(260)
  })

  it('does not halt at what it comes from behind', () => {
    const beyond = { radius: 400, largest: 350 }
    for (const pixels of [-30, -20, 10]) expect(pulledRadius(beyond, pixels, 2)).toBe(400 + 2 * pixels)
  })
})
