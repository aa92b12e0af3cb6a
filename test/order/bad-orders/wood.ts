import { A_STAR, type BadOrder } from './bad-order.js'

const HUMIDITY_ALLOWED = 'Allowed: a humidity from 5 to 95 %. Hang up a hygrometer for a week.'
const AIR = 'Allowed: humidity and temperature, or moisture.'
const COEFFICIENT =
  'Allowed: a share from 0.0003 to 0.008, or written in %, from 0.03 % to 0.8 %. In % put the sign behind it.'
const TIME =
  "Allowed: a time from 1 min to 60 days, written like 30 min, 24 h or 3 days. Take it from the product's label."
const COVERAGE =
  'Allowed: a coverage of one coat from 1 to 50 m² per litre, written like 12 or 400 ft²/gal. The tin states it.'
const SPECIES =
  'Allowed: American basswood, American beech, black cherry, black walnut, coast Douglas-fir, eastern white pine, interior north Douglas-fir, loblolly pine, lodgepole pine, northern white-cedar, old-growth redwood, ponderosa pine, quaking aspen, red alder, red maple, red oak, Sitka spruce, sugar maple, sugar pine, western larch, western redcedar, white ash, white fir, white oak, yellow birch or yellow-poplar. For another wood give tangential and radial, its movement across the grain, from its table.'

/** Wood, air and products that cannot be meant. */
export const WOOD: readonly BadOrder[] = [
  [
    'a species nobody tabulated',
    ['shop: { wood: { species: bog oak } }', A_STAR],
    [`shop.wood.species, line 1: given "bog oak". ${SPECIES}`],
  ],
  [
    'rings of no kind',
    ['shop: { wood: { rings: rift } }', A_STAR],
    ['shop.wood.rings, line 1: given "rift". Allowed: flat or quarter.'],
  ],
  [
    'a species and its own figures',
    ['shop: { wood: { species: red oak, tangential: 0.0037, radial: 0.0016 } }', A_STAR],
    [
      'shop.wood.tangential, line 1: given 0.0037 beside species. The species says how the wood moves. Take one of them out.',
    ],
  ],
  [
    'half of the figures',
    ['shop: { boards: [{ width: 70, length: 2400, wood: { radial: 0.14 % } }] }', A_STAR],
    [
      'shop.boards[0].wood.radial, line 1: given "0.14 %" without tangential. A table of woods has both: add tangential.',
    ],
  ],
  [
    'figures that are swapped',
    ['shop: { wood: { tangential: 0.0014, radial: 0.0030 } }', A_STAR],
    [
      'shop.wood.radial, line 1: given 0.003, more than tangential 0.0014. Wood moves more along its rings (tangential) than across them (radial). Are the two swapped?',
    ],
  ],
  [
    'a share that is meant in %',
    ['shop: { wood: { tangential: 0.30, radial: 0.14 % } }', A_STAR],
    [`shop.wood.tangential, line 1: given 0.3. ${COEFFICIENT}`],
  ],
  [
    'a wood lighter than cork',
    ['shop: { wood: { density: 42 } }', A_STAR],
    [
      'shop.wood.density, line 1: given 42. Read as kg/m³. If lb/ft³ were meant, write 42 lb/ft³. Allowed: a density from 100 to 1400 kg/m³, written like 680 kg/m³ or 42 lb/ft³.',
    ],
  ],
  [
    'air damper than water',
    ['climate: { workshop: { humidity: 105 } }', A_STAR],
    [`climate.workshop.humidity, line 1: given 105. ${HUMIDITY_ALLOWED}`],
  ],
  [
    'humidity as a share',
    ['climate: { wall: { winter: { humidity: 0.35 } } }', A_STAR],
    [`climate.wall.winter.humidity, line 1: given 0.35. ${HUMIDITY_ALLOWED}`],
  ],
  [
    'a temperature that is meant in the other scale',
    ['climate: { workshop: { humidity: 45, temperature: 68 } }', A_STAR],
    [
      'climate.workshop.temperature, line 1: given 68. Read as °C. If °F were meant, write 68 °F. Allowed: a temperature from -30 to 50 °C, written like 20, 20 °C or 68 °F.',
    ],
  ],
  [
    'a temperature alone',
    ['climate: { wall: { summer: { temperature: 24 } } }', A_STAR],
    [
      `climate.wall.summer, line 1: given temperature without humidity. ${AIR} The wood goes by the humidity: add it.`,
    ],
  ],
  [
    'a meter and the air',
    ['climate: { workshop: { humidity: 45, moisture: 9 } }', A_STAR],
    [`climate.workshop, line 1: given humidity and moisture. ${AIR} Take one of them out.`],
  ],
  [
    'no air',
    ['climate: { workshop: {} }', A_STAR],
    [`climate.workshop, line 1: given an empty group of keys. ${AIR}`],
  ],
  [
    'wood as wet as the tree, on one star',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, wall: { winter: { moisture: 60 } } }]',
    ['stars[0].wall.winter.moisture, line 1: given 60. Allowed: a moisture from 2 to 25 %.'],
  ],
  [
    'a time without its unit',
    ['shop: { glue: { cures: 24 } }', A_STAR],
    [`shop.glue.cures, line 1: given 24. It needs its unit. ${TIME}`],
  ],
  [
    'a finish that never dries',
    ['shop: { finish: { dries: 90 days } }', A_STAR],
    [`shop.finish.dries, line 1: given "90 days". ${TIME}`],
  ],
  [
    'a coverage that is meant in square feet',
    ['shop: { finish: { coverage: 400 } }', A_STAR],
    [
      `shop.finish.coverage, line 1: given 400. Read as m²/l. If ft²/gal were meant, write 400 ft²/gal. ${COVERAGE}`,
    ],
  ],
  [
    'a coverage of nothing',
    ['shop: { stain: { coverage: 0 } }', A_STAR],
    [`shop.stain.coverage, line 1: given 0. ${COVERAGE}`],
  ],
  [
    'half a coat',
    ['shop: { finish: { coats: 1.5 } }', A_STAR],
    ['shop.finish.coats, line 1: given 1.5. Allowed: a whole number from 1 to 20.'],
  ],
  [
    'a panel of lead',
    ['shop: { panels: [{ length: 900, width: 600, density: 11340 }] }', A_STAR],
    [
      'shop.panels[0].density, line 1: given 11340. Allowed: a density from 100 to 1400 kg/m³, written like 680 kg/m³ or 42 lb/ft³.',
    ],
  ],
  [
    'hostile signs for a unit',
    ['shop: { glue: { cures: "24 \\e[31mh" } }', A_STAR],
    [`shop.glue.cures, line 1: given "24 \\u001b[31mh". Its unit is not known here. ${TIME}`],
  ],
]
