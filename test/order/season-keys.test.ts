import { describe, expect, test } from 'vitest'
import { orderOf } from './order-of.js'
import { USUAL_WALL, usualClimate } from './usual-season.js'

const STAR = 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]'
const woodOf = (shop: string) => orderOf({ text: `shop: ${shop}\n${STAR}` }).shop

describe('wood', () => {
  test('a species moves and weighs as the table says: Wood Handbook, Tables 13-5 and 5-3a', () => {
    expect(woodOf('{ wood: { species: black walnut, rings: quarter } }').wood).toEqual({
      name: 'black walnut',
      from: 'species',
      rings: 'quarter',
      tangential: 0.00274,
      radial: 0.0019,
      // Specific gravity 0.55 at 12 % moisture: 0.55 x 1000 x 1.12.
      density: expect.closeTo(616, 9),
    })
  })

  test('what was weighed goes before the table', () => {
    expect(woodOf('{ wood: { species: black walnut, density: 590 } }').wood.density).toBe(590)
  })

  test("a wood of one's own, as European tables have it: larch 0.30 and 0.14 % for 1 %", () => {
    const { wood } = woodOf('{ wood: { tangential: 0.30 %, radial: 0.14 %, density: 590 } }')
    expect(wood).toMatchObject({ name: 'your wood', from: 'order', rings: 'flat', density: 590 })
    expect([wood.tangential, wood.radial]).toEqual([expect.closeTo(0.003, 12), expect.closeTo(0.0014, 12)])
  })

  test("a board's own wood goes before the shop's; the rings it leaves open are the shop's", () => {
    const { boards } = woodOf(
      '{ wood: { species: red oak, rings: quarter }, boards: [{ width: 70, length: 2 m, wood: { species: white ash } }, { width: 70, length: 2 m, wood: { rings: flat } }, { width: 70, length: 2 m }] }',
    )
    expect(boards.map(({ wood }) => [wood.name, wood.rings])).toEqual([
      ['white ash', 'quarter'],
      ['red oak', 'flat'],
      ['red oak', 'quarter'],
    ])
  })
})

describe('air', () => {
  test('what an order leaves open is a closed shop and a heated room, and it is said so', () => {
    expect(orderOf({ text: STAR }).climate).toEqual(usualClimate('mm'))
  })

  test('what is stated is taken, and no more assumed', () => {
    const { climate, stars } = orderOf({
      text: `units: in
shop: { wood: { species: red oak, rings: flat } }
climate:
  workshop: { humidity: 40, temperature: 68 }
  wall: { winter: { humidity: 25 %, temperature: 20 °C }, summer: { moisture: 11.5 } }
stars: [{ points: 5, tip-angle: 45, board-width: 3.5 }]`,
    })
    expect(climate).toEqual({
      workshop: { humidity: 40, temperature: 20 },
      wall: { winter: { humidity: 25, temperature: 20 }, summer: { moisture: 11.5 } },
      assumed: [],
    })
    expect(stars[0]?.wall).toEqual(climate.wall)
  })

  test("a star's own wall takes from the order's what it leaves open", () => {
    const { stars } = orderOf({
      text: `climate: { wall: { winter: { moisture: 7 } } }
stars:
  - { points: 5, tip-angle: 45, board-width: 70, wall: { summer: { moisture: 14 } } }
  - { points: 6, tip-angle: 45, board-width: 70 }`,
    })
    expect(stars.map(({ wall }) => wall)).toEqual([
      { winter: { moisture: 7 }, summer: { moisture: 14 } },
      { winter: { moisture: 7 }, summer: USUAL_WALL.summer },
    ])
  })

  test('flags say the same', () => {
    const flags = {
      ...{ points: '5', 'tip-angle': '45', 'board-width': '70' },
      ...{ species: 'white oak', rings: 'quarter' },
      ...{ 'workshop-humidity': '50', 'winter-humidity': '35 %', 'summer-humidity': '65' },
    }
    expect(orderOf({ flags })).toEqual(
      orderOf({
        text: `shop: { wood: { species: white oak, rings: quarter } }
climate: { workshop: { humidity: 50 }, wall: { winter: { humidity: 35 }, summer: { humidity: 65 } } }
${STAR}`,
      }),
    )
  })
})

test('times and coverages as labels state them, in hours and m² per litre', () => {
  const shop = woodOf(
    '{ glue: { clamp: 30 min, cures: 1 day }, stain: { coverage: 10, dries: 2 h }, finish: { coverage: 12, dries: 6 h, cures: 3 days } }',
  )
  expect(shop).toMatchObject({
    glue: { clamp: 0.5, cures: 24 },
    stain: { coverage: 10, dries: 2 },
    finish: { coverage: 12, coats: 2, dries: 6, cures: 72 },
  })
})
