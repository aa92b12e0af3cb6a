import { harmless, type Problem } from '../order/problem.js'
import type { SvgElement } from './svg-tree.js'

/** Tells one mistake: of an attribute (or a property of `style`), of an element's text, or of the whole element. */
export type Refuse = (
  element: SvgElement,
  of: readonly [name: string, value: string] | { readonly text: string } | undefined,
  advice: string,
) => undefined

/** Tells one mistake that lies in no one element. */
export type Tell = (given: string, advice: string) => void

/** More than a person mends at once. */
const MOST_TOLD = 20
const LONGEST_SHOWN = 40

/** Collects the mistakes of a file into `problems`. */
export const refuseInto =
  (file: string, problems: Problem[]): Refuse =>
  (element, of, advice) => {
    problems.push({ place: file, line: element.line, given: given(element, of), advice })
    return undefined
  }

/** The first mistakes of a file, and how many more there are. */
export const firstOf = (file: string, problems: readonly Problem[]): readonly Problem[] => {
  const untold = problems.length - MOST_TOLD
  if (untold <= 0) return problems
  const more = untold === 1 ? '1 more mistake' : `${untold} more mistakes`
  return [...problems.slice(0, MOST_TOLD), { place: file, given: more, advice: 'Mend the ones above first.' }]
}

const given = ({ name }: SvgElement, of: Parameters<Refuse>[1]): string => {
  if (!of) return `<${short(name)}>`
  return 'text' in of
    ? `"${short(of.text)}" in <${short(name)}>`
    : `<${short(name)} ${short(of[0])}="${short(of[1])}">`
}

const short = (text: string): string =>
  harmless(text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}...` : text)
