import { readFile, stat } from 'node:fs/promises'
import { text } from 'node:stream/consumers'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'
import { reasonOf } from './disk-refusal.js'
import { STANDARD_INPUT } from './standard-input.js'

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
