import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll } from 'vitest'
import { forCutter } from '../../src/drawing/drawing.js'
import type { Drawing } from '../../src/drawing/model.js'
import { makeOrder } from '../../src/make.js'
import { writeDxf } from '../../src/write/dxf.js'
import { writeSvg } from '../../src/write/svg.js'
import { HOSTILE, SAMPLER } from '../write/test-drawings.js'
import { PANELS_ORDER } from './panels-order.js'
import { SCRIPTS_ORDER } from './scripts-order.js'

/** A drawing and where its files lie. */
export interface WrittenFiles {
  readonly name: string
  readonly drawing: Drawing
  readonly svg: string
  readonly dxfR12: string
  readonly dxfR2000: string
}

const EXAMPLES = new URL('../../shared/examples/', import.meta.url)

/** Two test drawings and every drawing and panel of the example orders and of two of our own, written into a folder that goes when the tests end. */
export const writeFiles = (): WrittenFiles[] => {
  const folder = mkdtempSync(join(tmpdir(), 'starwright-interop-'))
  afterAll(() => rmSync(folder, { recursive: true }))
  const drawings = [
    { name: 'sampler', drawing: SAMPLER },
    { name: 'hostile', drawing: HOSTILE },
    ...exampleDrawings(),
  ]
  return drawings.map(({ name, drawing }) => {
    const files = {
      svg: join(folder, `${name}.svg`),
      dxfR12: join(folder, `${name}-r12.dxf`),
      dxfR2000: join(folder, `${name}-r2000.dxf`),
    }
    mkdirSync(dirname(files.svg), { recursive: true })
    writeFileSync(files.svg, writeSvg(drawing))
    writeFileSync(files.dxfR12, writeDxf(drawing, 'r12'))
    writeFileSync(files.dxfR2000, writeDxf(drawing, 'r2000'))
    return { name, drawing, ...files }
  })
}

const exampleDrawings = (): { name: string; drawing: Drawing }[] => {
  const orders = [
    ...readdirSync(EXAMPLES)
      .filter((name) => name.endsWith('.yaml'))
      .map((name) => ({ name, text: readFileSync(new URL(name, EXAMPLES), 'utf8') })),
    { name: 'scripts', text: SCRIPTS_ORDER },
    { name: 'panels', text: PANELS_ORDER },
  ]
  return orders.flatMap(({ name, text }) => {
    const outcome = makeOrder({ text })
    if (!outcome.ok) throw new Error(`${name} is refused`)
    return [...outcome.value.drawings, ...outcome.value.drawnPanels].map(({ path, drawing }) => ({
      name: `${name}/${path}`,
      drawing: forCutter(drawing),
    }))
  })
}
