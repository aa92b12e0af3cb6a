import type { Artwork } from '../drawing/artwork.js'
import { mm } from '../units/convert.js'
import type { FurniturePiece } from './furniture-names.js'
import { readNumber, readNumbers } from './svg-numbers.js'
import type { Refuse } from './svg-refusal.js'
import type { SvgElement } from './svg-tree.js'

/** The drawing's size from its outermost element; one unit must be one millimetre. */
export const readSize = (
  root: SvgElement,
  piece: FurniturePiece,
  refuse: Refuse,
): Pick<Artwork, 'across' | 'height'> | undefined => {
  const side = (name: 'width' | 'height', largest: number): number | undefined => {
    const written = root.attributes.get(name) ?? ''
    const value = written.endsWith('mm') ? readNumber(written.slice(0, -2)) : undefined
    if (value !== undefined && value > 0 && value <= largest) return value
    return refuse(root, [name, written], `Allowed: up to ${largest}mm, such as ${name}="${largest}mm".`)
  }
  const [across, height] = [side('width', piece.across), side('height', piece.height)]
  if (across === undefined || height === undefined) return undefined
  const written = root.attributes.get('viewBox') ?? ''
  const box = readNumbers(written)
  const matches = box?.length === 4 && box.every((value, index) => value === [0, 0, across, height][index])
  if (!matches)
    return refuse(
      root,
      ['viewBox', written],
      `Allowed: viewBox="0 0 ${across} ${height}", so that 1 is 1 mm.`,
    )
  return { across: mm(across), height: mm(height) }
}
