import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest'
import { REPOSITORY, starwright } from './starwright.js'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'starwright-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const EXAMPLE = join(REPOSITORY, 'shared/examples/winter-fair.yaml')

/** The example's files, made once for all tests that begin with them. */
const MADE = mkdtempSync(join(tmpdir(), 'starwright-made-'))
const first = starwright(['make', EXAMPLE, '--out', MADE])
afterAll(() => rmSync(MADE, { recursive: true }))
/** One star of it is enough where nothing will be written. */
const ONE = [EXAMPLE, '--star', 'Boathouse']
const copyMade = (): void => cpSync(MADE, folder, { recursive: true })

const allFiles = (within: string): string[] =>
  readdirSync(within, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(within.length + 1))
    .sort()

const sums = (within: string): Record<string, string> =>
  Object.fromEntries(
    allFiles(within).map((file) => [
      file,
      createHash('sha256')
        .update(readFileSync(join(within, file)))
        .digest('hex'),
    ]),
  )

describe('make', () => {
  it('writes every file of the order, the overview, the plan and their checksums', () => {
    const { code, out, err } = first
    expect({ code, err }).toEqual({ code: 0, err: '' })
    const files = allFiles(MADE)
    // Three drawings and three jigs a star, each in three formats; the rhombus arm of the bakery's star has no cradle.
    expect(files).toHaveLength(3 * 3 * 3 + 3 * (3 + 2 + 3) + 9 + 3)
    for (const file of [
      'all-patterns.pdf',
      'shop-card.pdf',
      'print-check.pdf',
      'cutting-list.pdf',
      'panels.pdf',
      'panels/panel-1-1500.0x1500.0mm.svg',
      'panels/panel-1-1500.0x1500.0mm.dxf',
    ])
      expect(files).toContain(file)
    for (const star of ['boathouse', 'bakery-window', 'chapel']) {
      for (const drawing of ['arm-pattern', 'star-mat', 'backing']) {
        for (const ending of ['svg', 'dxf', 'pdf']) {
          const name = new RegExp(`^${star}/${star}-${drawing}-[0-9.]+x[0-9.]+mm\\.${ending}$`)
          expect(
            files.filter((file) => name.test(file)),
            String(name),
          ).toHaveLength(1)
        }
      }
    }
    const page = readFileSync(join(MADE, 'index.html'), 'utf8')
    for (const file of files.filter((each) => /(svg|dxf|pdf|txt)$/.test(each)))
      expect(page).toContain(`href="${file}"`)
    expect(out.startsWith(readFileSync(join(MADE, 'cut-plan.txt'), 'utf8'))).toBe(true)
    expect(out).toContain('198.8 × 189.1 mm  boathouse/boathouse-backing-198.8x189.1mm')
    expect(out).toContain(
      'Arm cradle, "Bakery window": Not needed. The blank of "Bakery window" is already the arm',
    )
    expect(page).toContain('Arm cradle, &quot;Bakery window&quot;: Not needed.')
    const { 'checksums.sha256': own, ...others } = sums(MADE)
    expect(own).toBeDefined()
    expect(readFileSync(join(MADE, 'checksums.sha256'), 'utf8').split('\n').filter(Boolean).sort()).toEqual(
      [
        '# starwright: Winter fair by the lake',
        ...Object.entries(others).map(([file, sum]) => `${sum}  ${file}`),
      ].sort(),
    )
  })

  it('gives the same bytes again, in another folder and time zone', () => {
    starwright(['make', EXAMPLE, '--out', folder], { env: { TZ: 'Pacific/Auckland', LANG: 'de_DE.UTF-8' } })
    expect(sums(folder)).toEqual(sums(MADE))
  })

  it('replaces its own files and removes those of stars that are gone, but nothing else', () => {
    copyMade()
    writeFileSync(join(folder, 'my-notes.txt'), 'fir for the chapel')
    writeFileSync(join(folder, 'chapel/photo.txt'), 'mine')
    const { code, out } = starwright(['make', EXAMPLE, '--out', folder, '--star', 'Boathouse'])
    expect(code).toBe(0)
    expect(out).toContain('Removed 33 files of an earlier run that this order no longer has.')
    const files = allFiles(folder)
    expect(files.filter((file) => file.startsWith('boathouse/'))).toHaveLength(18)
    expect(files.filter((file) => file.startsWith('bakery-window/'))).toEqual([])
    expect(files.filter((file) => file.startsWith('chapel/'))).toEqual(['chapel/photo.txt'])
    expect(files).toContain('my-notes.txt')
    expect(files.filter((file) => file.startsWith('panels/'))).toHaveLength(2)
    expect(existsSync(join(folder, 'bakery-window'))).toBe(false)
  })

  it('stops before it would overwrite a file it did not write, or one that was changed', () => {
    writeFileSync(join(folder, 'index.html'), 'my own page')
    const refused = starwright(['make', ...ONE, '--out', folder])
    expect(refused.code).toBe(2)
    expect(refused.err).toContain('index.html there was not written by starwright, or was changed since')
    expect(allFiles(folder)).toEqual(['index.html'])
    rmSync(join(folder, 'index.html'))
    copyMade()
    writeFileSync(join(folder, 'cut-plan.txt'), 'with my remarks')
    const again = starwright(['make', ...ONE, '--out', folder, '--kerf', '3mm'])
    expect(again.code).toBe(2)
    expect(readFileSync(join(folder, 'cut-plan.txt'), 'utf8')).toBe('with my remarks')
  })

  it('leaves a checksum list of somebody else, and what it names, alone', () => {
    writeFileSync(join(folder, 'photo.jpg'), 'a photo')
    const sum = createHash('sha256').update('a photo').digest('hex')
    const list = `${sum}  photo.jpg\n`
    writeFileSync(join(folder, 'checksums.sha256'), list)
    const { code, err } = starwright(['make', ...ONE, '--out', folder])
    expect({ code, told: err.includes('checksums.sha256 there was not written by starwright') }).toEqual({
      code: 2,
      told: true,
    })
    expect(allFiles(folder)).toEqual(['checksums.sha256', 'photo.jpg'])
    writeFileSync(join(folder, 'checksums.sha256'), `# starwright: Winter fair by the lake\n${list}`)
    expect(starwright(['make', ...ONE, '--out', folder, '--quiet']).code).toBe(0)
    expect(readFileSync(join(folder, 'photo.jpg'), 'utf8')).toBe('a photo')
  })

  it('puts back what it moved when a later file cannot be moved', () => {
    copyMade()
    const [mat] = allFiles(folder).filter((file) => file.startsWith('chapel/') && file.endsWith('.svg'))
    rmSync(join(folder, mat ?? ''))
    mkdirSync(join(folder, mat ?? '', 'in-the-way'), { recursive: true })
    const before = sums(folder)
    const { code } = starwright(['make', EXAMPLE, '--out', folder, '--kerf', '3mm'])
    expect(code).toBe(2)
    expect(sums(folder)).toEqual(before)
  })

  it('an order without a title goes by its stars, so that two of them do not mix', () => {
    const star = ['--points', '5', '--tip-angle', '45', '--across', '300']
    expect(starwright(['make', ...star, '--out', folder]).code).toBe(0)
    const other = starwright(['make', ...star, '--name', 'Other', '--out', folder])
    expect({ code: other.code, told: other.err.includes('another order, "Star"') }).toEqual({
      code: 2,
      told: true,
    })
  })

  it('does not follow a link out of the folder', () => {
    const elsewhere = join(folder, 'elsewhere')
    mkdirSync(elsewhere)
    mkdirSync(join(folder, 'out'))
    symlinkSync(elsewhere, join(folder, 'out', 'chapel'))
    const { code, err } = starwright(['make', EXAMPLE, '--star', 'Chapel', '--out', join(folder, 'out')])
    expect({ code, told: err.includes('chapel/ there was not written by starwright') }).toEqual({
      code: 2,
      told: true,
    })
    expect(readdirSync(elsewhere)).toEqual([])
  })

  it('an empty folder name is refused', () => {
    expect(starwright(['make', ...ONE, '--out', ''], { cwd: folder }).code).toBe(2)
    expect(allFiles(folder)).toEqual([])
  })

  it("does not mix with another order's folder", () => {
    copyMade()
    const before = sums(folder)
    const other = starwright(['make', EXAMPLE, '--title', 'Spring fair', '--out', folder])
    expect(other.code).toBe(2)
    expect(other.err).toContain('The folder holds the files of another order, "Winter fair by the lake".')
    expect(sums(folder)).toEqual(before)
  })

  it('a bad order writes nothing and makes no folder', () => {
    const out = join(folder, 'new')
    const { code, err } = starwright(['make', '-', '--out', out], { input: 'stars: [{ points: 5 }]' })
    expect(code).toBe(2)
    expect(err.endsWith('Nothing was written.\n')).toBe(true)
    expect(existsSync(out)).toBe(false)
  })

  it('a file where the folder should be, and a folder that cannot be written, are told', () => {
    writeFileSync(join(folder, 'taken'), '')
    expect(starwright(['make', ...ONE, '--out', join(folder, 'taken')]).err).toContain(
      'Choose another folder.',
    )
    mkdirSync(join(folder, 'index.html'))
    const inTheWay = starwright(['make', ...ONE, '--out', folder])
    expect({ code: inTheWay.code, told: /That is a folder/.test(inTheWay.err) }).toEqual({
      code: 2,
      told: true,
    })
    chmodSync(folder, 0o755)
  })

  it('interrupted at any moment, it leaves each earlier file whole and no half-written ones', async () => {
    copyMade()
    const before = sums(folder)
    const after = join(folder, '..', `${folder.split('/').at(-1)}-after`)
    starwright(['make', EXAMPLE, '--out', after, '--kerf', '3mm'])
    const changed = sums(after)
    rmSync(after, { recursive: true })
    for (const delay of [60, 200, 500, 700, 900, 1100]) {
      await interrupted(['make', EXAMPLE, '--out', folder, '--kerf', '3mm'], delay)
      const now = sums(folder)
      for (const [file, sum] of Object.entries(now)) {
        if (file === 'checksums.sha256' || file.startsWith('.unfinished')) continue
        expect([before[file], changed[file]], file).toContain(sum)
      }
      expect(
        Object.keys(now).filter((file) => !file.startsWith('.unfinished')).length,
      ).toBeGreaterThanOrEqual(33)
    }
    // And the next whole run finds its way through whatever was left.
    expect(starwright(['make', EXAMPLE, '--out', folder, '--kerf', '3mm']).code).toBe(0)
    for (const [file, sum] of Object.entries(changed)) expect(sums(folder)[file], file).toBe(sum)
  }, 60_000)
})

const interrupted = (words: readonly string[], delay: number): Promise<void> =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, [join(REPOSITORY, 'dist/cli/starwright.js'), ...words], {
      stdio: 'ignore',
    })
    const timer = setTimeout(() => child.kill('SIGKILL'), delay)
    child.on('exit', () => {
      clearTimeout(timer)
      resolve()
    })
  })

describe('draw', () => {
  it.each([
    ['svg', /^<\?xml|^<svg/],
    ['dxf', /AC1009/],
    ['pdf', /^%PDF-1\.7/],
  ])('writes one drawing as %s', (ending, mark) => {
    const file = join(folder, `chapel.${ending}`)
    const { code, out } = starwright(['draw', 'backing', EXAMPLE, '--star', 'Chapel', '--to', file])
    expect(code).toBe(0)
    expect(out).toBe(`Chapel: backing, 232.4 × 232.4 mm: ${file}\n`)
    expect(readFileSync(file, 'latin1')).toMatch(mark)
    expect(allFiles(folder)).toEqual([`chapel.${ending}`])
  })

  it('does not overwrite a file unless it is told to', () => {
    const file = join(folder, 'mine.svg')
    writeFileSync(file, '<svg/>')
    const words = ['draw', 'backing', EXAMPLE, '--star', 'Chapel', '--to', file]
    const { code, err } = starwright(words)
    expect({ code, told: err.includes('Another file of that name is there.') }).toEqual({
      code: 2,
      told: true,
    })
    expect(readFileSync(file, 'utf8')).toBe('<svg/>')
    expect(starwright([...words, '--replace']).code).toBe(0)
    expect(starwright(words).code).toBe(0)
  })

  it('writes DXF R2000 on request', () => {
    const file = join(folder, 'b.dxf')
    starwright(['draw', 'backing', EXAMPLE, '--star', 'Chapel', '--to', file, '--dxf', 'r2000'])
    expect(readFileSync(file, 'latin1')).toContain('AC1015')
  })

  it.each([
    [
      ['draw', 'backing', EXAMPLE, '--to', 'x.svg'],
      'The order has 3 stars: say which one to draw, "Boathouse", "Bakery window", "Chapel".',
    ],
    [
      ['draw', 'backing', '--points', '5', '--tip-angle', '45', '--across', '300', '--to', 'x.svg'],
      'Ask for one: backing: { shape: star, inset: 12 mm } in the order, or --backing star.',
    ],
    [
      ['draw', 'star-mat', EXAMPLE, '--star', 'Chapel', '--to', 'x.png'],
      'Allowed: a file that ends in .svg, .dxf or .pdf.',
    ],
    [
      ['draw', 'star-mat', EXAMPLE, '--star', 'Chapell', '--to', 'x.svg'],
      'Did you mean Chapel? Allowed: "Boathouse", "Bakery window", "Chapel".',
    ],
  ])('%j is refused with the way out', (words, advice) => {
    const { code, err } = starwright(words, { cwd: folder })
    expect(code).toBe(2)
    expect(err).toContain(advice)
    expect(allFiles(folder)).toEqual([])
  })
})
