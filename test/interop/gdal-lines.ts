import { execFileSync } from 'node:child_process'

/** A line as GDAL reads it; arcs come as short chords. */
export interface GdalLine {
  readonly layer: string
  readonly points: readonly (readonly number[])[]
}

/** Degrees of arc per chord. */
export const GDAL_ARC_STEP = 0.1

interface Feature {
  readonly properties: { readonly Layer: string }
  readonly geometry: { readonly type: string; readonly coordinates: GdalLine['points'] }
}

/** The lines of a DXF file in its own order, by GDAL's `ogr2ogr`. */
export const gdalLines = (path: string): GdalLine[] => {
  const settings = ['--config', 'OGR_ARC_STEPSIZE', String(GDAL_ARC_STEP), '-lco', 'COORDINATE_PRECISION=9']
  const text = execFileSync('ogr2ogr', ['-f', 'GeoJSON', '/vsistdout/', path, ...settings], {
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  })
  const { features } = JSON.parse(text) as { features: Feature[] }
  return features
    .filter(({ geometry }) => geometry.type === 'LineString')
    .map(({ properties, geometry }) => ({ layer: properties.Layer, points: geometry.coordinates }))
}

export const isClosed = ({ points }: GdalLine): boolean => {
  const [first, last] = [points[0], points.at(-1)]
  return first !== undefined && last !== undefined && first[0] === last[0] && first[1] === last[1]
}

/** By the shoelace formula, positive when counter-clockwise. */
export const enclosedArea = ({ points }: GdalLine): number =>
  points.reduce((sum, [x = 0, y = 0], index) => {
    const [nextX = 0, nextY = 0] = points[(index + 1) % points.length] ?? []
    return sum + (x * nextY - nextX * y) / 2
  }, 0)
