import { describe, expect, it } from 'vitest'
import { starwright } from './starwright.js'

const FLAGS = '--points 5 --tip-angle 45 --board-width 3-1/2in --saw-limit 45 --kerf 3/32in'.split(' ')

/** The public contract of `plan --json`: names and kinds of value. */
const CONTRACT = {
  name: 'string',
  points: 'number',
  tipAngle: 'number',
  sideAngle: 'number',
  centreAngle: 'number',
  tipEdge: 'number',
  jointEdge: 'number',
  radius: 'number',
  valleyRadius: 'number',
  across: 'number',
  height: 'number',
  valleyDip: 'number',
  boardNeeded: 'number',
  boardPerStar: 'number',
  yield: 'number',
  feasible: 'boolean',
} as const

describe('plan --json', () => {
  it('keeps its contract: mm and degrees, unrounded', () => {
    const { code, out, err } = starwright(['plan', ...FLAGS, '--json'])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    const { stars } = JSON.parse(out)
    expect(stars).toHaveLength(1)
    const [star] = stars
    for (const [key, kind] of Object.entries(CONTRACT)) expect(typeof star[key], key).toBe(kind)
    expect(Object.keys(star.blank)).toEqual(['miter', 'side', 'pitch', 'firstTrim'])
    expect(Object.keys(star.joint)).toEqual(['miter', 'stop'])
    expect(star.warnings.every((w: object) => Object.keys(w).join() === 'code,text')).toBe(true)
    // Design formulas, written out again: L = w / sin 45°, blank side the same, kerf / cos 45° more per blank.
    expect(star.tipEdge).toBeCloseTo(88.9 * Math.SQRT2, 9)
    expect(star.blank.miter).toBe(45)
    expect(star.joint.miter).toBe(31.5)
    expect(star.joint.stop).toBe(star.tipEdge)
    expect(star.blank.pitch).toBeCloseTo(star.blank.side + ((3 / 32) * 25.4) / Math.cos(Math.PI / 4), 9)
    expect(star.boardPerStar).toBeCloseTo(star.blank.firstTrim + 5 * star.blank.pitch, 9)
    expect(star.feasible).toBe(true)
    expect(star.blanksPerBoard).toBeNull()
  })

  it('gives blanks per board on the first board that fits, kerf and slant counted', () => {
    const order =
      'units: in\nshop: { saw: { kerf: 3/32 }, boards: [{ width: 2, length: 96 }, { width: 3 1/2, length: 96 }] }\nstars: [{ points: 5, tip-angle: 45, board-width: 3 1/2 }]'
    const { out } = starwright(['plan', '-', '--json'], { input: order })
    const [star] = JSON.parse(out).stars
    expect(star.blanksPerBoard).toBe(Math.floor((96 * 25.4 - star.blank.firstTrim) / star.blank.pitch))
  })
})

describe('plan', () => {
  it('prints a card with the settings, the stop and the cautions', () => {
    const { code, out } = starwright(['plan', ...FLAGS, '--units', 'in'])
    expect(code).toBe(0)
    expect(out).toMatch(/first cut +45° +45° +nothing/)
    expect(out).toMatch(/joint cuts +31\.5° +31\.5° +nothing/)
    expect(out.replaceAll(/\s+/g, ' ')).toContain(
      'the tip against a stop 4 15/16 +0.012 in along it from the near side of the blade',
    )
    expect(out).toContain("The saw's manual and local rules")
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(84)
  })

  it('shows what flags change in an order', () => {
    const { out } = starwright([
      'plan',
      'shared/examples/winter-fair.yaml',
      '--kerf',
      '3 mm',
      '--paper',
      'letter',
    ])
    expect(out).toContain(
      'Changed by flags:\n- --kerf 3 mm (the order says 2.4)\n- --paper letter (the order says "A4")',
    )
  })

  it('says what it takes for granted', () => {
    const { out } = starwright('plan --points 5 --slenderest --across 300mm'.split(' '))
    expect(out).toContain('- the saw stops at 45° (saw-limit)')
    expect(out).toContain('- the blade removes 2.4 mm (kerf)')
  })

  it('writes no escape codes where there is no terminal, nor under NO_COLOR', () => {
    expect(starwright(['plan', ...FLAGS], { env: { NO_COLOR: '1' } }).out).not.toContain('\u001b')
    expect(starwright(['plan', ...FLAGS], { env: { FORCE_COLOR: '1' } }).out).not.toContain('\u001b')
  })

  it('numbers with an exponent, NaN and lists are refused, each flag by its name', () => {
    const words = 'plan --points seven --tip-angle NaN --across 1e3 --across 4 --kerf Infinity'.split(' ')
    const { code, out, err } = starwright(words)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toBe('--across: given more than one value. Give the flag once.\nNothing was written.\n')
    const once = starwright('plan --points seven --tip-angle NaN --across 1e3 --kerf Infinity'.split(' '))
    expect(once.err.split('\n').map((line) => line.split('. ').slice(0, 1).join())).toEqual([
      '--kerf: given "Infinity"',
      '--points: given "seven"',
      '--tip-angle: given "NaN"',
      '--across: given "1e3"',
      'Nothing was written.',
      '',
    ])
  })
})

describe('the command line', () => {
  it.each([
    [['plann'], 'Did you mean plan?'],
    [['plan', '--pints', '5'], 'Unknown argument: pints\nDid you mean --points?'],
    [['plan', '--__proto__.x', '5'], 'Unknown argument: __proto__.x'],
    [
      ['draw', 'bakcing', '--to', 'x.svg'],
      'Invalid values:\n  Argument: DRAWING, Given: "bakcing", Choices: "arm-pattern", "star-mat", "backing", "panel", "blank-stop", "first-cut-wedge", "arm-cradle", "joint-cut-wedge", "angle-gauge", "trial-window", "glue-up-frame", "jig-card"',
    ],
    [['make', '--points', '5'], 'Missing required argument: out\nSay where the files go: --out FOLDER'],
    [[], 'Say what to do: make, plan, season, stock, draw, dryfit, print-check, risk, choose or page.'],
    [['plan', 'a.yaml', 'b.yaml'], 'Unknown argument: b.yaml'],
    [['plan', '--points'], 'Not enough arguments following: points'],
  ])('%j is a usage mistake: exit 2', (words, message) => {
    const { code, out, err } = starwright(words)
    expect({ code, out, err }).toEqual({
      code: 2,
      out: '',
      err: `${message}\nFor the commands and flags: starwright --help\nNothing was written.\n`,
    })
  })

  it.each(['make', 'plan', 'draw'])('%s --help lists every flag and shows examples', (command) => {
    const { code, out } = starwright([command, '--help'])
    expect(code).toBe(0)
    for (const flag of [
      '--points',
      '--tip-angle',
      '--regular',
      '--slenderest',
      '--inset',
      '--paper',
      '--dxf',
    ]) {
      expect(out).toContain(flag)
    }
    expect(out).toContain('Examples:')
  })

  it('completes flags', () => {
    const { out } = starwright(['--get-yargs-completions', 'starwright', 'plan', '--tip'])
    expect(out.split('\n')).toEqual(expect.arrayContaining(['--tip-angle', '--tip-edge']))
  })

  it('an order that is not there is a mistake of the person, not of the program', () => {
    const { code, err } = starwright(['plan', 'no-such-order.yaml'])
    expect(code).toBe(2)
    expect(err).toBe(
      'order file: given "no-such-order.yaml". There is no such file or folder. Check the name and the folder.\nNothing was written.\n',
    )
  })

  it('no order and no flags', () => {
    expect(starwright(['plan']).err).toContain('Name an order file, or give one star by flags')
  })
})
