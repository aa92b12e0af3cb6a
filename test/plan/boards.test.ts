import { describe, expect, it } from 'vitest'
import { cos, sin, starPlan, tan } from './shop-orders.js'

const KERF = 2.4
const saw = { limit: 75, kerf: KERF, 'reads-to': 0.5 }

interface Laying {
  readonly tip: number
  readonly width: number
  readonly allowance: number
}

/**
 * How many blanks can be laid on a board one by one, each whole and followed by the whole kerf of its cut, none on a
 * defect: the oracle. Corners are worked out one by one; nothing is multiplied up.
 */
const layOut = (
  length: number,
  defects: readonly (readonly [number, number])[],
  { tip, width, allowance }: Laying,
): number => {
  const side = width / sin(tip)
  const kerfAlong = KERF / sin(tip)
  const shift = width / tan(tip)
  const bounds = [...defects].sort(([a], [b]) => a - b)
  const stretches: [number, number][] = []
  let soundFrom = 0
  for (const [from, to] of bounds) {
    if (from > soundFrom) stretches.push([soundFrom, from])
    soundFrom = Math.max(soundFrom, to)
  }
  stretches.push([soundFrom, length])
  let laid = 0
  for (const [start, end] of stretches) {
    // The blank's left corners: at the board's edge, and across it where the slanted end arrives.
    let left = start + allowance + Math.max(0, -shift)
    for (;;) {
      const corners = [left, left + side + kerfAlong, left + shift, left + shift + side + kerfAlong]
      if (Math.min(...corners) < start - 1e-6 || Math.max(...corners) > end + 1e-6) break
      laid += 1
      left += side + kerfAlong
    }
  }
  return laid
}

/**
 * The same where only the arms must be sound: each arm's corners are worked out, and an arm that meets a defect moves
 * on until its blank begins behind it and the blade's slot does not reach the arm before. Blanks stay on the board.
 */
const layArms = (
  length: number,
  defects: readonly (readonly [number, number])[],
  { tip, points }: { readonly tip: number; readonly points: number },
): number => {
  const [width, half, centre] = [70, tip / 2, 180 / points]
  const unit = Math.max(sin(tip), (sin(half + centre) / sin(centre)) * sin(half))
  const edge = width / unit
  const radius = (edge * sin(half + centre)) / sin(centre)
  const [side, slot, shift] = [width / sin(tip), KERF / sin(tip), Math.abs(width / tan(tip))]
  const corners = [0, edge, radius * cos(half), edge * cos(tip)]
  // A tip angle over 90° leans the other way: the board is read from its other end, the tip stands at the blank's end.
  const xs = tip <= 90 ? corners : corners.map((x) => side - x)
  const [first, last] = [Math.min(...xs), Math.max(...xs)]
  const sorted = [...defects].sort(([a], [b]) => a - b)
  let [left, laid] = [0, 0]
  for (;;) {
    const hit = sorted.find(([from, to]) => left + last > from + 1e-6 && left + first < to - 1e-6)
    // Blanks begin on sound wood.
    const begun = sorted.find(([from, to]) => left >= from - 1e-6 && left < to - 1e-6)
    const met = hit ?? begun
    if (met) {
      const [from, to] = met
      left = Math.max(left < from - 1e-6 && laid > 0 ? from + slot : left, to)
      continue
    }
    if (left + side + slot + shift > length + 1e-6) return laid
    laid += 1
    left += side + slot
  }
}

const TIPS = [20, 36, 45, 60, 72, 90, 100, 140]
/** Enough points for each tip angle. */
const pointsFor = (tip: number) => (tip < 100 ? 8 : 24)

const onBoard = (
  tip: number,
  size: { width: number; length: number },
  defects: readonly (readonly [number, number])[] = [],
  allowance = 0,
  sound = 'blank',
) =>
  starPlan(
    { points: pointsFor(tip), 'tip-angle': tip, 'board-width': 70, quantity: 7 },
    {
      saw,
      'end-allowance': allowance,
      sound,
      boards: [{ ...size, defects: defects.map(([from, to]) => ({ from, to })) }],
    },
  )

describe.each(TIPS)('blanks for a tip angle of %i degrees', (tip) => {
  it('fill a sound board as laying them one by one does', () => {
    for (let length = 150; length < 3000; length += 83) {
      const { boardUse } = onBoard(tip, { width: 70, length })
      expect(boardUse?.blanksPerBoard ?? 0).toBe(layOut(length, [], { tip, width: 70, allowance: 0 }))
    }
  })

  it('and with an end allowance', () => {
    for (let length = 150; length < 2500; length += 191) {
      const { boardUse } = onBoard(tip, { width: 70, length }, [], 25)
      expect(boardUse?.blanksPerBoard ?? 0).toBe(layOut(length, [], { tip, width: 70, allowance: 25 }))
    }
  })

  it('keep clear of defects: in the middle, at either end, overlapping and unsorted', () => {
    const boards: readonly (readonly (readonly [number, number])[])[] = [
      [[1000, 1040]],
      [[0, 60]],
      [[2340, 2400]],
      [
        [1500, 1600],
        [300, 340],
        [310, 420],
        [900, 905],
      ],
      [
        [100, 2300],
        [500, 600],
      ],
      [[0, 2400]],
    ]
    for (const defects of boards) {
      const { boardUse } = onBoard(tip, { width: 70, length: 2400 }, defects)
      expect(boardUse?.blanksPerBoard ?? 0).toBe(layOut(2400, defects, { tip, width: 70, allowance: 0 }))
    }
  })

  it('may have waste on a defect, but no arm', () => {
    const boards: readonly (readonly (readonly [number, number])[])[] = [
      [[1000, 1040]],
      [[0, 60]],
      [[2340, 2400]],
      [[2399, 2400]],
      [
        [1500, 1600],
        [300, 340],
        [310, 420],
      ],
      [
        [500, 501],
        [1200, 1203],
        [1900, 1990],
      ],
      [[0, 2400]],
    ]
    for (const defects of boards) {
      const { boardUse } = onBoard(tip, { width: 70, length: 2400 }, defects, 0, 'arm')
      expect(boardUse?.blanksPerBoard ?? 0).toBe(layArms(2400, defects, { tip, points: pointsFor(tip) }))
    }
  })

  it('fit exactly where the board ends exactly, and one less on a board a tenth of a millimetre shorter', () => {
    const { blank } = onBoard(tip, { width: 70, length: 2400 })
    for (const count of [1, 2, 5, 9]) {
      const length = blank.firstTrim + count * blank.pitch
      if (length < 50) continue
      expect(onBoard(tip, { width: 70, length }).boardUse?.blanksPerBoard).toBe(count)
      expect(onBoard(tip, { width: 70, length: length - 0.1 }).boardUse?.blanksPerBoard ?? 0).toBe(count - 1)
    }
  })

  it('have the sizes that the parallelogram has', () => {
    const plan = onBoard(tip, { width: 70, length: 2400 }, [], 25)
    const lean = 90 - tip
    expect(plan.star.armStrip).toBeCloseTo(70, 9)
    expect(plan.blank.side).toBeCloseTo(70 / sin(tip), 9)
    expect(plan.blank.pitch).toBeCloseTo(70 / sin(tip) + KERF / cos(lean), 9)
    expect(plan.blank.firstTrim).toBeCloseTo(Math.abs(70 / tan(tip)) + 25, 9)
    expect(plan.stop).toBe(plan.star.tipEdge)
  })

  it('sum up to the board for a star, for the quantity, and to the yield', () => {
    const plan = onBoard(tip, { width: 70, length: 2400 }, [], 25)
    const { star, blank, boardUse } = plan
    const points = pointsFor(tip)
    expect(plan.arms).toBe(7 * points)
    expect(plan.boardPerStar).toBeCloseTo(blank.firstTrim + points * blank.pitch, 9)
    expect(plan.boardForQuantity).toBeCloseTo(blank.firstTrim + 7 * points * blank.pitch, 9)
    const area = points * star.radius * star.valleyRadius * sin(180 / points)
    expect(plan.yield).toBeCloseTo(area / (70 * plan.boardPerStar), 9)
    expect(plan.yield).toBeGreaterThan(0)
    expect(plan.yield).toBeLessThan(1)
    expect(boardUse?.boardsNeeded).toBe(Math.ceil((7 * points) / (boardUse?.blanksPerBoard ?? 0)))
  })
})

describe('the board that is taken', () => {
  const star = { points: 5, 'tip-angle': 45, 'board-width': 70, thickness: 19 }
  const taken = (...boards: readonly Record<string, unknown>[]) => starPlan(star, { saw, boards }).boardUse

  it('is the first that is wide, thick and long enough', () => {
    const narrow = { width: 65, length: 2400 }
    const thin = { width: 70, thickness: 15, length: 2400 }
    const short = { width: 70, length: 120 }
    const right = { width: 95, thickness: 19, length: 2000 }
    const later = { width: 70, thickness: 19, length: 3000 }
    expect(taken(narrow, thin, short, right, later)?.board).toMatchObject(right)
    expect(taken(narrow, thin, short)).toBeUndefined()
  })

  it('is ripped to the width the arms need', () => {
    expect(taken({ width: 95, length: 2000 })?.rippedOff).toBeCloseTo(25, 9)
    expect(taken({ width: 70, length: 2000 })?.rippedOff).toBeCloseTo(0, 9)
  })
})
