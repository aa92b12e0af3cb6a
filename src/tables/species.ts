import table from '../../shared/wood-species.json' with { type: 'json' }

/** How a value came into the table: read in a text that quotes the handbook, or from memory. */
export type Seen = 'looked-up' | 'memory'

/**
 * A species of wood: Wood Handbook (FPL-GTR-190), Tables 13-5 and 5-3a. How each value was seen stands beside it, the
 * addresses in `shared/wood-species.json`.
 */
export interface Species {
  readonly name: string
  readonly softwood: boolean
  /** Across the rings: the fraction by which a dimension changes for 1 % of moisture, from 6 to 14 % moisture. */
  readonly radial: number
  /** Along the rings, across the grain; unit and limits as for `radial`. */
  readonly tangential: number
  /** Oven-dry mass over the volume at 12 % moisture, as a multiple of water's 1000 kg/m³. */
  readonly specificGravity: number
  readonly seen: Readonly<Record<'radial' | 'tangential' | 'specificGravity', Seen>>
}

/** By name. */
export const SPECIES: readonly Species[] = table.species.map((row) => ({
  name: row.name,
  softwood: row.softwood,
  radial: row.radial,
  tangential: row.tangential,
  specificGravity: row.specific_gravity,
  seen: {
    radial: seen(row.seen.radial),
    tangential: seen(row.seen.tangential),
    specificGravity: seen(row.seen.specific_gravity),
  },
}))

/** The species of this name, in capitals or not. */
export const speciesNamed = (name: string): Species | undefined =>
  SPECIES.find((species) => species.name.toLowerCase() === name.trim().toLowerCase())

/** What any softwood does across the grain, whichever way the rings run: EN 1313-1:2010, clause 5. */
export const SOFTWOOD_COEFFICIENT: number = table.softwood.coefficient

/** Moisture contents, in %, between which the coefficients hold: Wood Handbook, Table 13-5. */
export const COEFFICIENTS_HOLD = {
  from: table.moisture_limits_pct[0] ?? Number.NaN,
  to: table.moisture_limits_pct[1] ?? Number.NaN,
} as const

/** Density of water, kg/m³, as the Wood Handbook takes it with specific gravities. */
const WATER = 1000

/**
 * Density in kg/m³ of wood at a moisture content in %, from its specific gravity at 12 %: Wood Handbook, chapter 4 (the
 * equation from memory). The volume is taken as that at 12 %; from 6 to 14 % the wood's movement makes 3 % of it at most.
 */
export const woodDensity = (specificGravity: number, moisture: number): number =>
  WATER * specificGravity * (1 + moisture / 100)

function seen(written: string): Seen {
  return written === 'looked-up' ? 'looked-up' : 'memory'
}
