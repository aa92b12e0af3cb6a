import { point } from '../geometry/point.js'
import { shapeExtents } from './bounds.js'
import type { Drawing } from './model.js'
import { noteBlock, noteWidth } from './note-block.js'

/** White between a figure and the notes below it. */
const BELOW = 4

/** A drawing with its notes set below the figure, from its left side on. */
export const notedDrawing = (drawing: Omit<Drawing, 'shapes'>): Drawing => {
  const { figure, notes } = drawing
  if (!notes) return { ...drawing, shapes: figure }
  const extents = shapeExtents(figure)
  const at = point(extents.min.x, extents.min.y - BELOW)
  return { ...drawing, shapes: [...figure, ...noteBlock(notes, at, noteWidth(extents))] }
}

/** The drawing as SVG and DXF hold it. */
export const forCutter = (drawing: Drawing): Drawing =>
  drawing.toCut ? { ...drawing, shapes: drawing.toCut } : drawing
