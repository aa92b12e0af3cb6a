import { type ChildProcess, fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { IDxf, IEntity, ILineEntity, ILwpolylineEntity, IPolylineEntity, ITextEntity } from 'dxf-parser'
import type { ReadOutline, ReadText, ReadVertex } from './read-outline.js'

/** A DXF file as dxf-parser reads it. */
export interface ReadDxf {
  readonly header: IDxf['header']
  readonly tables: IDxf['tables']
  readonly outlines: readonly ReadOutline[]
  readonly texts: readonly ReadText[]
  readonly entities: readonly IEntity[]
}

export interface DxfReader {
  readonly read: (text: string) => Promise<ReadDxf>
  readonly close: () => void
}

const PATIENCE = 10_000

interface Answer {
  readonly number: number
  readonly parsed?: IDxf
  readonly failed?: string
}

/** A reader in a process of its own, which is ended when it takes longer than ten seconds over a file. */
export const openDxfReader = (): DxfReader => {
  const child = fork(fileURLToPath(new URL('dxf-child.mjs', import.meta.url)))
  let asked = 0
  return {
    read: async (text) => {
      asked += 1
      return understood(await parsed(child, asked, text))
    },
    close: () => child.kill('SIGKILL'),
  }
}

const parsed = (child: ChildProcess, number: number, text: string): Promise<IDxf> =>
  new Promise((resolve, reject) => {
    const late = setTimeout(() => {
      child.kill('SIGKILL')
      reject(new Error('dxf-parser does not come back'))
    }, PATIENCE)
    const hear = (answer: Answer): void => {
      if (answer.number !== number) return
      clearTimeout(late)
      child.off('message', hear)
      if (answer.parsed) resolve(answer.parsed)
      else reject(new Error(answer.failed))
    }
    child.on('message', hear)
    child.send({ number, text })
  })

const understood = ({ header, tables, entities }: IDxf): ReadDxf => ({
  header,
  tables,
  entities,
  outlines: entities.filter(({ type }) => type !== 'TEXT').map(outlineOf),
  texts: entities.filter(({ type }) => type === 'TEXT').map((entity) => textOf(entity as ITextEntity)),
})

const outlineOf = (entity: IEntity): ReadOutline => {
  if (entity.type === 'LINE') {
    const { vertices } = entity as ILineEntity
    return { layer: entity.layer, closed: false, vertices: vertices.map(({ x, y }) => ({ x, y, bulge: 0 })) }
  }
  if (entity.type !== 'LWPOLYLINE' && entity.type !== 'POLYLINE')
    throw new Error(`${entity.type} is not expected`)
  const { vertices, shape } = entity as ILwpolylineEntity | IPolylineEntity
  return {
    layer: entity.layer,
    closed: shape === true,
    vertices: vertices.map(({ x, y, bulge }): ReadVertex => ({ x, y, bulge: bulge ?? 0 })),
  }
}

const ANCHORS = ['start', 'middle', 'end'] as const

const textOf = ({
  layer,
  text,
  startPoint,
  endPoint,
  textHeight,
  rotation,
  halign = 0,
}: ITextEntity): ReadText => {
  const anchor = ANCHORS[halign]
  if (!anchor) throw new Error(`alignment ${halign} is not expected`)
  const { x, y } = halign === 0 ? startPoint : endPoint
  return { layer, text: decoded(text), at: { x, y }, anchor, height: textHeight, turn: rotation ?? 0 }
}

/** The parser leaves `\U+XXXX` as it stands. */
const decoded = (text: string): string =>
  text.replace(/\\U\+([0-9A-F]{4})/g, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16)))
