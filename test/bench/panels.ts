import { type Outline, outlineSize } from '../../src/geometry/outline.js'
import { areaBound } from '../../src/nest/area-bound.js'
import { inBoxes } from '../../src/nest/in-boxes.js'
import { nestSteps } from '../../src/nest/nest.js'
import { panel, plate } from '../nest/stars.js'

const STARS: readonly (readonly [string, Outline])[] = [
  ['5 points 45°, board 88.9, inset 12', plate(5, 45, 88.9, 12)],
  ['{5/2}, board 70, inset 10', plate(5, 36, 70, 10)],
  ['{6/2}, board 60, inset 8', plate(6, 60, 60, 8)],
  ['8 points 50°, board 80, inset 10, disc', plate(8, 50, 80, 10, 'disc')],
]

const PANELS = [panel(2440, 1220, 10, 4), panel(1525, 1525, 10, 4), panel(1220, 610, 10, 4)]

/** Plates on one panel, to the last step of the search: beside rows of boxes and what the area allows, and the time. */
export const reportPanels = (): void => {
  for (const [star, outline] of STARS)
    for (const sheet of PANELS) {
      const [begun, cpu] = [performance.now(), process.cpuUsage()]
      const steps = nestSteps([{ outline, count: 100_000 }], sheet, 1)
      let next = steps.next()
      let reached = 0
      let most = 0
      while (!next.done) {
        if (next.value.most > most) [most, reached] = [next.value.most, performance.now()]
        next = steps.next()
      }
      const seconds = (until: number): string => ((until - begun) / 1000).toFixed(1)
      const { user, system } = process.cpuUsage(cpu)
      console.log(
        `panel ${sheet.width} × ${sheet.height}, ${star}: ${most} plates, boxes ${inBoxes(outlineSize(outline), sheet)}, area ${areaBound(outline, sheet)}; reached after ${seconds(reached)} s, all steps ${seconds(performance.now())} s, CPU ${((user + system) / 1e6).toFixed(1)} s`,
      )
    }
}
