import { createHash, randomBytes } from 'node:crypto'
import { rmSync } from 'node:fs'
import {
  chmod,
  lstat,
  mkdir,
  open,
  readdir,
  readFile,
  realpath,
  rename,
  rm,
  rmdir,
  stat,
} from 'node:fs/promises'
import { dirname, join, relative, resolve } from 'node:path'
import type { FileContent, MadeFile } from '../make-files.js'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'
import { CHECKSUMS, type Checksums, checksumList, readChecksumList, type Sum, sumOf } from './checksums.js'
import { reasonOf } from './disk-refusal.js'

/*
 * The only code that writes to a disk.
 */

/** An order's files and the title they are written under. */
export interface OrderFiles {
  readonly title: string
  readonly files: readonly MadeFile[]
}

/**
 * Writes all files of an order, or none: first into a temporary folder inside the output folder, then each one into
 * place. Files of an earlier run of the same order are replaced, and removed where this run has none of that name; a
 * file that Starwright did not write, or that was changed since, is left alone, and if it is in the way, or the folder
 * is another order's, nothing is written.
 *
 * @returns the files that were removed
 */
export const writeOrder = async (folder: string, order: OrderFiles): Promise<Outcome<readonly string[]>> => {
  if (folder.trim() === '') {
    return refused([{ place: '--out', given: 'an empty name', advice: 'Name the folder for the files.' }])
  }
  try {
    return await replaceFiles(resolve(folder), order)
  } catch (error) {
    const reason = reasonOf(error)
    const { path } = error as NodeJS.ErrnoException
    const where = path === undefined ? '' : `${showGiven(relative(resolve(folder), path) || '.')}: `
    return refused([
      { place: '--out', given: showGiven(folder), advice: `${where}${reason} Choose another folder.` },
    ])
  }
}

const replaceFiles = async (
  folder: string,
  { title, files }: OrderFiles,
): Promise<Outcome<readonly string[]>> => {
  const earlier = await readChecksums(folder)
  if (earlier === 'not ours') return refused([stranger(folder, CHECKSUMS)])
  if (earlier && earlier.title !== title) return refused([otherOrder(folder, earlier.title)])
  const links = await findLinks(folder, files)
  if (links.length > 0) return refused(links)

  const begun = await mkdir(folder, { recursive: true })
  await clearAbandoned(folder)
  const unfinished = join(folder, `.unfinished-${randomBytes(6).toString('hex')}`)
  const stop = () => {
    rmSync(unfinished, { recursive: true, force: true })
    process.exit(130)
  }
  process.once('SIGINT', stop).once('SIGTERM', stop)
  try {
    const made: Sum[] = []
    for (const { path, content } of files)
      made.push({ path, sum: await writeNew(join(unfinished, path), content) })
    const strangers = await findStrangers(folder, made, earlier?.sums ?? [])
    if (strangers.length === 0)
      return done(await moveInto(folder, unfinished, title, made, earlier?.sums ?? []))
    return refused(strangers)
  } finally {
    process.off('SIGINT', stop).off('SIGTERM', stop)
    await rm(unfinished, { recursive: true, force: true })
    if (begun !== undefined) await rmdir(folder).catch(() => {})
  }
}

/**
 * Puts finished files in their places, and takes away those of an earlier run that this one no longer has.
 *
 * @returns the files taken away
 */
const moveInto = async (
  folder: string,
  unfinished: string,
  title: string,
  made: readonly Sum[],
  own: readonly Sum[],
): Promise<readonly string[]> => {
  const kept = new Set(made.map(({ path }) => path))
  const gone = await unchanged(
    folder,
    own.filter(({ path }) => !kept.has(path)),
  )
  const step = steps(folder, unfinished)
  try {
    // From here on a file may be the old or the new one, so both count as ours until all are in place.
    await step.put(CHECKSUMS, checksumList({ title, sums: [...own, ...made] }))
    for (const { path } of made) await step.move(path)
    for (const path of gone) await step.remove(path)
    await step.put(CHECKSUMS, checksumList({ title, sums: made }))
  } catch (error) {
    await step.undoAll()
    throw error
  }
  for (const name of new Set(gone.map((path) => dirname(path))))
    await rmdir(join(folder, name)).catch(() => {})
  return gone
}

/** Steps in the output folder, each of which can be undone once it is done: what was there is kept aside first. */
const steps = (folder: string, unfinished: string) => {
  const undo: (() => Promise<void>)[] = []
  const setAside = async (path: string): Promise<() => Promise<void>> => {
    const [target, kept] = [join(folder, path), join(unfinished, 'earlier', `${undo.length}`)]
    const there = await readIfThere(target)
    if (there === undefined) return () => rm(target)
    await writeNew(kept, there)
    return () => rename(kept, target)
  }
  const move = async (path: string): Promise<void> => {
    const made = await mkdir(dirname(join(folder, path)), { recursive: true })
    if (made !== undefined) undo.push(() => rmdir(made))
    const putBack = await setAside(path)
    await rename(join(unfinished, path), join(folder, path))
    undo.push(putBack)
  }
  return {
    move,
    put: async (path: string, content: string): Promise<void> => {
      await writeNew(join(unfinished, path), content)
      await move(path)
    },
    remove: async (path: string): Promise<void> => {
      const putBack = await setAside(path)
      await rm(join(folder, path))
      undo.push(putBack)
    },
    undoAll: async (): Promise<void> => {
      for (const putBack of undo.reverse()) await putBack()
    },
  }
}

/** Folders that a killed run left behind; those of a run that may still be going on are younger. */
const clearAbandoned = async (folder: string): Promise<void> => {
  const hourAgo = Date.now() - 60 * 60 * 1000
  for (const name of await readdir(folder)) {
    if (!/^\.unfinished-[0-9a-f]{12}$/.test(name)) continue
    const { mtimeMs } = await stat(join(folder, name))
    if (mtimeMs < hourAgo) await rm(join(folder, name), { recursive: true, force: true })
  }
}

const stranger = (folder: string, path: string): Problem => ({
  place: '--out',
  given: showGiven(folder),
  advice: `${path} there was not written by starwright, or was changed since. Move it away, or choose another folder.`,
})

const otherOrder = (folder: string, title: string): Problem => ({
  place: '--out',
  given: showGiven(folder),
  advice: `The folder holds the files of another order, ${showGiven(title)}. Choose another folder.`,
})

/** Writes one file whole, through a temporary one beside it; one that is there is kept unless it may be replaced. */
export const writeDrawing = async (
  file: string,
  content: FileContent,
  mayReplace: boolean,
): Promise<Outcome<void>> => {
  const unfinished = `${resolve(file)}.unfinished-${randomBytes(6).toString('hex')}`
  const at = { place: '--to', given: showGiven(file) }
  try {
    const there = mayReplace ? undefined : await readIfThere(resolve(file))
    const sum = await writeNew(unfinished, content)
    if (there && sumOf(there) !== sum) {
      await rm(unfinished)
      return refused([
        { ...at, advice: 'Another file of that name is there. Choose another name, or add --replace.' },
      ])
    }
    await rename(unfinished, resolve(file))
    return done(undefined)
  } catch (error) {
    await rm(unfinished, { force: true }).catch(() => {})
    return refused([{ ...at, advice: `${reasonOf(error)} Choose another file.` }])
  }
}

/**
 * Puts a new text into an order file that still holds the old one, through a temporary file beside it; its permissions
 * stay, and a link stays a link.
 */
export const changeOrder = async (file: string, old: string, text: string): Promise<Outcome<void>> => {
  const at = { place: '--save', given: showGiven(file) }
  try {
    const target = await realpath(resolve(file))
    if ((await readFile(target, 'utf8')) !== old) {
      return refused([{ ...at, advice: 'The file was changed meanwhile. Try again.' }])
    }
    const { mode } = await stat(target)
    const unfinished = `${target}.unfinished-${randomBytes(6).toString('hex')}`
    try {
      await writeNew(unfinished, text)
      await chmod(unfinished, mode)
      await rename(unfinished, target)
    } finally {
      await rm(unfinished, { force: true })
    }
    return done(undefined)
  } catch (error) {
    return refused([{ ...at, advice: `${reasonOf(error)} Paste the bias into the order yourself.` }])
  }
}

const readChecksums = async (folder: string): Promise<Checksums | 'not ours' | undefined> => {
  const list = await readIfThere(join(folder, CHECKSUMS))
  return list && readChecksumList(list.toString('utf8'))
}

/** Folders in which a star's files should go and that lead elsewhere. */
const findLinks = async (folder: string, files: readonly MadeFile[]): Promise<Problem[]> => {
  const problems: Problem[] = []
  for (const name of new Set(files.map(({ path }) => dirname(path)))) {
    if (name !== '.' && (await isLink(join(folder, name)))) problems.push(stranger(folder, `${name}/`))
  }
  return problems
}

/** Files in the way that are not ours, or not as we left them. */
const findStrangers = async (
  folder: string,
  made: readonly Sum[],
  earlier: readonly Sum[],
): Promise<Problem[]> => {
  const problems: Problem[] = []
  for (const { path, sum } of made) {
    const there = await readIfThere(join(folder, path))
    const found = there && sumOf(there)
    if (found === undefined || found === sum) continue
    if (!earlier.some((own) => own.path === path && own.sum === found)) problems.push(stranger(folder, path))
  }
  return problems
}

const isLink = async (path: string): Promise<boolean> => {
  try {
    return (await lstat(path)).isSymbolicLink()
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false
    throw error
  }
}

/** Those files of an earlier run that are there still as we left them. */
const unchanged = async (folder: string, earlier: readonly Sum[]): Promise<string[]> => {
  const found: string[] = []
  for (const { path, sum } of earlier) {
    const there = await readIfThere(join(folder, path))
    if (there !== undefined && sumOf(there) === sum && !found.includes(path)) found.push(path)
  }
  return found
}

const readIfThere = async (file: string): Promise<Buffer | undefined> => {
  try {
    return await readFile(file)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined
    throw error
  }
}

/** Writes a file that must not be there yet, bytes that are made as they are read one after the other; gives its sum. */
const writeNew = async (file: string, content: FileContent | Uint8Array): Promise<string> => {
  await mkdir(dirname(file), { recursive: true })
  const sum = createHash('sha256')
  const opened = await open(file, 'wx')
  try {
    for await (const part of typeof content === 'function' ? content() : [content]) {
      sum.update(part)
      await opened.appendFile(part)
    }
  } finally {
    await opened.close()
  }
  return sum.digest('hex')
}
