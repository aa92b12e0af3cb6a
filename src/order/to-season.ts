import { SOFTWOOD_COEFFICIENT, speciesNamed, woodDensity } from '../tables/species.js'
import { celsius, hours, percent } from '../units/convert.js'
import type { Units } from '../units/read-length.js'
import { showAir } from '../units/show-measure.js'
import { DEFAULTS } from './defaults.js'
import type { WrittenOrder } from './schema.js'
import type { Air, Climate, Finish, Glue, Stain, Wall, Wood } from './season-order.js'

type Written<Value> = Exclude<Value, undefined>
type WrittenShop = Written<WrittenOrder['shop']>
type WrittenWood = Written<WrittenShop['wood']>
type WrittenClimate = Written<WrittenOrder['climate']>
type WrittenWall = Written<WrittenClimate['wall']>
type WrittenAir = Written<WrittenClimate['workshop']>

/** A board's own wood goes before the shop's; rings that it leaves open are the shop's. */
export const toWood = (own: WrittenWood | undefined, shop: WrittenWood | undefined): Wood => {
  const says = own?.species !== undefined || own?.tangential !== undefined ? own : shop
  const rings = own?.rings ?? shop?.rings ?? DEFAULTS.rings
  const weighed = own?.density ?? says?.density
  if (says?.tangential !== undefined && says.radial !== undefined) {
    const { tangential, radial } = says
    return { name: 'your wood', from: 'order', rings, tangential, radial, ...weighedAt(weighed) }
  }
  const species = says?.species === undefined ? undefined : speciesNamed(says.species)
  if (!species) {
    const moves = { tangential: SOFTWOOD_COEFFICIENT, radial: SOFTWOOD_COEFFICIENT }
    return { name: 'softwood', from: 'softwood', rings, ...moves, ...weighedAt(weighed) }
  }
  const { name, tangential, radial, specificGravity } = species
  const density = weighed ?? woodDensity(specificGravity, DEFAULTS.weighingMoisture)
  return { name, from: 'species', rings, tangential, radial, density }
}

const weighedAt = (density: number | undefined): { density?: number } =>
  density === undefined ? {} : { density }

export const toClimate = ({ climate, shop, stars }: WrittenOrder, units: Units): Climate => {
  const air = { workshop: toAir(climate?.workshop, 'workshop'), wall: toWall(climate?.wall) }
  const onWalls = (season: 'winter' | 'summer') =>
    climate?.wall?.[season] === undefined && stars.some(({ wall }) => wall?.[season] === undefined)
  const woods = [shop?.wood, ...(shop?.boards ?? []).map(({ wood }) => wood)]
  const named = woods.some((wood) => wood?.species !== undefined || wood?.tangential !== undefined)
  return {
    ...air,
    assumed: [
      ...(named
        ? []
        : ['the wood is a softwood that moves 0.25 % for 1 % of moisture (EN 1313-1; wood: species)']),
      ...(woods.some((wood) => wood?.rings !== undefined)
        ? []
        : ['the boards are flat-sawn, which move most (wood: rings)']),
      ...(climate?.workshop === undefined
        ? [`the workshop has ${showAir(air.workshop, units)} (climate: workshop)`]
        : []),
      ...(onWalls('winter')
        ? [
            `on the wall it is ${showAir(air.wall.winter, units)} in winter, as in a heated room (climate: wall)`,
          ]
        : []),
      ...(onWalls('summer') ? [`and ${showAir(air.wall.summer, units)} in summer`] : []),
    ],
  }
}

/** What a star's own wall leaves open is that of the order. */
export const toWall = (wall: WrittenWall | undefined, order?: WrittenWall): Wall => ({
  winter: toAir(wall?.winter ?? order?.winter, 'winter'),
  summer: toAir(wall?.summer ?? order?.summer, 'summer'),
})

const toAir = (air: WrittenAir | undefined, where: 'workshop' | 'winter' | 'summer'): Air => {
  const usual = DEFAULTS.air[where]
  return air?.moisture === undefined
    ? {
        humidity: percent(air?.humidity ?? usual.humidity),
        temperature: celsius(air?.temperature ?? usual.temperature),
      }
    : { moisture: percent(air.moisture) }
}

/** Glue, stain and finish as their labels state them; none where the order has none. */
export const toProducts = (
  shop: WrittenOrder['shop'],
): { readonly glue?: Glue; readonly stain?: Stain; readonly finish?: Finish } => {
  const { glue, stain, finish } = shop ?? {}
  return {
    ...(glue ? { glue: { ...time('clamp', glue.clamp), ...time('cures', glue.cures) } } : {}),
    ...(stain ? { stain: { ...coverage(stain.coverage), ...time('dries', stain.dries) } } : {}),
    ...(finish
      ? {
          finish: {
            coats: finish.coats ?? DEFAULTS.coats,
            ...coverage(finish.coverage),
            ...time('dries', finish.dries),
            ...time('cures', finish.cures),
          },
        }
      : {}),
  }
}

const coverage = (value: number | undefined): { coverage?: number } =>
  value === undefined ? {} : { coverage: value }

const time = <Key extends string>(key: Key, value: number | undefined) =>
  (value === undefined ? {} : { [key]: hours(value) }) as { [K in Key]?: ReturnType<typeof hours> }
