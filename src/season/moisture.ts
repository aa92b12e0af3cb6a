import type { Air } from '../order/season-order.js'
import { type InTemperature, MOISTURE_TERMS } from '../tables/moisture.js'
import type { Celsius, Percent } from '../units/brand.js'
import { percent } from '../units/convert.js'
import * as maths from '../units/maths.js'

/**
 * The moisture that wood comes to in air of this humidity and temperature, in % of its oven-dry mass: Wood Handbook,
 * eq. (4-5).
 *
 * @param humidity more than 0 and less than 100 %
 */
export const moistureIn = (humidity: Percent, temperature: Celsius): Percent => {
  const [w, k, k1, k2] = (['W', 'K', 'K1', 'K2'] as const).map((name) =>
    at(MOISTURE_TERMS[name], temperature),
  ) as [number, number, number, number]
  const kh = (k * humidity) / 100
  const bound = (k1 * kh + 2 * k1 * k2 * maths.square(kh)) / (1 + k1 * kh + k1 * k2 * maths.square(kh))
  return percent((1800 / w) * (kh / (1 - kh) + bound))
}

const at = ([constant, linear, square]: InTemperature, temperature: Celsius): number =>
  constant + linear * temperature + square * maths.square(temperature)

/** What a meter shows, or what the air makes of the wood. */
export const moistureOf = (air: Air): Percent =>
  'moisture' in air ? air.moisture : moistureIn(air.humidity, air.temperature)

/** The air's humidity in which wood comes to this moisture; undefined outside 5 to 95 % of humidity. */
export const humidityFor = (moisture: Percent, temperature: Celsius): Percent | undefined => {
  let [dry, damp] = [5, 95]
  if (moisture < moistureIn(percent(dry), temperature) || moisture > moistureIn(percent(damp), temperature))
    return undefined
  // Moister air makes moister wood, so halving finds it; 40 times is far below what a hygrometer shows.
  for (let halving = 0; halving < 40; halving++) {
    const middle = (dry + damp) / 2
    if (moistureIn(percent(middle), temperature) < moisture) dry = middle
    else damp = middle
  }
  return percent((dry + damp) / 2)
}
