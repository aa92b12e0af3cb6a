import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { centredLabel, line, path } from '../drawing/shapes.js'
import { outlineSides } from '../drawing/sides.js'
import { crossingsAt } from '../geometry/crossings.js'
import { hatch } from '../geometry/hatch.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { boxOf, closedOutline, edges, type Outline, outlineSize } from '../geometry/outline.js'
import { type Point, point, scale, subtract } from '../geometry/point.js'
import type { Jig } from '../jigs/jig.js'
import type { Order } from '../order/order.js'
import { showProblem } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import { mm, radians } from '../units/convert.js'
import { showLength } from '../units/show.js'
import { type Block, headingBlock, movedShapes, stacked, textBlock } from './card-blocks.js'
import { JIG_CAUTION } from './jig-phrases.js'
import { jigWords } from './jig-words.js'
import { type DrawnJig, drawJigs, type WantedJig } from './jigs.js'
import { sizeText } from './size-text.js'

/** As large as the shop card. */
const WIDTH = 186
const HEIGHT = 250
const PADDING = 3
const PICTURE = { across: 74, height: 54 }
const COLUMN = 4
const WORDS = 2.5
/** Between two jigs, and for the title and the caution of a page. */
const BETWEEN = 4
const TITLE = 26

/**
 * Pages beside the shop card: each jig put together, with the wood in it and the blade beside it, what it is made of,
 * and how it is set. Jigs that cannot be made for this star or this cutter are named with the reason.
 *
 * @param jigs those of {@link drawJigs}
 */
export const jigCards = (jigs: readonly WantedJig[], plan: StarPlan, order: Order): Drawing[] => {
  const pages: Block[][] = []
  let room = 0
  for (const band of jigBands(jigs, plan, order)) {
    if (pages.length === 0 || room < band.height + BETWEEN) {
      pages.push([])
      room = HEIGHT - 2 * PADDING - TITLE
    }
    pages.at(-1)?.push(band)
    room -= band.height + BETWEEN
  }
  return pages.map((bands) => cardOf(plan, bands, HEIGHT))
}

/** The same on one page, however long. */
export const jigCard = (plan: StarPlan, order: Order): Drawing =>
  cardOf(plan, jigBands(drawJigs(plan, order), plan, order), 0)

const cardOf = (plan: StarPlan, bands: readonly Block[], least: number): Drawing => {
  const title = `${plan.order.name}: jigs`
  const caution = textBlock([JIG_CAUTION], WORDS, WIDTH - 2 * PADDING)
  const page = stacked([textBlock([title], 5, WIDTH - 2 * PADDING), ...bands, caution], BETWEEN)
  const height = Math.max(least, page.height + 2 * PADDING)
  return notedDrawing({
    kind: 'jig-card',
    title,
    trueSize: { across: mm(WIDTH), height: mm(height) },
    figure: [
      path('NOTE', closedOutline([point(0, 0), point(WIDTH, 0), point(WIDTH, height), point(0, height)])),
      ...movedShapes(page.shapes, point(PADDING, height - PADDING)),
    ],
    asides: [],
    pieces: [],
  })
}

const jigBands = (jigs: readonly WantedJig[], plan: StarPlan, order: Order): Block[] =>
  jigs.map((wanted) => {
    if ('needless' in wanted) return leftOut(wanted.name, [`Not needed. ${wanted.needless}`])
    const { drawn } = wanted
    return drawn.ok
      ? jigBand(drawn.value, plan, order)
      : leftOut(
          wanted.name,
          drawn.problems.map((problem) => `Left out. ${showProblem(problem)}`),
        )
  })

const leftOut = (name: string, why: readonly string[]): Block =>
  stacked([headingBlock(name.replaceAll('-', ' ')), textBlock(why, WORDS, WIDTH - 2 * PADDING)], 1.5)

const jigBand = ({ jig, drawing }: DrawnJig, plan: StarPlan, order: Order): Block => {
  const words = jigWords(jig, plan, order)
  const across = WIDTH - 2 * PADDING - PICTURE.across - COLUMN
  const stock = showLength(order.shop.jigStock.thickness, order.lengths)
  const list = [
    ...jig.parts.map(({ letter, name, outer }) => {
      const size = sizeText(outlineSize(outer), order.lengths)
      return `${letter}  ${name.replace(/^.*, /, '')}: ${size}`
    }),
    ...words.hardware.map((each) => `+  ${each}`),
    `All from ${stock} panel, a piece of ${sizeText(drawing.trueSize, order.lengths)}.`,
  ]
  const text = stacked(
    [
      headingBlock(words.title),
      textBlock(words.steps, WORDS, across),
      headingBlock('Parts'),
      textBlock(list, WORDS, across),
    ],
    1.5,
  )
  const picture = assembly(jig)
  return {
    height: Math.max(text.height, picture.height),
    shapes: [...picture.shapes, ...movedShapes(text.shapes, point(PICTURE.across + COLUMN, 0))],
  }
}

/** The jig put together, as the saw's operator sees it from above: the fence at the top. */
const assembly = (jig: Jig): Block => {
  const upright = jig.inUse?.blade === undefined
  const seen = ({ x, y }: Point): Point => (upright ? point(x, y) : point(0 - x, 0 - y))
  const lie = ({ vertices, closed }: Outline): Outline => ({
    closed,
    vertices: vertices.map((vertex) => ({ ...vertex, ...seen(vertex) })),
  })
  const parts = jig.parts.map((part) => lie(part.footprint ?? part.outer))
  const wood = jig.inUse?.wood.map(lie) ?? []
  const blade = jig.inUse?.blade?.map(seen) ?? []
  const around = jig.inUse?.around?.map(lie) ?? []
  const { min, max } = boxOf([...parts, ...around, ...wood, { closed: false, vertices: blade }])
  const reduced = Math.min(PICTURE.across / (max.x - min.x), PICTURE.height / (max.y - min.y))
  const at = (place: Point): Point => scale(subtract(place, point(min.x, max.y)), reduced)
  const small = ({ vertices, closed }: Outline): Outline => ({
    closed,
    vertices: vertices.map((vertex) => ({ ...vertex, ...at(vertex) })),
  })
  const [from, to] = blade.map(at)
  const woodShapes = wood.flatMap((piece) => [
    path('PATTERN', small(piece)),
    ...hatch(
      outlineSides(small(piece)).map(([corner]) => corner),
      radians(0),
      1.8,
    ).map(([a, b]) => line('GUIDE', a, b)),
  ])
  const shapes: Shape[] = [
    ...woodShapes,
    ...around.map((outline) => path('NOTE', small(outline))),
    ...parts.map((part) => path('DIM', small(part))),
    ...jig.parts.flatMap(({ inner, footprint }) =>
      footprint ? [] : inner.map((hole) => path('DIM', small(lie(hole)))),
    ),
    ...(from && to ? [line('CUT-OUTSIDE', from, to, 'chain')] : []),
    ...jig.parts.map(({ letter }, index) =>
      centredLabel(letter, letterPlace(parts.map(small), index), { height: 3, layer: 'PATTERN' }),
    ),
  ]
  return { height: (max.y - min.y) * reduced, shapes }
}

const PLACES = 30

/** Where a part's letter stands: in the roomiest place of it that no part above covers. */
const letterPlace = (parts: readonly Outline[], index: number): Point => {
  const own = parts[index] ?? closedOutline([])
  const { min, max } = boxOf([own])
  const inside = (outline: Outline, { x, y }: Point): boolean =>
    crossingsAt(
      outlineSides(outline).map(([corner]) => corner),
      y,
    ).filter((crossing) => crossing < x).length %
      2 ===
    1
  const lines = parts.flatMap((part) => edges(part))
  const places = Array.from({ length: PLACES * PLACES }, (_, step) =>
    point(
      min.x + ((max.x - min.x) * ((step % PLACES) + 0.5)) / PLACES,
      min.y + ((max.y - min.y) * (Math.floor(step / PLACES) + 0.5)) / PLACES,
    ),
  ).filter((place) => inside(own, place) && !parts.slice(index + 1).some((part) => inside(part, place)))
  return places.reduce<{ place: Point; room: number }>(
    (best, place) =>
      lines.every((edge) => distanceToEdge(place, edge) > best.room)
        ? { place, room: Math.min(...lines.map((edge) => distanceToEdge(place, edge))) }
        : best,
    { place: places[0] ?? min, room: 0 },
  ).place
}
