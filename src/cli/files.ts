import { createHash, randomBytes } from 'node:crypto'
import { mkdir, readFile, rename, rm, rmdir, writeFile } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import type { MadeFile } from '../make.js'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'
import { reasonOf } from './disk-refusal.js'

/*
 * The only code that writes to a disk.
 */

/** Lists what was written and its SHA-256, in the form `sha256sum --check` reads. */
const CHECKSUMS = 'checksums.sha256'

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
