import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { shapeExtents } from '../../src/drawing/bounds.js'
import { boxesMeet } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { makeOrder } from '../../src/make.js'
import { showProblem } from '../../src/order/problem.js'
import type { Page } from '../../src/paper/page.js'
import { bytesOf } from '../prints.js'
import { type ReadPage, readBookmarks, readPdf } from '../read-back/read-pdf.js'

const made = (text: string) => {
  const order = makeOrder({ text })
  if (!order.ok) throw new Error(order.problems.map(showProblem).join('\n'))
  return order.value
}

const fileOf = async ({ files }: ReturnType<typeof made>, path: string): Promise<Uint8Array> => {
  const file = files.find((each) => each.path === path)
  if (!file) throw new Error(`there is no ${path}`)
  return Uint8Array.from(await bytesOf(file.content))
}

const ORDERS = ['winter-fair', 'lantern-walk'].map((name) => {
  const text = readFileSync(`shared/examples/${name}.yaml`, 'utf8')
  return [name, text] as const
})

const SMALL =
  'stars: [{ points: 5, tip-angle: 45, across: 70, backing: { inset: 3 } }, { name: Second, points: 6, tip-angle: 60, across: 60 }]\nshop: { paper: { size: A3 } }'

const ON_ROLL = SMALL.replace('size: A3', 'roll: 610 mm, longest: 900 mm')

const LONG_NAMES = `title: Village\n${SMALL}`
  .replace('[{ points', '[{ name: The star over the door of the old lakeside bakery, points')
  .replace('Second', 'The star in the window of the schoolhouse by the pier')

const EVERY = [
  ...ORDERS,
  ['small stars', SMALL],
  ['small stars on a roll', ON_ROLL],
  ['small stars with long names', LONG_NAMES],
] as const

const allTexts = (page: ReadPage | undefined): string => page?.texts.join(' ') ?? ''

describe.each(EVERY)('all-patterns.pdf of %s', (_, text) => {
  const order = made(text)
  const isShared = (page: number): boolean => (order.book.pages[page]?.views.length ?? 0) > 1

  it('has a bookmark for each star in the order of work, and below it one for each drawing, on its page', async () => {
    const bytes = await fileOf(order, 'all-patterns.pdf')
    const [bookmarks, pages] = await Promise.all([readBookmarks(bytes), readPdf(bytes)])
    const stars = [...new Set(order.drawings.map(({ star }) => star))]
    expect(bookmarks.map(({ title }) => title)).toEqual(stars)
    for (const bookmark of bookmarks) {
      const drawings = order.drawings.filter(({ star }) => star === bookmark.title)
      expect(bookmark.children.map(({ title }) => title)).toEqual(
        drawings.map(({ drawing }) => drawing.kind.replaceAll('-', ' ')),
      )
      expect(bookmark.page).toBe(bookmark.children[0]?.page)
      for (const [index, child] of bookmark.children.entries()) {
        const { figure = [], asides = [] } = drawings[index]?.drawing ?? {}
        const words = figure.flatMap((each) =>
          each.kind === 'label' && !asides.includes(each) ? [each.text] : [],
        )
        const count = drawings[index]?.print.pages.length ?? 0
        const shown = pages
          .slice(child.page, child.page + count)
          .map(allTexts)
          .join(' ')
        expect(shown).toContain(drawings[index]?.drawing.title)
        // On several pages a line that runs over a seam is cut there.
        if (count === 1) expect(words.filter((text) => !shown.includes(text))).toEqual([])
      }
    }
    const inOrder = bookmarks.flatMap(({ children }) => children.map(({ page }) => page))
    // A drawing that shares an earlier sheet leads back to it; nothing else does.
    for (const [index, page] of inOrder.entries()) {
      if (!isShared(page)) expect(page).toBe(Math.max(...inOrder.slice(0, index + 1)))
    }
    expect(pages).toHaveLength(order.book.pages.length)
  })

  it('is in the order of work: the jigs stand between the arm and the mat', () => {
    for (const { children } of order.book.bookmarks) {
      const titles = children.map(({ title }) => title)
      const at = (title: string): number => titles.indexOf(title)
      expect(at('arm pattern')).toBe(0)
      const after = ['star mat', 'backing'].map(at).filter((place) => place >= 0)
      const jigs = ['blank stop', 'arm cradle', 'angle gauge'].map(at).filter((place) => place >= 0)
      expect(Math.min(...after)).toBeGreaterThan(Math.max(0, ...jigs))
    }
  })

  it('takes no more pages than the files of its drawings, and shows what they show', async () => {
    const alone = order.drawings.flatMap(({ print }) => print.pages)
    expect(order.book.pages.length).toBeLessThanOrEqual(alone.length)
    const shapes = new Set(order.book.pages.flatMap(({ views }) => views.flatMap((view) => view.shapes)))
    expect(
      alone.flatMap(({ views }) => views.flatMap((view) => view.shapes)).filter((each) => !shapes.has(each)),
    ).toEqual([])
  })

  it('letters each drawing that shares a sheet with its own title, and no title block there is cut short', () => {
    const drawingOf = new Map(
      order.drawings.flatMap(({ drawing, print }) =>
        print.pages.flatMap(({ views }) =>
          views.flatMap(({ shapes }) => shapes.map((shape) => [shape, drawing] as const)),
        ),
      ),
    )
    for (const { views, furniture } of order.book.pages.filter((page) => page.views.length > 1)) {
      for (const { shapes } of views) {
        const drawing = shapes.flatMap((shape) => drawingOf.get(shape) ?? [])[0]
        const labels = shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : [])).join(' ')
        const titles = [drawing?.title, drawing?.notes?.title].filter((title) => title !== undefined)
        expect(
          titles.some((title) => labels.includes(title)),
          labels,
        ).toBe(true)
      }
      const lettered = furniture().artwork.flatMap(({ artwork }) =>
        artwork.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
      )
      expect(lettered.filter((text) => text.endsWith('...'))).toEqual([])
    }
  })

  it('numbers sheets by those that are in the book, and says which shared one shows the rest', () => {
    const blockOf = (page: Page): string[] =>
      page
        .furniture()
        .artwork.flatMap(({ artwork }) => artwork.marks)
        .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
    const names = order.book.pages.map(({ name }) => name)
    const sharedNames = names.filter((name) => /^S\d+$/.test(name))
    for (const { drawing, print } of order.drawings) {
      const shapes = new Set(print.pages.flatMap(({ views }) => views.flatMap((view) => view.shapes)))
      const shows = order.book.pages.filter(({ views }) =>
        views.some((view) => view.shapes.some((shape) => shapes.has(shape))),
      )
      const own = shows.filter(({ name }) => !sharedNames.includes(name))
      for (const page of own) {
        const words = blockOf(page)
        expect(words, drawing.title).toContain(`${page.name} / ${own.length}`)
        const shared = shows.flatMap(({ name }) => (sharedNames.includes(name) ? [name] : []))
        const kind = drawing.kind.replaceAll('-', ' ')
        expect(words).toContain(shared.length > 0 ? `${kind}, see ${shared.join(', ')}` : kind)
      }
      // In the drawing's own file all of its sheets are there.
      for (const page of print.pages) expect(blockOf(page)).toContain(`${page.name} / ${print.pages.length}`)
    }
    for (const page of order.book.pages)
      if (sharedNames.includes(page.name))
        expect(blockOf(page)).toContain(`${page.name} / ${sharedNames.length}`)
  })

  it('keeps drawings that share a sheet apart, each whole in a window of its own', () => {
    for (const { views, sheet } of order.book.pages.filter((page) => page.views.length > 1)) {
      for (const [index, { window, shapes, shift }] of views.entries()) {
        const { min, max } = shapeExtents(shapes)
        expect(min.x + shift.x).toBeGreaterThan(window.min.x)
        expect(min.y + shift.y).toBeGreaterThan(window.min.y)
        expect(max.x + shift.x).toBeLessThan(window.max.x)
        expect(max.y + shift.y).toBeLessThan(window.max.y)
        expect(window.min.x).toBeGreaterThanOrEqual(sheet.window.min.x - 1e-9)
        expect(window.min.y).toBeGreaterThanOrEqual(sheet.window.min.y - 1e-9)
        expect(window.max.x).toBeLessThanOrEqual(sheet.window.max.x + 1e-9)
        expect(window.max.y).toBeLessThanOrEqual(sheet.window.max.y + 1e-9)
        // Windows may touch, not overlap.
        const shrunk = {
          min: point(window.min.x + 1e-6, window.min.y + 1e-6),
          max: point(window.max.x - 1e-6, window.max.y - 1e-6),
        }
        expect(views.slice(index + 1).filter((other) => boxesMeet(shrunk, other.window))).toEqual([])
      }
    }
  })
})

it('small drawings share pieces of a roll, which is then used less, and none gets longer than allowed', () => {
  const order = made(ON_ROLL)
  const length = (pages: readonly { readonly sheet: { readonly along: number } }[]): number =>
    pages.reduce((sum, { sheet }) => sum + sheet.along, 0)
  const apart = order.drawings.flatMap(({ print }) => print.pages)
  expect(order.book.pages.some(({ views }) => views.length > 1)).toBe(true)
  expect(length(order.book.pages)).toBeLessThan(length(apart))
  for (const { sheet } of order.book.pages) expect(sheet.along).toBeLessThanOrEqual(900)
})

it('small drawings share sheets, and the words of all of them are found there', async () => {
  const order = made(SMALL)
  const shared = order.book.pages.flatMap(({ views }, index) => (views.length > 1 ? [{ views, index }] : []))
  expect(shared.length).toBeGreaterThan(0)
  const pages = await readPdf(await fileOf(order, 'all-patterns.pdf'))
  for (const { views, index } of shared) {
    const labels = views.flatMap(({ shapes }) =>
      shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : [])),
    )
    const found = allTexts(pages[index])
    expect(labels.filter((label) => !found.includes(label))).toEqual([])
  }
})

describe.each([
  ['mm', 10, 25.4],
  ['in', 25.4, 10],
] as const)('print-check.pdf in %s', (units, firstStep, secondStep) => {
  it('has rulers of 150 mm and 6 in both ways, the order’s own units read first', async () => {
    const order = made(
      `units: ${units}\nstars: [{ points: 5, tip-angle: 45, across: ${units === 'mm' ? 300 : 12} }]`,
    )
    const [page] = await readPdf(await fileOf(order, 'print-check.pdf'))
    const lines = (page?.strokes ?? []).flatMap(({ points: [a, b], closed }) =>
      a && b && !closed ? [[a, b] as const] : [],
    )
    const whole = 152.4
    const across = lines.find(([a, b]) => Math.abs(b.x - a.x - whole) < 0.01 && Math.abs(a.y - b.y) < 0.001)
    const along = lines.find(([a, b]) => Math.abs(b.y - a.y - whole) < 0.01 && Math.abs(a.x - b.x) < 0.001)
    if (!across || !along) throw new Error('a ruler is missing')
    // Ticks at whole figures stand on either side: the order's own above the level ruler and left of the upright one.
    const at = (figure: number, side: 1 | -1): boolean =>
      lines.some(
        ([a, b]) =>
          near(a.x, across[0].x + figure) &&
          near(b.x, a.x) &&
          near(a.y, across[0].y) &&
          near(b.y - a.y, side * 7),
      )
    const up = (figure: number, side: 1 | -1): boolean =>
      lines.some(
        ([a, b]) =>
          near(a.y, along[0].y + figure) &&
          near(b.y, a.y) &&
          near(a.x, along[0].x) &&
          near(b.x - a.x, -side * 7),
      )
    const figuresOf = (step: number) => [0, 1, 2].map((count) => count * step)
    const last = (step: number) => (step === 10 ? 150 : 152.4)
    for (const [step, side] of [
      [firstStep, 1],
      [secondStep, -1],
    ] as const) {
      for (const figure of [...figuresOf(step), last(step)])
        expect([figure, at(figure, side), up(figure, side)]).toEqual([figure, true, true])
    }
  })
})

const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.01
