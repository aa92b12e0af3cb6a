import fc from 'fast-check'
import { LAYERS, type LayerName } from '../../src/drawing/layers.js'
import type { Drawing, Label, Path, Shape } from '../../src/drawing/model.js'
import { centredLabel, chain, label, line, path, ring } from '../../src/drawing/shapes.js'
import type { Outline, Vertex } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { mm, radians } from '../../src/units/convert.js'

/** Text that tries to be more than text. */
export const HOSTILE_TEXTS = [
  'Lake star\n0\nCIRCLE\n8\n0\n10\n0.0\n20\n0.0\n40\n9.0',
  'Lake star\r\n  0\r\nENDSEC\r\n  0\r\nEOF',
  '</text><script>alert(1)</script>',
  ']]>x]]><script/>',
  '"><g onload="x">&amp;&lt;',
  '%%c 12 %%d %%%%u 62 % %%',
  '½ in, 31.5°, 70 × 18 mm, ⅛ ′ ⌀ Łódź',
  'nul\u0000 bell\u0007 delete\u007f next\u0085line\u2028break',
  'turned \u202e53.1\u202c and \u200fmarked\u200e',
  'half a pair \ud83d and the other \ude00 and noncharacter \uffff',
  'a whole pair \u{1f600}',
  '\\U+0041 ^J \\P {\\C1;x}',
  '\ttab',
] as const

export const drawingOf = (shapes: readonly Shape[]): Drawing => ({
  kind: 'backing',
  title: 'Winter fair: <star> & "lamp"',
  trueSize: { across: mm(300.125), height: mm(285.317) },
  shapes,
  figure: shapes,
  asides: [],
  pieces: [],
})

/** A bit of everything: each layer and pen, arcs both ways, a hole, strokes in a row, lettering turned and anchored. */
export const SAMPLER: Drawing = drawingOf([
  path('CUT-OUTSIDE', {
    closed: true,
    vertices: [
      { x: -150, y: -100 },
      { x: 150, y: -100, bulge: 0.5 },
      { x: 150, y: 120, bulge: -Math.SQRT2 + 1 },
      { x: 0, y: 60 },
      { x: -150, y: 120, bulge: 1 },
    ],
  }),
  ring('CUT-INSIDE', point(40.5, 20.25), 2.5),
  ring('CUT-INSIDE', point(-40.5, 20.25), 100 / 3),
  ...Array.from({ length: 9 }, (_, row) => line('GUIDE', point(-20, row * 3), point(20, row * 3 + 40))),
  line('GUIDE', point(0, 0), point(0, 90), 'chain'),
  chain('MARK', [point(-10, -10), { x: 10, y: -10, bulge: 2.5 }, { x: 20, y: 5, bulge: -3 }, point(30, 1)]),
  path('PATTERN', { closed: true, vertices: [point(-90, -90), point(-60, -90), point(-75, -50)] }),
  path('PATTERN', { closed: true, vertices: [point(60, -90), point(90, -90), point(75, -50)] }, 'dashed'),
  chain('DIM', [point(-150, -130), point(0, -131), point(150, -130)], 'double-chain'),
  line('DIM', point(-1e-7, -140), point(1 / 3, -2e-5), 'wide'),
  label('UP', point(0, 100), { anchor: 'middle', height: 5 }),
  label('300.1 mm', point(150, -128), { layer: 'DIM', anchor: 'end' }),
  label('31.5°', point(-80, 30), { turn: radians(Math.PI / 3) }),
  centredLabel('read from the right', point(120, 0), { layer: 'MARK', turn: radians(-Math.PI / 2) }),
])

export const HOSTILE: Drawing = drawingOf([
  path('CUT-OUTSIDE', { closed: true, vertices: [point(0, 0), point(80, 0), point(40, 70)] }),
  ...HOSTILE_TEXTS.map((text, row) => label(text, point(0, -10 * row))),
])

const layerName = fc.constantFrom(...LAYERS.map(({ name }) => name))

const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true })

/** Straight edges, half turns, and arcs up to 304° either way; flatter ones have a test of their own. */
const bulge = fc.oneof(
  fc.constant(0),
  fc.constantFrom(1, -1),
  fc.double({ min: 1e-6, max: 4, noNaN: true }),
  fc.double({ min: -4, max: -1e-6, noNaN: true }),
)

/** Corners that are apart, so that none is dropped; what is dropped has its own tests. */
const outline: fc.Arbitrary<Outline> = fc
  .record({
    closed: fc.boolean(),
    vertices: fc.array(fc.record({ x: coordinate, y: coordinate, bulge }), { minLength: 3, maxLength: 9 }),
  })
  .map(({ closed, vertices }) => ({ closed, vertices: vertices.filter(standsApart) }))
  .filter(({ vertices }) => vertices.length >= 3)

const standsApart = (vertex: Vertex, index: number, all: readonly Vertex[]): boolean =>
  all.slice(0, index).every((earlier) => Math.hypot(earlier.x - vertex.x, earlier.y - vertex.y) > 0.01)

const words = fc.oneof(
  fc.constantFrom(...HOSTILE_TEXTS),
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.string({ unit: 'grapheme', maxLength: 30 }),
)

const lettering: fc.Arbitrary<Label> = fc
  .record({
    layer: layerName,
    text: words.map((text) => `a ${text}`),
    x: coordinate,
    y: coordinate,
    anchor: fc.constantFrom('start', 'middle', 'end'),
    height: fc.double({ min: 0.5, max: 50, noNaN: true }),
    turn: fc.double({ min: -7, max: 7, noNaN: true }),
  })
  .map(({ text, x, y, turn, ...style }) => label(text, point(x, y), { ...style, turn: radians(turn) }))

/** Drawings of closed and open outlines with arcs of both signs, and hostile lettering, on any layer. */
export const anyDrawing: fc.Arbitrary<Drawing> = fc
  .tuple(
    fc.array(fc.tuple(layerName, outline), { minLength: 1, maxLength: 6 }),
    fc.array(lettering, { maxLength: 4 }),
  )
  .map(([outlines, letterings]) => drawingOf([...outlines.map(shifted), ...letterings]))

/** Two outlines that come out the same would be written once. */
const shifted = ([layer, { vertices, closed }]: [LayerName, Outline], index: number): Path =>
  path(layer, { closed, vertices: vertices.map((vertex) => ({ ...vertex, x: vertex.x + index * Math.PI })) })
