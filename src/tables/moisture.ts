import table from '../../shared/wood-moisture.json' with { type: 'json' }

/** A polynomial in the temperature in °C: constant, T, T². */
export type InTemperature = readonly [number, number, number]

/** The four terms of the Wood Handbook's equation (4-5), for °C; how they were seen stands in `shared/wood-moisture.json`. */
export const MOISTURE_TERMS: Readonly<Record<'W' | 'K' | 'K1' | 'K2', InTemperature>> = {
  W: terms(table.celsius.W),
  K: terms(table.celsius.K),
  K1: terms(table.celsius.K1),
  K2: terms(table.celsius.K2),
}

/** The table printed beside the equation begins at this temperature, °C (30 °F). */
export const MOISTURE_TABLE_FROM: number = table.table_range.temp_c[0] ?? Number.NaN

function terms([
  constant = Number.NaN,
  linear = Number.NaN,
  square = Number.NaN,
]: readonly number[]): InTemperature {
  return [constant, linear, square]
}
