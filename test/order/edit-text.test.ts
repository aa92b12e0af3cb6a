import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { editedOrder, withoutAliases } from '../../src/order/edit-text.js'

const BLOCK = `stars:
  - name: Jetty
    note: >
      painted
      white
    # the usual
    points: 5
    tip-angle: 45
    across: 300
`

describe('a text of several lines', () => {
  it.each(['>', '|', '>-', '|+'])(
    'written with %s gives way to one of one line, and nothing else to it',
    (sign) => {
      const text = BLOCK.replace('>', sign)
      const edited = editedOrder(text, ['stars', 0, 'note'], 'hello')
      expect(parse(edited)).toEqual({
        stars: [{ name: 'Jetty', note: 'hello', points: 5, 'tip-angle': 45, across: 300 }],
      })
      expect(edited).toContain('# the usual')
    },
  )
})

it('line breaks stay as they were when a key is added', () => {
  const text = BLOCK.replaceAll('\n', '\r\n')
  const edited = editedOrder(text, ['shop', 'saw', 'kerf'], 2.4)
  expect(edited.match(/\n/g)?.length).toBe(edited.match(/\r\n/g)?.length)
  expect(parse(edited).shop).toEqual({ saw: { kerf: 2.4 } })
})

describe('aliases', () => {
  const SHARED = `shop: &shop { saw: { kerf: 2.4 } } # ours
stars:
  - { name: Sluice, radius: &r 200 }
  - { name: Weir, radius: *r }
other: *shop
`
  it('are written out, comments kept', () => {
    const text = withoutAliases(SHARED)
    expect(text).not.toMatch(/[*&]/)
    expect(text).toContain('# ours')
    expect(parse(text)).toEqual(parse(SHARED))
    expect(parse(editedOrder(text, ['stars', 0, 'radius'], 150)).stars[1].radius).toBe(200)
  })

  it.each(['stars: [{ name: "5 * 3" }]\n', 'stars: [*unknown', 'a: &x [*x]\n'])(
    'that are none, or cannot be read: %s',
    (text) => expect(withoutAliases(text)).toBe(text),
  )
})
