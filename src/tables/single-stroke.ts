import table from '../../shared/single-stroke.json' with { type: 'json' }

/** A sign that a pen or beam draws in single strokes; baseline at y = 0, in units of {@link STROKE_CAPITAL}. */
export interface StrokeGlyph {
  readonly width: number
  readonly strokes: readonly (readonly (readonly [number, number])[])[]
}

/** Height of a capital, in the glyphs' units. */
export const STROKE_CAPITAL: number = table.capital

const read = (written: string): StrokeGlyph => {
  const [width, ...strokes] = written.split(' / ')
  return {
    width: Number(width),
    strokes: strokes.map((stroke) =>
      stroke.split(' ').map((at): [number, number] => {
        const [x, y] = at.split(',').map(Number)
        return [x ?? 0, y ?? 0]
      }),
    ),
  }
}

/** Drawn by us, for parts that have no room for a word. */
const ARROW: StrokeGlyph = {
  width: 0.5 * STROKE_CAPITAL,
  strokes: [
    [
      [0.25 * STROKE_CAPITAL, 0],
      [0.25 * STROKE_CAPITAL, STROKE_CAPITAL],
    ],
    [
      [0.05 * STROKE_CAPITAL, 0.7 * STROKE_CAPITAL],
      [0.25 * STROKE_CAPITAL, STROKE_CAPITAL],
      [0.45 * STROKE_CAPITAL, 0.7 * STROKE_CAPITAL],
    ],
  ],
}

/** Hershey's simplex roman letters, and an arrow. */
export const STROKE_GLYPHS: ReadonlyMap<string, StrokeGlyph> = new Map([
  ...Object.entries(table.glyphs).map(([sign, written]) => [sign, read(written)] as const),
  ['↑', ARROW],
])
