import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { brokenRules, ROOMS, type SourceFile } from './house-rules.js'

const ROOT = fileURLToPath(new URL('..', import.meta.url))

const filesBelow = (folder: string): SourceFile[] =>
  readdirSync(`${ROOT}${folder}`, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.(?:tsx?|js|mjs|cjs)$/.test(entry.name))
    .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll('\\', '/'))
    .map((path) => ({
      path: path.slice(path.indexOf(`${folder}/`, ROOT.length - 1)),
      text: readFileSync(path, 'utf8'),
    }))

const house = [...filesBelow('src'), ...filesBelow('test')]

describe('the house', () => {
  it('is read: every room has files', () => {
    for (const room of ROOMS) {
      expect(house.filter(({ path }) => path.startsWith(`src/${room}`)).length, room).toBeGreaterThan(0)
    }
  })

  it('keeps its rules', () => {
    expect(brokenRules(house)).toEqual([])
  })

  it('is told to its developers: every folder stands in DEVELOPERS.md', () => {
    expect(existsSync(`${ROOT}DEVELOPERS.md`)).toBe(true)
    const told = readFileSync(`${ROOT}DEVELOPERS.md`, 'utf8')
    const rooms = readdirSync(`${ROOT}src`, { withFileTypes: true }).map((room) =>
      room.isDirectory() ? `src/${room.name}/` : `src/${room.name}`,
    )
    expect(rooms.filter((room) => !told.includes(`\`${room}\``))).toEqual([])
  })
})

describe('a broken rule is noticed', () => {
  /** Apart from its import, or this file would break the rule. */
  const FROM_MAKERJS = "from 'makerjs'"
  const file = (path: string, text: string): SourceFile => ({ path, text })
  const cases: readonly (readonly [string, readonly SourceFile[]])[] = [
    [
      'src/plan/a.ts: imports write, which stands above it',
      [file('src/plan/a.ts', "import { b } from '../write/b.js'")],
    ],
    [
      'src/plan/a.ts: imports compose, which stands above it',
      [file('src/plan/a.ts', "import type { B } from '../compose/b.js'")],
    ],
    [
      'src/plan/a.ts: imports paper, which stands above it',
      [file('src/plan/a.ts', "const b = await import('../paper/b.js')")],
    ],
    [
      'src/plan/a.ts: imports drawing, which stands above it',
      [file('src/plan/a.ts', "export * from '../drawing/b.js'")],
    ],
    [
      'src/plan/a.ts: imports drawing, which stands above it',
      [file('src/plan/a.ts', "import {\n  b,\n  c,\n} from '../drawing/b.js'")],
    ],
    [
      'src/geometry/a.ts: imports tables, which stands above it',
      [file('src/geometry/a.ts', "import { b } from '../tables/b.js'")],
    ],
    [
      'src/index.ts: imports cli, which stands above it',
      [file('src/index.ts', "export { b } from './cli/b.js'")],
    ],
    [
      'src/make.ts: imports index.ts, which stands above it',
      [file('src/make.ts', "export { b } from './index.js'")],
    ],
    ['src/shed/a.ts: src/shed is no room of the house', [file('src/shed/a.ts', 'export const a = 1')]],
    [
      'src/plan/a.ts: imports test/orders.js, outside src and shared',
      [file('src/plan/a.ts', "import { oneStar } from '../../test/orders.js'")],
    ],
    [
      'src/plan/a.ts: Math.sin may differ from engine to engine; take it from src/units/maths.ts',
      [file('src/plan/a.ts', 'export const a = (x: number) => Math.sin(x)')],
    ],
    [
      'src/write/a.ts: imports node:fs, which only src/cli may',
      [file('src/write/a.ts', "import { b } from 'node:fs'")],
    ],
    [
      'src/make.ts: imports yargs/helpers, which only src/cli may',
      [file('src/make.ts', "import { hideBin } from 'yargs/helpers'")],
    ],
    [
      'src/plan/a.ts: imports yaml, which only src/order may',
      [file('src/plan/a.ts', "import { parse } from 'yaml'")],
    ],
    [
      'src/units/a.ts: imports valibot, which only src/order may',
      [file('src/units/a.ts', "import * as v from 'valibot'")],
    ],
    [
      'src/paper/a.ts: imports pdfkit, which only src/write may',
      [file('src/paper/a.ts', "import P from 'pdfkit'")],
    ],
    [
      'src/write/a.ts, src/write/b.ts: import pdfkit, which only one file may',
      [file('src/write/a.ts', "import P from 'pdfkit'"), file('src/write/b.ts', "await import('pdfkit')")],
    ],
    ...['{ measure }', '* as makerjs', 'makerjs, { measure }'].map(
      (named) =>
        [
          'test/a.test.ts: imports makerjs by name or star; take the default import',
          [file('test/a.test.ts', `import ${named} ${FROM_MAKERJS}`)],
        ] as const,
    ),
    [
      'src/plan/a.ts: the number 25.4 belongs in src/units',
      [file('src/plan/a.ts', 'export const a = (b: number) => b / 25.4')],
    ],
    [
      'src/paper/a.ts: the number 72 belongs in src/units',
      [file('src/paper/a.ts', `export const a = \`\${72 * 2} points\``)],
    ],
    ['src/write/dxf-a.ts: the number 72 belongs in src/units', [file('src/write/dxf-a.ts', 'tag(40, 72)')]],
    ['src/write/a.ts: the number 72 belongs in src/units', [file('src/write/a.ts', 'tag(72, 0)')]],
    ['src/plan/a.ts: 351 lines, more than 350', [file('src/plan/a.ts', '\n'.repeat(351))]],
    ...[
      'src/plan/utils.ts',
      'src/plan/helper/a.ts',
      'test/date-util.ts',
      'src/plan/board-manager.ts',
      'test/misc/a.ts',
      'src/plan/common.ts',
    ].map((path) => [`${path}: a name that says nothing of what it holds`, [file(path, '')]] as const),
  ]
  it.each(cases)('%s', (message, files) => {
    expect(brokenRules(files)).toEqual([message])
  })

  it.each([
    [
      'its own room and rooms below',
      file('src/plan/a.ts', "import { b } from './b.js'\nimport { c } from '../units/c.js'"),
    ],
    ['a table', file('src/tables/a.ts', "import table from '../../shared/a.json' with { type: 'json' }")],
    [
      'the whole house, in the command line',
      file('src/cli/a.ts', "import { b } from '../index.js'\nimport c from 'yargs'"),
    ],
    ['makerjs by default', file('test/a.test.ts', "import makerjs from 'makerjs'")],
    [
      'the numbers in words, comments and bigger numbers',
      file('src/plan/a.ts', "// 25.4\nexport const a = ['72', 720, 0.72] // 72"),
    ],
    ['a group code of DXF', file('src/write/dxf-a.ts', 'tag(72, 0)')],
    ['350 lines', file('src/plan/a.ts', '\n'.repeat(350))],
    ['names that only contain such words', file('src/plan/commonplace-utility.ts', '')],
  ])('and nothing else: %s', (_, allowed) => {
    expect(brokenRules([allowed])).toEqual([])
  })
})
