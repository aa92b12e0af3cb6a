import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { FURNITURE_NAMES, type FurnitureName } from '../../src/furniture/furniture-names.js'
import { readFurniture } from '../../src/furniture/read-furniture.js'
import { showProblem } from '../../src/order/problem.js'
import { artworkSvg } from './artwork-svg.js'
import { type Image, readPng } from './read-png.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-furniture-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** librsvg reads the original by itself; a picture of it and one of what we read must be alike. */
const render = (svg: string, name: string): Image => {
  const [from, png] = [join(folder, `${name}.svg`), join(folder, `${name}.png`)]
  writeFileSync(from, svg)
  const dots = String(25.4 * PIXELS_PER_MM)
  execFileSync('rsvg-convert', ['-d', dots, '-p', dots, '-b', 'white', '-o', png, from])
  return readPng(png)
}

const PIXELS_PER_MM = 20
/** What rounding of coverage may add. */
const NEAR = 16
const AROUND = [-1, 0, 1].flatMap((dy) => [-1, 0, 1].map((dx) => [dx, dy] as const))

/**
 * Pixels of one picture that no shift of the other by less than a pixel explains: darker or lighter than everything
 * within a pixel of the same place there.
 */
const strangers = (one: Image, other: Image): number => {
  let count = 0
  const channel = (image: Image, x: number, y: number, c: number): number =>
    image.pixels[(y * image.across + x) * 4 + c] ?? 255
  for (let y = 1; y < one.down - 1; y++) {
    for (let x = 1; x < one.across - 1; x++) {
      const explained = [0, 1, 2].every((c) => {
        const near = AROUND.map(([dx, dy]) => channel(other, x + dx, y + dy, c))
        const here = channel(one, x, y, c)
        return here >= Math.min(...near) - NEAR && here <= Math.max(...near) + NEAR
      })
      if (!explained) count += 1
    }
  }
  return count
}

/** How many pixels are not white: a check that there is something to compare. */
const inked = ({ pixels }: Image): number => {
  let count = 0
  for (let index = 0; index < pixels.length; index += 4) if ((pixels[index] ?? 255) < 128) count += 1
  return count
}

const TEMPLATES = FURNITURE_NAMES.map((name) => ({
  name,
  what: name as string,
  // Slots are wider than their room until they are filled; here only the words must agree.
  svg: readFileSync(new URL(`../../templates/${name}.svg`, import.meta.url), 'utf8')
    .replaceAll(/\{[a-z-]+\}/g, 'Hut')
    .replaceAll(/ data-(?:room|lines)="[^"]*"/g, ''),
}))

const head = '<svg xmlns="http://www.w3.org/2000/svg" width="56mm" height="24mm" viewBox="0 0 56 24">'
const MADE: readonly { name: FurnitureName; what: string; svg: string }[] = [
  [
    'arcs of every kind',
    '<g fill="none" stroke="navy" stroke-width=".3"><path d="M5 12a6 3 30 1 0 8 2"/><path d="M20 12A6 3 -20 0 1 28 14a1 1 0 0 0 6 -4"/><path d="M36 12a5 2 75 1 1 4 1z" fill="#fc0"/></g>',
  ],
  [
    'curves that go on smoothly',
    '<path d="M2 12c3-9 6-9 9 0s6 9 9 0S29 3 29 12Q33 20 37 12T45 12t6-2" fill="none" stroke="green" stroke-width=".4"/>',
  ],
  [
    'transforms within transforms',
    '<g transform="translate(28 12) rotate(20)"><g transform="scale(-1.5 1.5)" stroke="red" stroke-width=".4" fill="none"><path d="M-8-2h10v4l-4 2z"/></g><path transform="skewX(30) matrix(1 .2 0 .5 3 -4)" d="M0 0h9v6h-9z" fill="teal"/></g>',
  ],
  [
    'leaning shapes',
    '<g transform="skewX(20)"><rect x="2" y="2" width="10" height="14" fill="teal"/><rect x="16" y="2" width="12" height="8" rx="3"/></g><circle transform="translate(40 2) skewY(15)" cx="6" cy="5" r="4" fill="#c50"/>',
  ],
  [
    'joins, ends and dashes',
    '<g fill="none" stroke="black" stroke-width="1.2"><path d="M4 18L8 6l4 12"/><path d="M16 18L20 6l4 12" stroke-linejoin="round" stroke-linecap="round"/><path d="M28 18L32 6l4 12" stroke-linejoin="bevel"/><path d="M40 18L41 6l1 12"/><rect x="45" y="5" width="9" height="12" rx="2" stroke-width=".3" stroke-dasharray="1 .5 .25"/><circle cx="50" cy="11" r="3" stroke-width=".3" stroke-dasharray="1.1"/></g>',
  ],
  [
    'holes by either rule',
    '<path fill-rule="evenodd" d="M4 4h16v16h-16zM8 8h8v8h-8z"/><path d="M30 4h16v16h-16zM34 8h8v8h-8z" fill="maroon"/>',
  ],
  [
    'rounded and straight shapes',
    '<rect x="2" y="2" width="20" height="10" ry="3" fill="#08f" stroke="#333" stroke-width=".5"/><polygon points="30,4 40,4 35,14" style="fill:orange;stroke:black"/><polyline points="44 4 52 8,44 12" fill="none" stroke="purple"/><line x1="4" y1="20" x2="50" y2="16" stroke="gray"/>',
  ],
  [
    'lettering turned, moved and scaled',
    '<g font-family="sans-serif" font-size="3"><text x="4" y="6">Pier &amp; h&#xfc;tte</text><text transform="translate(12 20) rotate(-30)" text-anchor="middle" fill="#c00">Lake</text><text transform="scale(1.5)" x="32" y="8" text-anchor="end">Boat</text></g>',
  ],
].map(([what = '', body = '']) => ({ name: 'title-block' as const, what, svg: `${head}${body}</svg>` }))

it.each([...TEMPLATES, ...MADE])(
  '$what: read and drawn again it is the same picture',
  ({ name, what, svg }) => {
    const outcome = readFurniture(`${name}.svg`, name, svg)
    if (!outcome.ok) throw new Error(outcome.problems.map(showProblem).join('\n'))
    const file = what.replaceAll(/\W/g, '-')
    const original = render(svg, `${file}-original`)
    // The templates ask for Helvetica first.
    const family = svg.includes('Helvetica') ? 'Helvetica, Arial, sans-serif' : 'sans-serif'
    const again = render(artworkSvg(outcome.value, family), `${file}-again`)
    expect([again.across, again.down]).toEqual([original.across, original.down])
    expect(inked(original)).toBeGreaterThan(200)
    expect(strangers(original, again)).toBe(0)
    expect(strangers(again, original)).toBe(0)
  },
)
