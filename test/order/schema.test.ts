import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { parseOrder } from '../../src/order/parse.js'
import { orderJsonSchemaText } from './json-schema.js'

const KEPT: object = JSON.parse(orderJsonSchemaText())

// Ajv is the judge here: a JSON Schema reader that shares no code with ours.
const validate = new Ajv({ strict: true, strictTypes: false, allErrors: true }).compile(KEPT)

test('the schema kept in shared/ is the one the order reader is made from', async () => {
  await expect(orderJsonSchemaText()).toMatchFileSnapshot('../../shared/order.schema.json')
})

const example = (name: string): string =>
  readFileSync(new URL(`../../shared/examples/${name}.yaml`, import.meta.url), 'utf8')

describe('an editor and the reader agree that an order is right:', () => {
  test.each(['winter-fair', 'lantern-walk'])('the example %s', (name) => {
    const text = example(name)
    expect(validate(parse(text)), JSON.stringify(validate.errors)).toBe(true)
    expect(parseOrder({ text }).ok).toBe(true)
  })

  test('every key there is', () => {
    const order = {
      $schema: '../order.schema.json',
      title: 'Winter fair by the lake',
      units: 'in',
      nearest: '1/16',
      shop: {
        saw: {
          limit: 50,
          kerf: '3/32',
          'reads-to': 0.5,
          detents: [0, '22.5°', 45],
          crosscut: '12 in',
          bias: { miter: '-0.2', uncertainty: 0.03 },
        },
        boards: [
          {
            name: 'Shed door, left half',
            width: 3.5,
            thickness: '3/4',
            length: '8 ft',
            price: 7.5,
            count: 4,
            defects: [{ from: 10, to: '12 1/2' }],
            wood: { tangential: '0.30 %', radial: 0.0014, density: '37 lb/ft³' },
          },
        ],
        panels: [{ length: '4 ft', width: '2 ft', thickness: '1/4', price: 14, edge: '1/2', density: 42 }],
        cutter: { kind: 'router', kerf: '1/8', bit: '1/8', dxf: 'r2000' },
        paper: { roll: '24 in', margin: '1/2', overlap: '1/2' },
        'end-allowance': 1,
        sound: 'blank',
        'rip-kerf': '1/8',
        'panel-seed': 3,
        wood: { species: 'white oak', rings: 'quarter' },
        glue: { clamp: '30 min', cures: '24 h' },
        stain: { coverage: '100 ft²/qt', dries: '2 h' },
        finish: { coverage: 400, coats: 3, dries: '6 h', cures: '3 days' },
      },
      climate: {
        workshop: { humidity: 45, temperature: 64 },
        wall: { winter: { humidity: '30 %', temperature: '21 °C' }, summer: { moisture: 11 } },
      },
      stars: [
        {
          name: 'Jetty',
          note: 'larch from the old jetty, silver side out; ⌀ 12 mm × 2',
          quantity: 2,
          points: 5,
          'tip-angle': 45,
          'board-width': '3-1/2"',
          chamfer: '1/8',
          thickness: '3/4',
          backing: { shape: 'disc', inset: '1/2', thickness: '1/4' },
          wall: { winter: { humidity: 80 } },
          hardware: 1.2,
        },
        { name: 'Chapel', regular: '8/3', across: '14 in' },
        { name: 'Mill', points: 6, slenderest: true, height: 14 },
        { name: 'Weir', regular: '6/2', radius: 7 },
        { name: 'Sluice', regular: '5/2', 'tip-edge': 6 },
      ],
    }
    expect(validate(order), JSON.stringify(validate.errors)).toBe(true)
    expect(parseOrder({ text: JSON.stringify(order) }).ok).toBe(true)
  })
})

const star = { points: 5, 'tip-angle': 45, 'board-width': 70 }

describe('an editor and the reader agree that an order is wrong:', () => {
  test.each<[what: string, order: unknown]>([
    ['no stars', {}],
    ['an empty list of stars', { stars: [] }],
    ['a star that is no group', { stars: [5] }],
    ['a star that is a list', { stars: [[5]] }],
    ['stars that are no list', { stars: star }],
    ['an unknown key at the top', { stars: [star], colour: 'red' }],
    ['an unknown key of a star', { stars: [{ ...star, colour: 'red' }] }],
    ['an unknown key of the saw', { shop: { saw: { blade: 2 } }, stars: [star] }],
    ['units of no kind', { units: 'cm', stars: [star] }],
    ['an unknown paper', { shop: { paper: { size: 'A9' } }, stars: [star] }],
    ['an unknown cutter', { shop: { cutter: { kind: 'axe' } }, stars: [star] }],
    ['a length that is neither text nor number', { stars: [{ ...star, chamfer: true }] }],
    ['slenderest: false', { stars: [{ points: 5, slenderest: false, across: 300 }] }],
    ['a regular star written otherwise', { stars: [{ regular: '5:2', across: 300 }] }],
    ['a board without a length', { shop: { boards: [{ width: 70 }] }, stars: [star] }],
    ['a saw that is a list', { shop: { saw: [45] }, stars: [star] }],
    ['a hundred and one stars', { stars: Array.from({ length: 101 }, () => star) }],
  ])('%s', (_, order) => {
    expect(validate(order)).toBe(false)
    expect(parseOrder({ text: JSON.stringify(order) }).ok).toBe(false)
  })
})

interface Described {
  readonly description?: string
  readonly additionalProperties?: unknown
  readonly properties?: Readonly<Record<string, Described>>
  readonly items?: Described
}

test('no group takes unknown keys, and every value says what it means', () => {
  const undescribed: string[] = []
  const open: string[] = []
  const look = (schema: Described, path: string): void => {
    if (schema.properties && schema.additionalProperties !== false) open.push(path)
    if (!schema.properties && schema.description === undefined) undescribed.push(path)
    for (const [key, inner] of Object.entries(schema.properties ?? {})) look(inner, `${path}.${key}`)
    if (schema.items) look(schema.items, `${path}[]`)
  }
  look(KEPT as Described, 'order')
  expect(open).toEqual([])
  expect(undescribed).toEqual([])
})
