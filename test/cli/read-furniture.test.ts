import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { readFurnitureFolder } from '../../src/cli/read-furniture.js'
import { showProblem } from '../../src/order/problem.js'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'starwright-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const write = (name: string, content: string | Uint8Array): void => writeFileSync(join(folder, name), content)

const told = async (given = folder): Promise<string[]> => {
  const outcome = await readFurnitureFolder(given)
  return outcome.ok ? ['nothing: it was read'] : outcome.problems.map(showProblem)
}

const FILES =
  'Allowed: title-block.svg, scale-check-mm.svg, scale-check-in.svg, caution.svg, register-mark.svg, grain-arrow.svg.'

it('reads the pieces by their names and leaves other files alone', async () => {
  write('caution.svg', '\ufeff<svg>é</svg>')
  write('title-block.svg', '<svg/>')
  write('notes.txt', 'boats')
  mkdirSync(join(folder, 'older'))
  expect(await readFurnitureFolder(folder)).toEqual({
    ok: true,
    value: { caution: '<svg>é</svg>', 'title-block': '<svg/>' },
  })
})

// Common practice, no published source: what a person is told is judged by reading it.
describe('refused in words', () => {
  it('a folder that is not there, a file in its place, a folder without pieces', async () => {
    const missing = join(folder, 'hut')
    expect(await told(missing)).toEqual([
      `--furniture: given "${missing}". There is no such file or folder. Name the folder that holds your own sheet furniture.`,
    ])
    expect(await told()).toEqual([`--furniture: given "${folder}". No .svg file is in it. ${FILES}`])
    write('hut', '')
    expect(await told(missing)).toEqual([
      `--furniture: given "${missing}". Part of that path is a file, not a folder. Name the folder that holds your own sheet furniture.`,
    ])
  })

  it('names that are no pieces, all at once', async () => {
    write('title_block.svg', '')
    write('Caution.svg', '')
    write('caution.SVG', '')
    write('boat.svg', '')
    write('constructor.svg', '')
    expect((await told()).sort()).toEqual(
      [
        `--furniture: given a file called "title_block.svg". Did you mean title-block.svg? ${FILES}`,
        `--furniture: given a file called "Caution.svg". Did you mean caution.svg? ${FILES}`,
        `--furniture: given a file called "caution.SVG". Did you mean caution.svg? ${FILES}`,
        `--furniture: given a file called "boat.svg". ${FILES}`,
        `--furniture: given a file called "constructor.svg". ${FILES}`,
      ].sort(),
    )
  })

  it('links, folders and pipes in place of a drawing', async () => {
    symlinkSync('/etc/passwd', join(folder, 'caution.svg'))
    mkdirSync(join(folder, 'title-block.svg'))
    execFileSync('mkfifo', [join(folder, 'grain-arrow.svg')])
    expect(await told()).toEqual([
      'caution.svg: given a link. Put the drawing itself into the folder.',
      'grain-arrow.svg: given no plain file. Put the drawing itself into the folder.',
      'title-block.svg: given a folder. Put the drawing itself into the folder.',
    ])
  })

  it('50 MB, and bytes that are no UTF-8', async () => {
    write('caution.svg', '')
    truncateSync(join(folder, 'caution.svg'), 50_000_000)
    write('title-block.svg', Uint8Array.of(0x3c, 0xe9, 0x3e))
    expect(await told()).toEqual([
      'caution.svg: given 50000000 bytes. It is larger than 1 MB. Is this the right file?',
      'title-block.svg: given bytes that are not UTF-8. Save the file as UTF-8.',
    ])
  })
})
