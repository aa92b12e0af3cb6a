import type { Extents } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'
import type { ReadPage, ReadStroke } from './read-pdf.js'

/** One page of a tiled drawing, with nothing known of it but what is printed on it. */
export interface TiledPage {
  /** As its title block says: `2B`. */
  readonly name: string
  /** The frame around what it shows of the drawing. */
  readonly frame: Extents
  /** Strokes of the drawing; of each only what lies in the frame is seen. */
  readonly figure: readonly ReadStroke[]
  readonly joins: readonly Join[]
  /** Where its paper ends when it is trimmed as its words say. */
  readonly paper: Extents
}

/** An edge at which a page is joined to a neighbour, as the words along it say. */
export interface Join {
  readonly neighbour: string
  /** Trimmed here and laid on the neighbour, or covered by it. */
  readonly trimmed: boolean
  readonly upright: boolean
  /** Middles of the register marks on the line to join at, from the left or from below. */
  readonly marks: readonly Point[]
}

/** How closely lines of one page must meet each other, in mm: ten times what 32-bit readers lose. */
const MEETS = 0.002

/** Pages of the drawing, those that only hold others together included; a page of nothing but notes is none. */
export const tiledPages = (pages: readonly ReadPage[]): TiledPage[] =>
  pages.map(tiledPage).filter(({ figure, joins }) => figure.length > 0 || joins.length > 0)

const tiledPage = (page: ReadPage): TiledPage => {
  const frame = frameOf(page)
  const inFrame = page.strokes.filter(({ clip }) => clip)
  const marks = inFrame.flatMap((stroke) => registerMark(stroke, inFrame))
  const ofMarks = new Set(marks.flatMap(({ strokes }) => strokes))
  const points = marks.map(({ middle }) => middle)
  return {
    name: sheetName(page),
    frame,
    figure: inFrame.filter((stroke) => !ofMarks.has(stroke)),
    joins: joinsOf(page, frame, points),
    paper: paperOf(page, frame),
  }
}

/** The title block's `2B / 6`. */
const sheetName = ({ lettering }: ReadPage): string => {
  const names = lettering.flatMap(({ text, clip }) => (clip ? [] : (/^(\w+) \/ \d+$/.exec(text)?.[1] ?? [])))
  if (names.length !== 1) throw new Error(`a title block names one sheet, this one ${names.length}`)
  return names[0] ?? ''
}

/** The largest box on the page. */
const frameOf = ({ strokes }: ReadPage): Extents => {
  const boxes = strokes
    .filter(({ points, closed, clip }) => points.length === 4 && closed && !clip)
    .map(({ points }) => boxOf(points))
    .sort((a, b) => area(b) - area(a))
  if (!boxes[0]) throw new Error('a page has its frame')
  return boxes[0]
}

const boxOf = (points: readonly Point[]): Extents => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  return {
    min: { x: Math.min(...xs), y: Math.min(...ys) },
    max: { x: Math.max(...xs), y: Math.max(...ys) },
  }
}

const area = ({ min, max }: Extents): number => (max.x - min.x) * (max.y - min.y)

/** A register mark: two hairlines (0.13 mm) that halve each other, upright and level, and a ring around their crossing. */
const registerMark = (stroke: ReadStroke, among: readonly ReadStroke[]) => {
  if (!isHairline(stroke) || !isUpright(stroke)) return []
  const middle = middleOf(stroke)
  const level = among.find((other) => isHairline(other) && isLevel(other) && near(middleOf(other), middle))
  const ring = among.find(
    (other) => other.width === stroke.width && other.points.length > 8 && near(middleOf(other), middle),
  )
  return level && ring ? [{ middle, strokes: [stroke, level, ring] }] : []
}

const isHairline = ({ points, width }: ReadStroke): boolean =>
  points.length === 2 && Math.abs(width - 0.13) < 0.001

const middleOf = ({ points }: ReadStroke): Point => {
  const { min, max } = boxOf(points)
  return { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2 }
}

const near = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < MEETS

const isUpright = ({ points: [a, b] }: ReadStroke): boolean =>
  a !== undefined && b !== undefined && Math.abs(a.x - b.x) < MEETS

const isLevel = ({ points: [a, b] }: ReadStroke): boolean =>
  a !== undefined && b !== undefined && Math.abs(a.y - b.y) < MEETS

/** The words along an edge, the line they stand by, and the marks on it. */
const joinsOf = (page: ReadPage, frame: Extents, marks: readonly Point[]): Join[] =>
  page.lettering.flatMap(({ text, turn }) => {
    const trims = /^trim this edge, lay it on (\w+)$/.exec(text)?.[1]
    const neighbour = trims ?? /^(\w+) is laid on here$/.exec(text)?.[1]
    if (neighbour === undefined) return []
    const trimmed = trims !== undefined
    const upright = isSteep(turn)
    const line = seamLine(page, frame, trimmed, upright)
    const on = marks.filter(({ x, y }) => Math.abs((upright ? x : y) - line) < MEETS)
    return [{ neighbour, trimmed, upright, marks: on.sort((a, b) => (upright ? a.y - b.y : a.x - b.x)) }]
  })

/**
 * Where the line of a seam stands that runs from one side of the frame to the other: a page is trimmed at its left or
 * upper edge, covered from a line inside it onwards.
 */
const seamLine = (
  { strokes }: ReadPage,
  { min, max }: Extents,
  trimmed: boolean,
  upright: boolean,
): number => {
  const edge = upright ? min.x : max.y
  const whole = upright ? max.y - min.y : max.x - min.x
  const lines = strokes
    .filter(({ points, clip }) => points.length === 2 && !clip)
    .filter((stroke) => (upright ? isUpright(stroke) : isLevel(stroke)))
    .map(({ points }) => boxOf(points))
    .filter((box) => Math.abs(box.max.x - box.min.x + box.max.y - box.min.y - whole) < MEETS)
    .map((box) => (upright ? box.min.x : box.min.y))
    .filter((at) => Math.abs(at - edge) < MEETS === trimmed)
  if (lines.length !== 1) throw new Error(`a seam has one line, here are ${lines.length}`)
  return lines[0] ?? Number.NaN
}

/** Words inside an edge of the frame ask to trim it; the rest of the sheet keeps its margin. */
const paperOf = ({ across, along, lettering }: ReadPage, { min, max }: Extents): Extents => {
  const words = lettering.filter(({ text, clip }) => !clip && text.startsWith('trim this edge'))
  const middle = (min.x + max.x) / 2
  const [upright, level] = [
    words.filter(({ turn }) => isSteep(turn)),
    words.filter(({ turn }) => !isSteep(turn)),
  ]
  return {
    min: { x: upright.some(({ at }) => at.x < middle) ? min.x : 0, y: 0 },
    max: {
      x: upright.some(({ at }) => at.x > middle) ? max.x : across,
      y: level.length > 0 ? max.y : along,
    },
  }
}

const isSteep = (turn: number): boolean => Math.abs(Math.sin(turn)) > 0.5
