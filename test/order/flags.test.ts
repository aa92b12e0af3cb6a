import { describe, expect, test } from 'vitest'
import type { FlagValues } from '../../src/order/flags.js'
import { parseOrder } from '../../src/order/parse.js'
import { orderOf } from './order-of.js'

describe('flags alone say the same as an order file:', () => {
  test.each<[flags: FlagValues, text: string]>([
    [
      { points: '5', 'tip-angle': '45', 'board-width': '70mm' },
      'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]',
    ],
    [{ regular: '5/2', across: '300' }, 'stars: [{ regular: 5/2, across: 300 }]'],
    [
      { points: '5', slenderest: true, height: '30 cm', 'saw-limit': '50' },
      'shop: { saw: { limit: 50 } }\nstars: [{ points: 5, slenderest: true, height: 300 }]',
    ],
    [
      { units: 'in', points: '5', 'tip-angle': '45', 'board-width': '3-1/2', kerf: '3/32' },
      'units: in\nshop: { saw: { kerf: 3/32 } }\nstars: [{ points: 5, tip-angle: 45, board-width: 3.5 }]',
    ],
    [
      {
        title: 'Winter fair',
        name: 'Jetty',
        note: 'silver side out',
        quantity: '6',
        regular: '6/2',
        radius: '150',
        chamfer: '3',
        thickness: '19',
        backing: 'disc',
        inset: '10',
        'backing-thickness': '4',
        nearest: '1/16',
        'reads-to': '0.25',
        detents: '0, 22.5, 45',
        crosscut: '200',
        'end-allowance': '20',
        sound: 'blank',
        'rip-kerf': '3',
        'panel-seed': '42',
        hardware: '1.20',
        paper: 'a3',
        margin: '8',
        overlap: '12',
        dxf: 'r2000',
      },
      `title: Winter fair
nearest: 1/16
shop:
  saw: { reads-to: 0.25, detents: [0, 22.5, 45], crosscut: 200 }
  paper: { size: A3, margin: 8, overlap: 12 }
  cutter: { dxf: r2000 }
  end-allowance: 20
  sound: blank
  rip-kerf: 3
  panel-seed: 42
stars:
  - name: Jetty
    note: silver side out
    quantity: 6
    regular: 6/2
    radius: 150
    chamfer: 3
    thickness: 19
    hardware: 1.20
    backing: { shape: disc, inset: 10, thickness: 4 }`,
    ],
    [
      { regular: '5/2', 'tip-edge': '120', roll: '610' },
      'shop: { paper: { roll: 610 } }\nstars: [{ regular: 5/2, tip-edge: 120 }]',
    ],
  ])('%j', (flags, text) => {
    expect(orderOf({ flags })).toEqual(orderOf({ text }))
  })
})

describe('flags over an order of one star', () => {
  const star = (keys: string) => `stars: [{ ${keys} }]`

  test.each<[what: string, text: string, flags: FlagValues, same: string, notes: readonly string[]]>([
    [
      'a size replaces the size, whichever it was',
      star('regular: 5/2, across: 300'),
      { 'board-width': '70' },
      star('regular: 5/2, board-width: 70'),
      ['--board-width 70 (instead of across 300)'],
    ],
    [
      'the same size replaces its value',
      star('regular: 5/2, across: 300 mm'),
      { across: '400' },
      star('regular: 5/2, across: 400'),
      ['--across 400 (the order says "300 mm")'],
    ],
    [
      'a tip angle replaces slenderest',
      star('points: 7, slenderest: true, across: 300'),
      { 'tip-angle': '40' },
      star('points: 7, tip-angle: 40, across: 300'),
      ['--tip-angle 40 (instead of slenderest true)'],
    ],
    [
      'a tip angle replaces regular, and the points stay',
      star('regular: 7/2, across: 300'),
      { 'tip-angle': '40' },
      star('points: 7, tip-angle: 40, across: 300'),
      ['--tip-angle 40 (instead of regular "7/2")'],
    ],
    [
      'regular replaces points and tip angle',
      star('points: 5, tip-angle: 45, across: 300'),
      { regular: '8/3' },
      star('regular: 8/3, across: 300'),
      ['--regular 8/3 (instead of tip-angle 45)'],
    ],
    [
      'slenderest replaces the tip angle',
      star('points: 5, tip-angle: 45, across: 300'),
      { slenderest: true },
      star('points: 5, slenderest: true, across: 300'),
      ['--slenderest (instead of tip-angle 45)'],
    ],
    [
      'slenderest replaces regular, with other points',
      star('regular: 5/2, across: 300'),
      { slenderest: true, points: '6' },
      star('points: 6, slenderest: true, across: 300'),
      ['--points 6 (instead of regular "5/2")', '--slenderest (instead of regular "5/2")'],
    ],
    [
      'points alone leave the shape',
      star('points: 5, tip-angle: 45, across: 300'),
      { points: '6' },
      star('points: 6, tip-angle: 45, across: 300'),
      ['--points 6 (the order says 5)'],
    ],
    [
      'an inset alone keeps the shape of the backing',
      star('regular: 5/2, across: 300, backing: { shape: disc, inset: 9 }'),
      { inset: '5' },
      star('regular: 5/2, across: 300, backing: { shape: disc, inset: 5 }'),
      ['--inset 5 (the order says 9)'],
    ],
    [
      'a kerf where the order has no shop',
      star('regular: 5/2, across: 300'),
      { kerf: '3' },
      `shop: { saw: { kerf: 3 } }\n${star('regular: 5/2, across: 300')}`,
      ['--kerf 3 (the order leaves it open)'],
    ],
    [
      'detents replace the whole list',
      `shop: { saw: { detents: [0, 15, 45] } }\n${star('regular: 5/2, across: 300')}`,
      { detents: '0,22.5' },
      `shop: { saw: { detents: [0, 22.5] } }\n${star('regular: 5/2, across: 300')}`,
      ['--detents 0,22.5 (the order says 0, 15, 45)'],
    ],
    [
      'a roll replaces a paper size, and the rest of the paper stays',
      `shop: { paper: { size: A3, margin: 8 } }\n${star('regular: 5/2, across: 300')}`,
      { roll: '610' },
      `shop: { paper: { roll: 610, margin: 8 } }\n${star('regular: 5/2, across: 300')}`,
      ['--roll 610 (instead of paper "A3")'],
    ],
    [
      'a paper size replaces a roll, and the rest of the paper stays',
      `shop: { paper: { roll: 610, overlap: 12 } }\n${star('regular: 5/2, across: 300')}`,
      { paper: 'a3' },
      `shop: { paper: { size: A3, overlap: 12 } }\n${star('regular: 5/2, across: 300')}`,
      ['--paper a3 (instead of roll 610)'],
    ],
    [
      'a roll replaces a roll',
      `shop: { paper: { roll: 610 mm } }\n${star('regular: 5/2, across: 300')}`,
      { roll: '36 in' },
      `shop: { paper: { roll: 36 in } }\n${star('regular: 5/2, across: 300')}`,
      ['--roll 36 in (the order says "610 mm")'],
    ],
    [
      'a roll where the order has no paper',
      star('regular: 5/2, across: 300'),
      { roll: '610' },
      `shop: { paper: { roll: 610 } }\n${star('regular: 5/2, across: 300')}`,
      ['--roll 610 (the order leaves it open)'],
    ],
    [
      'units change what is shown and how flags are read, not the lengths of the file',
      star('regular: 5/2, across: 300, chamfer: 3'),
      { units: 'in', inset: '1/2' },
      `units: in\nshop: { paper: { size: A4 } }\n${star('regular: 5/2, across: 300 mm, chamfer: 3 mm, backing: { inset: 1/2 }')}`,
      ['--inset 1/2 in (the order leaves it open)', '--units in (the order leaves it open)'],
    ],
    [
      'a shop file without a star takes its first star from the flags',
      'shop: { saw: { limit: 50 } }',
      { regular: '5/2', across: '300' },
      `shop: { saw: { limit: 50 } }\n${star('regular: 5/2, across: 300')}`,
      ['--regular 5/2 (the order leaves it open)', '--across 300 (the order leaves it open)'],
    ],
  ])('%s', (_, text, flags, same, notes) => {
    const order = orderOf({ text, flags })
    expect({ ...order, overridden: [] }).toEqual(orderOf({ text: same }))
    expect(order.overridden).toEqual(notes)
  })

  test('what a flag replaces is told without harm', () => {
    const text = `title: ["\\e[31m", "\\u202e"]\n${star('regular: 5/2, across: 300')}`
    const { overridden } = orderOf({ text, flags: { title: 'Winter fair' } })
    expect(overridden).toHaveLength(1)
    expect(overridden.join('')).toMatch(/^--title Winter fair \(the order says [ -~]+\)$/)
  })
})

describe('--star in an order of several', () => {
  const text = `
stars:
  - { name: Boathouse, points: 5, tip-angle: 45, board-width: 70 }
  - { name: Bakery window, regular: 6/2, across: 300 }
  - { regular: 8/3, radius: 200 }`
  const boathouse = { name: 'Boathouse', size: { by: 'board-width', length: 70 } }
  const bakery = { name: 'Bakery window', size: { by: 'across', length: 300 } }
  const third = { name: 'Star 3', size: { by: 'radius', length: 200 } }

  test('without it, every star is kept', () => {
    expect(orderOf({ text }).stars).toMatchObject([boathouse, bakery, third])
  })

  test.each([
    ['Boathouse', boathouse],
    ['BOATHOUSE', boathouse],
    ['Bakery window', bakery],
    ['bakery-window', bakery],
    ['Bäkery WINDOW!', bakery],
    ['Star 3', third],
    ['star-3', third],
  ])('%s keeps that star', (star, kept) => {
    expect(orderOf({ text, star }).stars).toMatchObject([kept])
  })

  test.each([
    ['Boathouse', boathouse],
    ['Bakery window', bakery],
    ['bakery-window', bakery],
    ['star-3', third],
  ])('a size flag with --star %s is for that star and no other', (star, kept) => {
    const { stars } = orderOf({ text, star, flags: { across: '444' } })
    expect(stars).toMatchObject([{ ...kept, size: { by: 'across', length: 444 } }])
  })

  test('the chosen star can be given another name', () => {
    const { stars, overridden } = orderOf({ text, star: 'boathouse', flags: { name: 'Jetty' } })
    expect(stars).toMatchObject([{ ...boathouse, name: 'Jetty', fileName: 'jetty' }])
    expect(overridden).toEqual(['--name Jetty (the order says "Boathouse")'])
  })

  const written = `
stars:
  - { name: Избушка, regular: 5/2, across: 200 }
  - { name: ʘ, regular: 5/2, across: 200 }
  - { name: ǂ, regular: 5/2, across: 200 }`

  test.each([
    ['Избушка', 'izbushka'],
    ['ИЗБУШКА', 'izbushka'],
    ['izbushka', 'izbushka'],
    ['ʘ', 'star-2'],
    ['star-2', 'star-2'],
    ['ǂ', 'star-3'],
  ])('in other scripts: %s keeps the star of the files %s', (star, fileName) => {
    expect(orderOf({ text: written, star }).stars).toMatchObject([{ fileName }])
  })

  test('a name that no star has, of letters without a Latin spelling, is refused', () => {
    expect(parseOrder({ text: written, star: 'ǃ' }).ok).toBe(false)
  })

  test('a flag of the shop needs no --star', () => {
    const order = orderOf({ text, flags: { kerf: '3' } })
    expect(order.shop.saw.kerf).toBe(3)
    expect(order.stars).toHaveLength(3)
  })
})
