import { shapeExtents } from '../drawing/bounds.js'
import { LAYERS, type Pen, penOf } from '../drawing/layers.js'
import type { Path, Shape } from '../drawing/model.js'
import { type Arc, edges } from '../geometry/outline.js'
import { type Point, point, subtract } from '../geometry/point.js'
import type { Page, PrintedDrawing } from '../paper/page.js'
import { toPoints } from '../units/convert.js'
import { letter, lineOf, loadLettering } from './pdf-lettering.js'

type Document = InstanceType<typeof import('pdfkit')>

/** Part of every file's identity, so that the same order gives the same bytes. */
const FIXED_DATE = new Date(Date.UTC(2000, 0, 1))

/** A curve spans at most this much; the radial error of one Bezier is then below 1e-6 of the radius. */
const CURVE_SPAN = Math.PI / 8

/** What the pen is set to; a new setting is written only when it changes. */
interface PenState {
  pen: Pen | undefined
  colour: string
}

/**
 * A drawing on its pages, at 1:1. The viewer is told not to scale (`PrintScaling None`, ISO 32000-1 table 150); the
 * media box is the sheet and the trim box the same. Nothing is compressed, because compressors differ between
 * machines and the bytes must not.
 */
export const writePdf = async ({ drawing, pages }: PrintedDrawing): Promise<Uint8Array> => {
  const PDFDocument = await loadPdfkit()
  const document = new PDFDocument({
    autoFirstPage: false,
    compress: false,
    pdfVersion: '1.7',
    displayTitle: true,
    lang: 'en',
    info: {
      Title: drawing.title,
      Creator: 'Starwright',
      Producer: 'Starwright',
      CreationDate: FIXED_DATE,
      ModDate: FIXED_DATE,
    },
  })
  const bytes = collect(document)
  forbidScaling(document)
  await loadLettering(document, textsOf(pages))
  // On a single page everything shows.
  const culled = pages.length > 1
  const extents = new Map(culled ? drawing.shapes.map((shape) => [shape, shapeExtents([shape])]) : [])
  for (const page of pages) {
    addPage(document, page)
    const [low, high] = [subtract(page.window.min, page.shift), subtract(page.window.max, page.shift)]
    const visible = page.shapes.filter((shape) => {
      const box = extents.get(shape)
      if (!box) return true
      return box.min.x <= high.x && box.max.x >= low.x && box.min.y <= high.y && box.max.y >= low.y
    })
    drawInWindow(document, page, visible)
    drawShapes(document, page.furniture, point(0, 0), page)
  }
  document.end()
  return bytes
}

/** The browser's build of pdfkit, which knows no font until it is given one; in Node it finds its own. */
interface BrowserPdfkit {
  readonly registerStdFonts?: (metrics: object) => void
}

const loadPdfkit = async () => {
  const pdfkit = await import('pdfkit')
  const { registerStdFonts } = pdfkit as BrowserPdfkit
  if (registerStdFonts) registerStdFonts((await import('pdfkit/standard-fonts/Helvetica')).default)
  return pdfkit.default
}

const textsOf = (pages: readonly Page[]): string[] =>
  pages.flatMap(({ shapes, furniture }) =>
    [...shapes, ...furniture].flatMap((shape) => (shape.kind === 'label' ? [shape.text] : [])),
  )

const collect = (document: Document): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = []
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    document.on('error', reject)
    document.on('end', () => {
      const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0))
      let offset = 0
      for (const chunk of chunks) {
        whole.set(chunk, offset)
        offset += chunk.length
      }
      resolve(whole)
    })
  })

/** The catalog's viewer preferences; the types of pdfkit do not know them. */
const forbidScaling = (document: Document): void => {
  const { _root: root } = document as unknown as {
    _root: { data: { ViewerPreferences: { data: Record<string, unknown> } } }
  }
  root.data.ViewerPreferences.data.PrintScaling = 'None'
}

const addPage = (document: Document, { across, along }: Page): void => {
  const size: [number, number] = [toPoints(across), toPoints(along)]
  document.addPage({ size, margin: 0 })
  const { data } = (document.page as unknown as { dictionary: { data: Record<string, unknown> } }).dictionary
  data.TrimBox = [0, 0, ...size]
}

const drawInWindow = (document: Document, page: Page, shapes: readonly Shape[]): void => {
  const { min, max } = page.window
  document.save()
  document
    .rect(toPoints(min.x), toPoints(page.along - max.y), toPoints(max.x - min.x), toPoints(max.y - min.y))
    .clip()
  drawShapes(document, shapes, page.shift, page)
  document.restore()
}

/** Layer by layer, paths with one pen as one stroke, lettering after the lines. */
const drawShapes = (document: Document, shapes: readonly Shape[], shift: Point, page: Page): void => {
  const x = (at: number): number => toPoints(at + shift.x)
  const y = (at: number): number => toPoints(page.along - at - shift.y)
  const state: PenState = { pen: undefined, colour: '' }
  for (const { name, colour } of LAYERS) {
    const onLayer = shapes.filter(({ layer }) => layer === name)
    let open = false
    for (const shape of onLayer) {
      if (shape.kind !== 'path') continue
      const pen = penOf(shape)
      if (pen !== state.pen || colour !== state.colour) {
        if (open) document.stroke()
        takePen(document, pen, colour)
        Object.assign(state, { pen, colour })
      }
      tracePath(document, shape, x, y)
      open = true
    }
    if (open) document.stroke()
    for (const shape of onLayer) {
      if (shape.kind === 'label') letter(document, lineOf(shape), x(shape.at.x), y(shape.at.y))
    }
  }
}

const takePen = (document: Document, { width, dashes }: Pen, colour: string): void => {
  document.lineWidth(toPoints(width)).lineJoin('round').lineCap('butt').strokeColor(colour)
  const [first, ...rest] = dashes.map((dash) => toPoints(dash))
  if (first === undefined) document.undash()
  else document.dash([first, ...rest] as unknown as number, {})
}

const tracePath = (
  document: Document,
  shape: Path,
  x: (at: number) => number,
  y: (at: number) => number,
): void => {
  const [start] = shape.vertices
  if (!start) return
  document.moveTo(x(start.x), y(start.y))
  for (const { to, arc } of edges(shape)) {
    if (arc) traceArc(document, arc, x, y)
    else if (to !== start) document.lineTo(x(to.x), y(to.y))
  }
  if (shape.closed) document.closePath()
}

/** One Bezier per {@link CURVE_SPAN}: handles of 4/3 tan(span / 4) of the radius. */
const traceArc = (
  document: Document,
  { centre, radius, start, sweep }: Arc,
  x: (at: number) => number,
  y: (at: number) => number,
): void => {
  const steps = Math.ceil(Math.abs(sweep) / CURVE_SPAN)
  const span = sweep / steps
  const handle = radius * (4 / 3) * Math.tan(span / 4)
  const on = (direction: number): Point =>
    point(centre.x + radius * Math.cos(direction), centre.y + radius * Math.sin(direction))
  for (let step = 0; step < steps; step++) {
    const [from, to] = [start + step * span, start + (step + 1) * span]
    const [a, b] = [on(from), on(to)]
    document.bezierCurveTo(
      x(a.x - handle * Math.sin(from)),
      y(a.y + handle * Math.cos(from)),
      x(b.x + handle * Math.sin(to)),
      y(b.y - handle * Math.cos(to)),
      x(b.x),
      y(b.y),
    )
  }
}
