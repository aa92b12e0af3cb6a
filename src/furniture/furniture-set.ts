import caution from '../../templates/caution.svg'
import grainArrow from '../../templates/grain-arrow.svg'
import registerMark from '../../templates/register-mark.svg'
import scaleCheckIn from '../../templates/scale-check-in.svg'
import scaleCheckMm from '../../templates/scale-check-mm.svg'
import titleBlock from '../../templates/title-block.svg'
import type { Artwork } from '../drawing/artwork.js'
import { done, type Outcome, refused, showProblem } from '../order/problem.js'
import type { Units } from '../units/read-length.js'
import { FURNITURE_NAMES, type FurnitureName, type FurnitureTexts, furnitureFile } from './furniture-names.js'
import { readFurniture, readPiece } from './read-furniture.js'
import { wantingIn } from './wanting.js'

/** The pieces a page is furnished with. */
export interface Furniture {
  readonly titleBlock: Artwork
  /** Of the shop's own units first. */
  readonly scaleCheck: Artwork
  readonly caution: Artwork
  readonly registerMark: Artwork
  readonly grainArrow: Artwork
}

const TEMPLATES: Readonly<Record<FurnitureName, string>> = {
  'title-block': titleBlock,
  'scale-check-mm': scaleCheckMm,
  'scale-check-in': scaleCheckIn,
  caution,
  'register-mark': registerMark,
  'grain-arrow': grainArrow,
}

/** Our own piece, read from its template. */
const template = (name: FurnitureName): Artwork => {
  const outcome = readFurniture(furnitureFile(name), name, TEMPLATES[name])
  if (!outcome.ok) throw new Error(outcome.problems.map(showProblem).join('\n'))
  return outcome.value
}

const furnitureOf = (units: Units, pieceOf: (name: FurnitureName) => Artwork): Furniture => ({
  titleBlock: pieceOf('title-block'),
  scaleCheck: pieceOf(units === 'mm' ? 'scale-check-mm' : 'scale-check-in'),
  caution: pieceOf('caution'),
  registerMark: pieceOf('register-mark'),
  grainArrow: pieceOf('grain-arrow'),
})

/** Our own furniture, with rulers in the shop's units first. */
export const defaultFurniture = (units: Units): Furniture => furnitureOf(units, template)

/** Our own furniture with the maker's pieces in place of ours, or everything that is wrong with those. */
export const furnitureWith = (texts: FurnitureTexts, units: Units): Outcome<Furniture> => {
  const given = FURNITURE_NAMES.flatMap((name) => {
    const text = texts[name]
    return text === undefined ? [] : [[name, ownPiece(name, text)] as const]
  })
  const problems = given.flatMap(([, outcome]) => (outcome.ok ? [] : outcome.problems))
  if (problems.length > 0) return refused(problems)
  const own = new Map(
    given.flatMap(([name, outcome]) => (outcome.ok ? [[name, outcome.value] as const] : [])),
  )
  return done(furnitureOf(units, (name) => own.get(name) ?? template(name)))
}

/** A maker's own piece, and all that keeps it from serving. */
const ownPiece = (name: FurnitureName, text: string): Outcome<Artwork> => {
  const file = furnitureFile(name)
  const outcome = readPiece(file, name, text)
  if (!outcome.ok) return outcome
  const problems = wantingIn(file, name, outcome.value)
  return problems.length === 0 ? done(outcome.value.artwork) : refused(problems)
}
