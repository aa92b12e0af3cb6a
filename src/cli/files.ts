import { createHash, randomBytes } from 'node:crypto'
import { mkdir, readFile, rename, rm, rmdir, stat, writeFile } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import { text } from 'node:stream/consumers'
import type { MadeFile } from '../make.js'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'
import { STANDARD_INPUT } from './standard-input.js'

/*
 * The only code that touches a disk.
 */

/** Lists what was written and its SHA-256, in the form `sha256sum --check` reads. */
const CHECKSUMS = 'checksums.sha256'

const LARGEST_ORDER = 1024 * 1024

/** The text of an order file. */
export const readOrder = async (file: string): Promise<Outcome<string>> => {
  try {
    if (file === STANDARD_INPUT) return done(await text(process.stdin))
    const { size } = await stat(file)
    if (size > LARGEST_ORDER)
      return refused([unreadable(file, 'It is larger than 1 MB. Is this the right file?')])
    return done(await readFile(file, 'utf8'))
  } catch (error) {
    return refused([unreadable(file, `${reasonOf(error)} Check the name and the folder.`)])
  }
}

const unreadable = (file: string, advice: string): Problem => ({
  place: 'order file',
  given: showGiven(file),
  advice,
})

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file or folder.',
  EISDIR: 'That is a folder.',
  ENOTDIR: 'Part of that path is a file, not a folder.',
  EACCES: 'You may not open it.',
  EPERM: 'You may not open it.',
  EROFS: 'That place can only be read.',
  ENOSPC: 'The disk is full.',
  ENAMETOOLONG: 'The name is too long.',
  EEXIST: 'A file of that name is in the way.',
}

const reasonOf = (error: unknown): string => {
  const code = (error as NodeJS.ErrnoException).code
  const reason = code === undefined ? undefined : REASONS[code]
  if (reason === undefined) throw error
  return reason
}

/**
 * Writes all files of an order, or none: first into a temporary folder inside the output folder, then each one into
 * place. Files of an earlier run are replaced, and removed where this run has none of that name; a file that
 * Starwright did not write, or that was changed since, is left alone, and if it is in the way nothing is written.
 */
export const writeOrder = async (folder: string, files: readonly MadeFile[]): Promise<Outcome<void>> => {
  try {
    return await replaceFiles(resolve(folder), files)
  } catch (error) {
    return refused([
      { place: '--out', given: showGiven(folder), advice: `${reasonOf(error)} Choose another folder.` },
    ])
  }
}

const replaceFiles = async (folder: string, files: readonly MadeFile[]): Promise<Outcome<void>> => {
  const earlier = await readChecksums(folder)
  const strangers = await findStrangers(folder, files, earlier)
  if (strangers.length > 0) return refused(strangers)

  const made = files.map(({ path, content }) => ({ path, content, sum: sumOf(content) }))
  await mkdir(folder, { recursive: true })
  const unfinished = join(folder, `.unfinished-${randomBytes(6).toString('hex')}`)
  const stop = () => {
    process.exitCode = 130
    void rm(unfinished, { recursive: true, force: true }).finally(() => process.exit(130))
  }
  process.once('SIGINT', stop).once('SIGTERM', stop)
  try {
    for (const { path, content } of made) await writeNew(join(unfinished, path), content)
    // From here on a file may be the old or the new one, so both count as ours until all are in place.
    await writeChecksums(folder, unfinished, [...earlier, ...made])
    for (const { path } of made) await moveInto(join(unfinished, path), join(folder, path))
    await removeLeftovers(folder, earlier, new Set(made.map(({ path }) => path)))
    await writeChecksums(folder, unfinished, made)
  } finally {
    process.off('SIGINT', stop).off('SIGTERM', stop)
    await rm(unfinished, { recursive: true, force: true })
  }
  return done(undefined)
}

/** Writes one file whole, through a temporary one beside it. */
export const writeDrawing = async (file: string, content: string | Uint8Array): Promise<Outcome<void>> => {
  const unfinished = `${resolve(file)}.unfinished-${randomBytes(6).toString('hex')}`
  try {
    await writeNew(unfinished, content)
    await rename(unfinished, resolve(file))
    return done(undefined)
  } catch (error) {
    await rm(unfinished, { force: true })
    return refused([
      { place: '--to', given: showGiven(file), advice: `${reasonOf(error)} Choose another file.` },
    ])
  }
}

interface Sum {
  readonly path: string
  readonly sum: string
}

const sumOf = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex')

const readChecksums = async (folder: string): Promise<Sum[]> => {
  const list = await readIfThere(join(folder, CHECKSUMS))
  return (list?.toString('utf8') ?? '').split('\n').flatMap((row) => {
    const match = /^([0-9a-f]{64}) {2}([a-z0-9][a-z0-9./-]*)$/.exec(row)
    const [, sum, path] = match ?? []
    return sum !== undefined && path !== undefined && !path.includes('..') ? [{ path, sum }] : []
  })
}

const writeChecksums = async (folder: string, unfinished: string, sums: readonly Sum[]): Promise<void> => {
  const rows = [...new Set(sums.map(({ path, sum }) => `${sum}  ${path}\n`))]
  await writeNew(join(unfinished, CHECKSUMS), rows.join(''))
  await moveInto(join(unfinished, CHECKSUMS), join(folder, CHECKSUMS))
}

/** Files in the way that are not ours, or not as we left them. */
const findStrangers = async (
  folder: string,
  files: readonly MadeFile[],
  earlier: readonly Sum[],
): Promise<Problem[]> => {
  const problems: Problem[] = []
  for (const { path, content } of files) {
    const there = await readIfThere(join(folder, path))
    if (there === undefined) continue
    const sum = sumOf(there)
    if (sum === sumOf(content) || earlier.some((own) => own.path === path && own.sum === sum)) continue
    problems.push({
      place: '--out',
      given: showGiven(folder),
      advice: `${path} there was not written by starwright, or was changed since. Move it away, or choose another folder.`,
    })
  }
  return problems
}

/** Files of an earlier run that this one does not have, if nobody changed them since. */
const removeLeftovers = async (
  folder: string,
  earlier: readonly Sum[],
  kept: ReadonlySet<string>,
): Promise<void> => {
  for (const { path, sum } of earlier) {
    if (kept.has(path)) continue
    const there = await readIfThere(join(folder, path))
    if (there === undefined || sumOf(there) !== sum) continue
    await rm(join(folder, path))
    if (path.includes('/')) await rmdir(dirname(join(folder, path))).catch(() => {})
  }
}

const readIfThere = async (file: string): Promise<Buffer | undefined> => {
  try {
    return await readFile(file)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined
    throw error
  }
}

const writeNew = async (file: string, content: string | Uint8Array): Promise<void> => {
  await mkdir(dirname(file), { recursive: true })
  await writeFile(file, content, { flag: 'wx' })
}

const moveInto = async (from: string, to: string): Promise<void> => {
  await mkdir(dirname(to), { recursive: true })
  await rename(from, to)
}
