import { didYouMean } from '../order/did-you-mean.js'
import { done, type Outcome, refused, sentences, showGiven } from '../order/problem.js'
import { FURNITURE_NAMES, type FurnitureName, furnitureFile, isFurnitureName } from './furniture-names.js'

const FILES = FURNITURE_NAMES.map(furnitureFile)

export const PIECES_ALLOWED = `Allowed: ${FILES.join(', ')}.`

/** Which piece of sheet furniture a maker's file is, by its name. */
export const pieceName = (file: string): Outcome<FurnitureName> => {
  const name = file.slice(0, -'.svg'.length)
  if (isFurnitureName(name) && file === furnitureFile(name)) return done(name)
  const advice = sentences(didYouMean(file, FILES), PIECES_ALLOWED)
  return refused([{ place: '--furniture', given: `a file called ${showGiven(file)}`, advice }])
}
