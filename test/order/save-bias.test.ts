import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { parseOrder } from '../../src/order/parse.js'
import { biasAsWritten, withBias } from '../../src/order/save-bias.js'
import { degrees } from '../../src/units/convert.js'

// Judged by reading: the text without the bias must be the text that was there, to the character.

const BIAS = { miter: degrees(-0.19976), uncertainty: degrees(0.0309) }
const WRITTEN = '{ miter: -0.2, uncertainty: 0.04 }'

const saved = (text: string): string => {
  const outcome = withBias(text, BIAS)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

const A_STAR = 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]'

it('is written to a hundredth, its uncertainty rounded up', () => {
  expect(biasAsWritten(BIAS)).toBe(WRITTEN)
})

describe('saved into', () => {
  it.each(['winter-fair', 'lantern-walk'])('the example %s, comments and columns stay', (name) => {
    const text = readFileSync(new URL(`../../shared/examples/${name}.yaml`, import.meta.url), 'utf8')
    const now = saved(text)
    expect(now.replace(`bias: ${WRITTEN}\n    `, '')).toBe(text)
    const order = parseOrder({ text: now })
    expect(order.ok && order.value.shop.saw.bias).toEqual({ miter: -0.2, uncertainty: 0.04 })
    // Once more changes nothing.
    expect(saved(now)).toBe(now)
  })

  it.each([
    [
      'a saw between braces',
      `shop: { saw: { limit: 45, kerf: 2.4 } }  # ours\n${A_STAR}\n`,
      'kerf: 2.4, bias: B } }  # ours',
    ],
    [
      'a shop without a saw',
      `shop:\n  # the rack\n  end-allowance: 20\n${A_STAR}\n`,
      '  saw: { bias: B }\n  end-allowance',
    ],
    ['an order without a shop', `# fair\n${A_STAR}\n`, `# fair\nshop: { saw: { bias: B } }\n${A_STAR}`],
    ['an old bias', `shop: { saw: { bias: { miter: 0.4 }, kerf: 2.4 } }\n${A_STAR}\n`, 'bias: B, kerf: 2.4'],
    [
      'an old bias in lines of its own',
      `shop:\n  saw:\n    bias:\n      miter: 0.4   # spring\n      uncertainty: 0.1\n    kerf: 2.4   # thin\n${A_STAR}\n`,
      'miter: -0.2   # spring\n      uncertainty: 0.04\n    kerf: 2.4   # thin',
    ],
    ['Windows line ends', `shop:\r\n  saw:\r\n    kerf: 2.4\r\n${A_STAR}\r\n`, 'bias: B\r\n    kerf'],
  ])('%s', (_, text, shows) => {
    const now = saved(text)
    expect(now).toContain(shows.replace('B', WRITTEN))
    expect(parse(now).shop.saw.bias).toEqual({ miter: -0.2, uncertainty: 0.04 })
  })

  it('JSON stays JSON', () => {
    const text =
      '{\n  "shop": { "saw": { "kerf": 2.4 } },\n  "stars": [{ "regular": "5/2", "across": 300 }]\n}\n'
    expect(JSON.parse(saved(text)).shop.saw).toEqual({ kerf: 2.4, bias: { miter: -0.2, uncertainty: 0.04 } })
  })
})

describe('refused, with what to write by hand:', () => {
  it.each([
    ['a saw that is an alias', `x: 1\nshop: { saw: *there }\n${A_STAR}`],
    ['a saw that other keys share', `shop: &a\n  saw: &s { kerf: 2.4 }\n  boards: *s\n${A_STAR}`],
    ['a shop that is a number', `shop: 7\n${A_STAR}`],
  ])('%s', (_, text) => {
    const outcome = withBias(text, BIAS)
    expect(outcome.ok ? '' : outcome.problems[0]?.advice).toBe(
      `Write it yourself, under shop: saw: bias: ${WRITTEN}`,
    )
  })
})
