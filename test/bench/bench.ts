/*
 * Ratios, each between two things measured by turns in one run, so that a busy machine slows both. Run: npm run bench
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import makerjs from 'makerjs'
import PDFDocument from 'pdfkit'
import { drawingExtents } from '../../src/drawing/bounds.js'
import type { Drawing, Path } from '../../src/drawing/model.js'
import { batchRisk } from '../../src/fit/batch-risk.js'
import { edges, moved } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { solveStar, starOutline } from '../../src/geometry/star.js'
import type { PrintedBook } from '../../src/paper/page.js'
import type { Sheet } from '../../src/paper/sheet.js'
import type { StarPlan } from '../../src/plan/plan.js'
import { degrees, mm, toPoints } from '../../src/units/convert.js'
import { writePdf } from '../../src/write/pdf.js'
import { writeSvg } from '../../src/write/svg.js'
import { planOf } from '../orders.js'
import { reportPanels } from './panels.js'
import { reportStock } from './stock.js'

const BUILT = 'dist/cli/starwright.js'
const ORDER = 'shared/examples/winter-fair.yaml'

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN

const timed = async (work: () => unknown): Promise<number> => {
  const start = performance.now()
  await work()
  return performance.now() - start
}

/** Medians of two kinds of work done by turns. */
const byTurns = async (
  rounds: number,
  ours: () => unknown,
  theirs: () => unknown,
): Promise<[number, number]> => {
  const times: [number, number][] = []
  for (let round = 0; round < rounds + 2; round++) times.push([await timed(ours), await timed(theirs)])
  const warm = times.slice(2)
  return [median(warm.map(([a]) => a)), median(warm.map(([, b]) => b))]
}

const report = (what: string, [ours, theirs]: readonly [number, number], goal: string): void =>
  console.log(
    `${what.padEnd(58)} ${ours.toFixed(1).padStart(8)} ms ${theirs.toFixed(1).padStart(8)} ms ${(ours / theirs).toFixed(2).padStart(6)} x  (${goal})`,
  )

const node = (...words: string[]) => spawnSync(process.execPath, words, { encoding: 'utf8' })

const STARS = 400

const starPaths = (): Path[] => {
  const star = solveStar(12, degrees(40), 'radius', mm(100))
  return Array.from({ length: STARS }, (_, index) => ({
    kind: 'path' as const,
    layer: 'PATTERN' as const,
    ...moved(starOutline(star), point((index % 20) * 210, Math.floor(index / 20) * 210)),
  }))
}

const shapes = starPaths()

const drawing: Drawing = {
  kind: 'bench',
  title: 'bench',
  trueSize: { across: mm(4200), height: mm(4200) },
  shapes,
  figure: shapes,
  asides: [],
  pieces: [],
}

const makerModel = () => ({
  units: makerjs.unitType.Millimeter,
  models: Object.fromEntries(
    starPaths().map(({ vertices }, index) => [
      `star${index}`,
      new makerjs.models.ConnectTheDots(
        true,
        vertices.map(({ x, y }): [number, number] => [x, y]),
      ),
    ]),
  ),
})

const bareModel = makerModel()

const bareSvg = (): string =>
  makerjs.exporter.toSVG(bareModel, { accuracy: 1e-4, units: makerjs.unitType.Millimeter })

const { min, max } = drawingExtents(drawing)
const window = { min: point(10, 10), max: point(10 + max.x - min.x, 10 + max.y - min.y) }
const shift = point(10 - min.x, 10 - min.y)
const sheet: Sheet = {
  across: mm(max.x - min.x + 20),
  along: mm(max.y - min.y + 20),
  stretch: { x: 1, y: 1 },
  margin: mm(10),
  window,
}
const book: PrintedBook = {
  title: 'bench',
  bookmarks: [],
  pages: [
    { name: '1A', sheet, views: [{ shapes, window, shift }], furniture: () => ({ shapes: [], artwork: [] }) },
  ],
}

const barePdf = (): Promise<number> =>
  new Promise((resolve) => {
    const document = new PDFDocument({ autoFirstPage: false, compress: false, pdfVersion: '1.7' })
    let size = 0
    document.on('data', (chunk: Uint8Array) => {
      size += chunk.length
    })
    document.on('end', () => resolve(size))
    document.addPage({ size: [toPoints(sheet.across), toPoints(sheet.along)], margin: 0 })
    document.lineWidth(1).strokeColor('#000000')
    for (const shape of drawing.shapes as readonly Path[]) {
      const [start] = shape.vertices
      if (!start) continue
      const x = (at: number) => toPoints(at + shift.x)
      const y = (at: number) => toPoints(sheet.along - at - shift.y)
      document.moveTo(x(start.x), y(start.y))
      for (const { to } of edges(shape).slice(0, -1)) document.lineTo(x(to.x), y(to.y))
      document.closePath()
    }
    document.stroke()
    document.end()
  })

console.log(`Node ${process.version}, ${cpus().length} cores. Ours, theirs, ratio; medians by turns.\n`)

report(
  'plan with flags : node -e 0, whole processes',
  await byTurns(
    25,
    () => node(BUILT, 'plan', '--points', '5', '--tip-angle', '45', '--board-width', '70'),
    () => node('-e', '0'),
  ),
  'at most 2.5',
)
report(
  'plan of the example order : node -e 0',
  await byTurns(
    25,
    () => node(BUILT, 'plan', ORDER),
    () => node('-e', '0'),
  ),
  'at most 2.5',
)
report(
  'season with flags : node -e 0',
  await byTurns(
    25,
    () =>
      node(BUILT, 'season', '--points', '5', '--tip-angle', '45', '--board-width', '70', '--rings', 'flat'),
    () => node('-e', '0'),
  ),
  'at most 2.5',
)
report(
  'season of the example order : node -e 0',
  await byTurns(
    25,
    () => node(BUILT, 'season', ORDER),
    () => node('-e', '0'),
  ),
  'at most 2.5',
)
report(
  'dryfit of one star : node -e 0',
  await byTurns(
    25,
    () => node(BUILT, 'dryfit', ORDER, '--star', 'Boathouse', '--gap', '2mm', '--opens-at', 'centre'),
    () => node('-e', '0'),
  ),
  'at most 2.5',
)
report(
  `SVG of ${STARS} stars of 24 edges : makerjs exporter`,
  await byTurns(30, () => writeSvg(drawing), bareSvg),
  'at most 1',
)
report(
  `PDF of the same ${STARS * 24} edges : bare pdfkit`,
  await byTurns(40, () => writePdf(book), barePdf),
  'at most 1.2',
)

const chosen = planOf(readFileSync(ORDER, 'utf8'))
const [boathouse] = chosen.stars
const [most] = planOf('shop: { saw: { limit: 60 } }\nstars: [{ regular: 24/7, across: 500 }]').stars
if (!boathouse || !most) throw new Error('both orders have a star')
const limited = (what: string, milliseconds: number, goal: string): void =>
  console.log(`${what.padEnd(58)} ${milliseconds.toFixed(0).padStart(8)} ms  (${goal})`)
const millionStars = (plan: StarPlan) =>
  batchRisk(plan, chosen.order.shop, { set: 'told', seed: 1, simulated: 1_000_000 })
const medianOf = async (rounds: number, work: () => unknown): Promise<number> => {
  const times: number[] = []
  for (let round = 0; round < rounds; round++) times.push(await timed(work))
  return median(times)
}
limited(
  'a million simulated stars of 5 points',
  await medianOf(5, () => millionStars(boathouse)),
  'at most 2000',
)
limited('a million simulated stars of 24 points', await medianOf(5, () => millionStars(most)), 'at most 2000')
limited(
  'choose over all stars to 24 points, whole process',
  await medianOf(5, () => node(BUILT, 'choose', ORDER)),
  'at most 1000',
)

const folder = mkdtempSync(join(tmpdir(), 'starwright-bench-'))
const tellCpu =
  'data:text/javascript,process.on("exit",()=>process.stderr.write(JSON.stringify(process.cpuUsage())))'
const cpu = Array.from({ length: 7 }, () => {
  const { stderr } = node('--import', tellCpu, BUILT, 'make', ORDER, '--out', folder)
  const { user, system } = JSON.parse(stderr)
  return (user + system) / 1e6
})
rmSync(folder, { recursive: true })
console.log(`make of the example order: ${median(cpu).toFixed(2)} s of CPU (at most 1.5 s)`)

await reportStock()
reportPanels()
