import type { ArtMark, ArtStep, Artwork } from '../../src/drawing/artwork.js'
import { MITER_LIMIT } from '../../src/drawing/artwork.js'
import { CAP_HEIGHT } from '../../src/drawing/lettering.js'
import { escaped } from '../../src/drawing/markup.js'
import type { Point } from '../../src/geometry/point.js'

/** Artwork as an SVG of plain paths and lettering, for another program to draw. */
export const artworkSvg = ({ across, height, marks }: Artwork, family: string): string => {
  const at = ({ x, y }: Point): string => `${x} ${height - y}`
  const step = (each: ArtStep): string => {
    if (each.to === 'start') return 'Z'
    if (each.to === 'curve') return `C${at(each.from)} ${at(each.toward)} ${at(each.at)}`
    return `${each.to === 'move' ? 'M' : 'L'}${at(each.at)}`
  }
  const mark = (each: ArtMark): string => {
    if (each.kind === 'text') {
      const turned = `translate(${at(each.at)}) rotate(${(-each.turn * 180) / Math.PI})`
      const size = each.height / CAP_HEIGHT
      return `<text transform="${turned}" font-size="${size}" font-family="${family}" text-anchor="${each.anchor}" fill="${each.colour}">${escaped(each.text)}</text>`
    }
    const { stroke, fill } = each
    const filled = fill ? `fill="${fill.colour}" fill-rule="${fill.rule}"` : 'fill="none"'
    const stroked = stroke
      ? `stroke="${stroke.colour}" stroke-width="${stroke.width}" stroke-linejoin="${stroke.join}" stroke-linecap="${stroke.cap}" stroke-miterlimit="${MITER_LIMIT}" stroke-dasharray="${stroke.dashes.join(' ') || 'none'}"`
      : ''
    return `<path d="${each.steps.map(step).join('')}" ${filled} ${stroked}/>`
  }
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${across}mm" height="${height}mm" viewBox="0 0 ${across} ${height}">${marks.map(mark).join('\n')}</svg>`
}
