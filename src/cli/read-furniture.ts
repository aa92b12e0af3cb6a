import { lstat, readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { FurnitureName, FurnitureTexts } from '../furniture/furniture-names.js'
import { PIECES_ALLOWED, pieceName } from '../furniture/piece-name.js'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'
import { reasonOf } from './disk-refusal.js'
import type { Typed } from './order-flags.js'

/** Far more than any piece; the reader of the text has a narrower limit and says so. */
const LARGEST_FILE = 1024 * 1024

/** The maker's own pieces of sheet furniture, where a command line names a folder of them. */
export const ownFurniture = async ({ furniture }: Typed): Promise<Outcome<FurnitureTexts>> =>
  typeof furniture === 'string' ? readFurnitureFolder(furniture) : done({})

/** The pieces of sheet furniture in a maker's own folder; files other than .svg are left alone. */
export const readFurnitureFolder = async (folder: string): Promise<Outcome<FurnitureTexts>> => {
  const found = await svgFiles(folder)
  if (!found.ok) return found
  const pieces = await Promise.all(found.value.map((file) => readPiece(folder, file)))
  const problems = pieces.flatMap((piece) => (piece.ok ? [] : piece.problems))
  if (problems.length > 0) return refused(problems)
  return done(Object.fromEntries(pieces.flatMap((piece) => (piece.ok ? [piece.value] : []))))
}

const svgFiles = async (folder: string): Promise<Outcome<readonly string[]>> => {
  try {
    const files = (await readdir(folder)).filter((name) => /\.svg$/i.test(name)).sort()
    if (files.length > 0) return done(files)
    return refused([unreadable('--furniture', showGiven(folder), `No .svg file is in it. ${PIECES_ALLOWED}`)])
  } catch (error) {
    const advice = `${reasonOf(error)} Name the folder that holds your own sheet furniture.`
    return refused([unreadable('--furniture', showGiven(folder), advice)])
  }
}

const readPiece = async (
  folder: string,
  file: string,
): Promise<Outcome<readonly [FurnitureName, string]>> => {
  const named = pieceName(file)
  if (!named.ok) return named
  try {
    const path = join(folder, file)
    const kind = await lstat(path)
    if (!kind.isFile()) {
      const given = kind.isSymbolicLink() ? 'a link' : kind.isDirectory() ? 'a folder' : 'no plain file'
      return refused([unreadable(file, given, 'Put the drawing itself into the folder.')])
    }
    if (kind.size > LARGEST_FILE)
      return refused([
        unreadable(file, `${kind.size} bytes`, 'It is larger than 1 MB. Is this the right file?'),
      ])
    return textOf(file, named.value, await readFile(path))
  } catch (error) {
    return refused([unreadable(file, 'a file that cannot be read', reasonOf(error))])
  }
}

const textOf = (
  file: string,
  name: FurnitureName,
  bytes: Uint8Array,
): Outcome<readonly [FurnitureName, string]> => {
  try {
    return done([name, new TextDecoder('utf-8', { fatal: true }).decode(bytes)])
  } catch {
    return refused([unreadable(file, 'bytes that are not UTF-8', 'Save the file as UTF-8.')])
  }
}

const unreadable = (place: string, given: string, advice: string): Problem => ({ place, given, advice })
