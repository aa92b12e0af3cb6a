import { readFile, stat } from 'node:fs/promises'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'
import { reasonOf } from './disk-refusal.js'
import { STANDARD_INPUT } from './standard-input.js'

/** Far more than any order; the reader of the text has a narrower limit and says so. */
const LARGEST_ORDER = 1024 * 1024

/** The text of an order file. */
export const readOrder = async (file: string): Promise<Outcome<string>> => {
  if (file === STANDARD_INPUT) return readInput()
  try {
    const { size, ...kind } = await stat(file).then((found) => ({
      size: found.size,
      readable: found.isFile() || found.isFIFO(),
      folder: found.isDirectory(),
    }))
    if (kind.folder) return refused([unreadable(file, 'That is a folder. Name the order file in it.')])
    if (!kind.readable) return refused([unreadable(file, 'That is not a file.')])
    if (size > LARGEST_ORDER) return refused([tooLarge(file)])
    return done(await readFile(file, 'utf8'))
  } catch (error) {
    return refused([unreadable(file, `${reasonOf(error)} Check the name and the folder.`)])
  }
}

const readInput = async (): Promise<Outcome<string>> => {
  const chunks: Buffer[] = []
  let size = 0
  for await (const chunk of process.stdin as AsyncIterable<Buffer>) {
    chunks.push(chunk)
    size += chunk.length
    if (size > LARGEST_ORDER) return refused([tooLarge('-')])
  }
  return done(Buffer.concat(chunks).toString('utf8'))
}

const tooLarge = (file: string): Problem =>
  unreadable(file, 'It is larger than 1 MB. Is this the right file?')

const unreadable = (file: string, advice: string): Problem => ({
  place: 'order file',
  given: showGiven(file),
  advice,
})
