import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PDFDocument } from 'pdf-lib'
import { afterAll, expect, it } from 'vitest'
import { starwright } from './starwright.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-jig-card-'))
afterAll(() => rmSync(folder, { recursive: true }))

const ALL = 'blank-stop,arm-cradle,angle-gauge,trial-window,glue-up-frame'

it.each([
  ['A4', 595.28, 841.89],
  ['Letter', 612, 792],
])(
  'a jig card as PDF stands on upright sheets of %s, as many as its jigs take',
  async (paper, across, along) => {
    const file = join(folder, `${paper}.pdf`)
    const words = `--points 5 --tip-angle 36 --radius 200 --paper ${paper} --jigs ${ALL}`.split(' ')
    expect(starwright(['draw', 'jig-card', ...words, '--to', file])).toMatchObject({ code: 0, err: '' })
    const pages = (await PDFDocument.load(readFileSync(file))).getPages()
    // ISO 216 and ANSI/ASME Y14.1, in points of 1/72 inch.
    for (const page of pages) {
      expect(page.getWidth()).toBeCloseTo(across, 1)
      expect(page.getHeight()).toBeCloseTo(along, 1)
    }
    expect(pages.length).toBe(2)
  },
)
