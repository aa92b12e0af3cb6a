import { performance as clock } from 'node:perf_hooks'
import { openBrowser, openPage } from './opened.js'

/*
 * How long the page takes to draw a star of 24 points anew (order, plan and SVG) when its size is moved by a key, how
 * long until the drawn cuts have followed, and from its start to the first drawing. A benchmark to read, not a test.
 */

const ORDER = `units: mm
shop: { saw: { limit: 60, kerf: 2.4 }, boards: [{ width: 95, thickness: 19, length: 3000 }] }
stars: [{ name: Bell tower, points: 24, tip-angle: 40, radius: 400, thickness: 19 }]
`
const MOVES = 120
/** Each in a browser just started. */
const OPENINGS = 9
const hash = `#${new URLSearchParams({ order: ORDER })}`

const painted: number[] = []
const opened: number[] = []
for (let opening = 0; opening < OPENINGS; opening++) {
  const own = await openBrowser()
  const begun = clock.now()
  const { page } = await openPage(own, { hash })
  opened.push(clock.now() - begun)
  painted.push(
    await page.evaluate(
      () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
    ),
  )
  await own.close()
}

const browser = await openBrowser()
const { page } = await openPage(browser, { hash })
// The worker lays pages beside; measured is the page itself.
await page.getByText(/sheets to print in all/).waitFor({ timeout: 120_000 })
const times = await page.evaluate(async (moves) => {
  const grip = document.querySelector('[role="slider"]')
  const shown = (): string | null | undefined => grip?.getAttribute('aria-valuetext')
  const cuts = document.querySelector('#cuts .drawn')
  if (!cuts) throw new Error('no cuts are drawn')
  const taken: number[] = []
  const followed: number[] = []
  for (let move = 0; move < moves; move++) {
    const before = shown()
    const from = performance.now()
    const follow = new Promise<void>((done) => {
      const seen = new MutationObserver(() => {
        seen.disconnect()
        followed.push(performance.now() - from)
        done()
      })
      seen.observe(cuts, { childList: true, subtree: true })
    })
    grip?.dispatchEvent(
      new KeyboardEvent('keydown', { key: move % 2 === 0 ? 'ArrowUp' : 'ArrowDown', bubbles: true }),
    )
    while (shown() === before && performance.now() - from < 1_000) await Promise.resolve()
    document.querySelector('.star')?.getBoundingClientRect()
    taken.push(performance.now() - from)
    await follow
    await new Promise((rest) => setTimeout(rest, 30))
  }
  return { taken, followed }
}, MOVES)
const at = (list: readonly number[], share: number): string =>
  list.toSorted((a, b) => a - b)[Math.floor(share * (list.length - 1))]?.toFixed(1) ?? 'unknown'
for (const [what, list] of [
  ['redraw of 24 points', times.taken],
  ['the drawn cuts have followed after', times.followed],
  ['first drawing painted after', painted],
  ['opened and drawn for the driver after', opened],
] as const)
  console.log(
    `${what}: median ${at(list, 0.5)} ms, one of ten within ${at(list, 0.1)}, nine ${at(list, 0.9)} ms`,
  )
await browser.close()
