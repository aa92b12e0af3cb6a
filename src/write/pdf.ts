import type { Shape } from '../drawing/model.js'
import { boxesMeet, type Extents } from '../geometry/outline.js'
import { subtract } from '../geometry/point.js'
import type { Bookmark, Page, PlacedArtwork, PrintedBook, View } from '../paper/page.js'
import { toPoints } from '../units/convert.js'
import { drawArtwork } from './pdf-artwork.js'
import { type Document, openDocument } from './pdf-document.js'
import { loadLettering } from './pdf-lettering.js'
import { drawShapes, type OnPage } from './pdf-shapes.js'

/** Pages at 1:1 as one PDF; the media box of each is its sheet and the trim box the same. */
export const writePdf = async (book: PrintedBook): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = []
  for await (const chunk of pdfChunks(book)) chunks.push(chunk)
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0))
  let offset = 0
  for (const chunk of chunks) {
    whole.set(chunk, offset)
    offset += chunk.length
  }
  return whole
}

/** The same file page by page as it is made, so that hundreds of pages never lie in memory together. */
export async function* pdfChunks(book: PrintedBook): AsyncGenerator<Uint8Array> {
  const document = await openDocument(book)
  const { ready, ended } = flowing(document)
  // A stream of Node begins to flow in its next turn only; a single page need not wait for it.
  if (book.pages.length > 1) await new Promise((resolve) => setTimeout(resolve))
  for (const page of book.pages) {
    await addPage(document, page)
    yield* ready.splice(0)
  }
  addBookmarks(document.outline, book.bookmarks)
  document.end()
  await ended
  yield* ready.splice(0)
}

/** What the document has written so far and nobody has taken yet; pdfkit's stream in a browser knows events only. */
const flowing = (document: Document) => {
  const ready: Uint8Array[] = []
  document.on('data', (chunk: Uint8Array) => ready.push(chunk))
  const ended = new Promise<void>((resolve, reject) => {
    document.on('end', () => resolve())
    document.on('error', reject)
  })
  return { ready, ended }
}

type Outline = Document['outline']

/** pdfkit knows the page's number and how it is shown; its types do not. */
const addBookmarks = (outline: Outline, bookmarks: readonly Bookmark[]): void => {
  for (const { title, page, children } of bookmarks) {
    const shown = { expanded: true, pageNumber: page, fit: true } as Parameters<Outline['addItem']>[1]
    addBookmarks(outline.addItem(title, shown), children)
  }
}

const addPage = async (document: Document, page: Page): Promise<void> => {
  const { across, along, stretch } = page.sheet
  const size: [number, number] = [toPoints(across * stretch.x), toPoints(along * stretch.y)]
  document.addPage({ size, margin: 0 })
  const { data } = (document.page as unknown as { dictionary: { data: Record<string, unknown> } }).dictionary
  data.TrimBox = [0, 0, ...size]
  if (stretch.x !== 1 || stretch.y !== 1) document.scale(stretch.x, stretch.y)
  const on: OnPage = { x: (at) => toPoints(at), y: (at) => toPoints(along - at) }
  const { shapes, edges = [], artwork } = page.furniture()
  await loadLettering(document, textsOf(page.views, shapes, artwork))
  for (const view of page.views) {
    clipped(document, view.window, on, () => drawShapes(document, visible(view), shifted(view, on)))
  }
  drawShapes(document, shapes, on)
  drawShapes(document, edges, on)
  for (const placed of artwork) clipped(document, placed.window, on, () => drawArtwork(document, placed, on))
}

/** Every text of a page; the signs in them decide which fonts the file needs. */
const textsOf = (
  views: readonly View[],
  shapes: readonly Shape[],
  artwork: readonly PlacedArtwork[],
): string[] => [
  ...[...views.flatMap((view) => view.shapes), ...shapes].flatMap((shape) =>
    shape.kind === 'label' ? [shape.text] : [],
  ),
  ...artwork.flatMap((placed) =>
    placed.artwork.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
  ),
]

const shifted = ({ shift }: View, on: OnPage): OnPage => ({
  x: (at) => on.x(at + shift.x),
  y: (at) => on.y(at + shift.y),
})

/** What of a view can be seen through its window. */
const visible = ({ shapes, reach, window, shift }: View): readonly Shape[] => {
  if (!reach) return shapes
  const seen = { min: subtract(window.min, shift), max: subtract(window.max, shift) }
  return shapes.filter((shape) => {
    const box = reach.get(shape)
    return box !== undefined && boxesMeet(box, seen)
  })
}

const clipped = (
  document: Document,
  window: Extents | undefined,
  { x, y }: OnPage,
  draw: () => void,
): void => {
  document.save()
  if (window) {
    const { min, max } = window
    document.rect(x(min.x), y(max.y), x(max.x) - x(min.x), y(min.y) - y(max.y)).clip()
  }
  draw()
  document.restore()
}
