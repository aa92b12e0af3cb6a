import { describe, expect, test } from 'vitest'
import { JIG_STOCK } from './jig-stock.js'
import { orderOf } from './order-of.js'
import { USUAL_WALL, USUAL_WOOD, usualClimate } from './usual-season.js'

const MINIMAL_STAR = {
  name: 'Star',
  fileName: 'star',
  quantity: 1,
  points: 5,
  shape: { by: 'tip-angle', tipAngle: 45 },
  wall: USUAL_WALL,
}

describe('what an order leaves open', () => {
  test('in millimetres', () => {
    expect(orderOf({ text: 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]' })).toEqual({
      title: 'Star',
      lengths: { units: 'mm', nearest: 32 },
      shop: {
        saw: { limit: 45, kerf: (3 / 32) * 25.4, readsTo: 0.5, detents: [], repeatsTo: 0.05, trueTo: 0.2 },
        stop: { repeatsTo: 0.1 },
        acceptedGap: 0.5,
        boards: [],
        panels: [],
        panelSeed: 1,
        cutter: { kind: 'hand', dxf: 'r12', kerf: 0.2, bit: 3.175 },
        paper: { sheet: { size: 'A4' }, margin: 10, overlap: 10 },
        endAllowance: 0,
        jigStock: JIG_STOCK,
        sound: 'arm',
        wood: USUAL_WOOD,
      },
      climate: usualClimate('mm'),
      space: {},
      jigs: { names: ['blank-stop', 'arm-cradle', 'angle-gauge'], asked: false },
      stars: [{ ...MINIMAL_STAR, size: { by: 'board-width', length: 70 } }],
      assumed: [
        'the saw stops at 45° (saw-limit)',
        'the blade removes 2.4 mm (kerf)',
        'the scale can be set to 0.5° (reads-to)',
        'stars without a backing are carried by their glued joints alone (backing)',
      ],
      overridden: [],
    })
  })

  test('in inches', () => {
    const text = `
units: in
shop: { saw: { limit: 50 }, boards: [{ width: 3.5, length: 96 }], panels: [{ length: 48, width: 24 }], paper: {} }
stars: [{ points: 5, tip-angle: 45, tip-edge: 5, backing: {} }]`
    expect(orderOf({ text })).toEqual({
      title: 'Star',
      lengths: { units: 'in', nearest: 32 },
      shop: {
        saw: { limit: 50, kerf: (3 / 32) * 25.4, readsTo: 0.5, detents: [], repeatsTo: 0.05, trueTo: 0.2 },
        stop: { repeatsTo: 0.1 },
        acceptedGap: 0.5,
        boards: [{ width: 3.5 * 25.4, length: 96 * 25.4, defects: [], wood: USUAL_WOOD }],
        panels: [{ length: 48 * 25.4, width: 24 * 25.4, edge: 10, gap: 4 }],
        panelSeed: 1,
        cutter: { kind: 'hand', dxf: 'r12', kerf: 0.2, bit: 3.175 },
        paper: { sheet: { size: 'Letter' }, margin: 10, overlap: 10 },
        endAllowance: 0,
        jigStock: JIG_STOCK,
        sound: 'arm',
        wood: USUAL_WOOD,
      },
      climate: usualClimate('in'),
      space: {},
      jigs: { names: ['blank-stop', 'arm-cradle', 'angle-gauge'], asked: false },
      stars: [
        {
          ...MINIMAL_STAR,
          size: { by: 'tip-edge', length: 5 * 25.4 },
          backing: { shape: 'star', inset: 12 },
        },
      ],
      assumed: [
        'the blade removes 3/32 in (kerf)',
        'the scale can be set to 0.5° (reads-to)',
        'the backing stays 15/32 in inside the star (inset)',
      ],
      overridden: [],
    })
  })

  test('the usual inset is not told where no backing goes by it', () => {
    const insetTold = (...backings: string[]) =>
      orderOf({
        text: `stars: [${backings.map((backing) => `{ regular: 5/2, across: 300, backing: { ${backing} } }`).join(', ')}]`,
      }).assumed.filter((text) => text.includes('(inset)'))
    expect(insetTold('shape: auto, covers: 40')).toEqual([])
    expect(insetTold('shape: auto')).toEqual(['the backing stays 12.0 mm inside the star (inset)'])
    expect(insetTold('shape: disc, covers: 20')).toHaveLength(1)
    expect(insetTold('shape: auto, covers: 40', 'shape: star')).toHaveLength(1)
  })

  test('stars without a name are counted, one alone is just a star', () => {
    const star = '{ regular: 5/2, across: 300 }'
    const names = (text: string) => orderOf({ text }).stars.map(({ name, fileName }) => [name, fileName])
    expect(names(`stars: [${star}]`)).toEqual([['Star', 'star']])
    expect(names(`stars: [${star}, { name: Mill, regular: 6/2, radius: 150 }, ${star}]`)).toEqual([
      ['Star 1', 'star-1'],
      ['Mill', 'mill'],
      ['Star 3', 'star-3'],
    ])
  })
})
