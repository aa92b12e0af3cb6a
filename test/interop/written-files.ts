import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll } from 'vitest'
import type { Drawing } from '../../src/drawing/model.js'
import { makeOrder } from '../../src/make.js'
import { writeDxf } from '../../src/write/dxf.js'
import { writeSvg } from '../../src/write/svg.js'
import { HOSTILE, SAMPLER } from '../write/test-drawings.js'

/** A drawing and where its files lie. */
export interface WrittenFiles {
  readonly name: string
  readonly drawing: Drawing
  readonly svg: string
  readonly dxfR12: string
  readonly dxfR2000: string
}

const EXAMPLES = new URL('../../shared/examples/', import.meta.url)

/** Two test drawings and every drawing of the example orders, written into a folder that goes when the tests end. */
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
  const orders = readdirSync(EXAMPLES).filter((name) => name.endsWith('.yaml'))
  return orders.flatMap((order) => {
    const outcome = makeOrder({ text: readFileSync(new URL(order, EXAMPLES), 'utf8') })
    if (!outcome.ok) throw new Error(`${order} is refused`)
    return outcome.value.drawings.map(({ path, drawing }) => ({ name: `${order}/${path}`, drawing }))
  })
}
