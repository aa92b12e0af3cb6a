import { describe, expect, it } from 'vitest'
import { panelPages } from '../../src/compose/panel-sheet.js'
import { labelBox } from '../../src/drawing/bounds.js'
import { boxIsClear } from '../../src/drawing/place-label.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { planOf } from '../orders.js'

/* ISO 129-1: lettering is not crossed by lines; ISO 3098: none lower than 1.8 mm. */

const CHAPEL =
  '{ name: Chapel, quantity: 3, points: 8, tip-angle: 50, across: 300, backing: { shape: disc } }'
const BOATHOUSE =
  '{ name: Boathouse, quantity: 6, points: 5, tip-angle: 45, across: 280, backing: { hanging: { kind: keyhole } } }'
const BELL = '{ name: Bell, quantity: 4, points: 6, tip-angle: 60, across: 90, backing: { inset: 5 } }'
const BUTTON = '{ name: Button, quantity: 2, points: 6, tip-angle: 60, across: 40, backing: { inset: 4 } }'

const pages = (stars: readonly string[]) =>
  panelPages(
    planPanels(planOf(`shop: { panels: [{ length: 1220, width: 610 }] }\nstars: [${stars.join(', ')}]`)),
  )

describe('the picture of a panel', () => {
  const [page] = pages([BOATHOUSE, CHAPEL, BELL, BUTTON])
  const labels = page?.shapes.filter((shape) => shape.kind === 'label') ?? []
  const letters = labels.filter(({ text }) => /^[a-z]$/.test(text))

  it("letters each star's plates, as its words say, and says which are too small", () => {
    const count = (letter: string): number => letters.filter(({ text }) => text === letter).length
    expect([count('a'), count('b'), count('c'), count('d')]).toEqual([6, 3, 4, 0])
    const words = labels.map(({ text }) => text.replaceAll('\u00a0', ' ')).join(' ')
    expect(words).toContain(
      'a: 6 × Boathouse, b: 3 × Chapel, c: 4 × Bell, 2 × Button (too small for a letter)',
    )
  })

  it('has every letter readable and clear of lines', () => {
    for (const letter of letters) {
      expect(letter.height).toBeGreaterThanOrEqual(1.8)
      const others = (page?.shapes ?? []).filter((shape) => shape !== letter)
      expect(boxIsClear(labelBox(letter), others, 0.2)).toBe(true)
    }
  })

  it('needs no letters for one star', () => {
    const [alone] = pages([CHAPEL])
    const texts = alone?.shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : [])) ?? []
    expect(texts.filter((text) => /^[a-z]$/.test(text))).toEqual([])
    expect(texts.join(' ')).toContain('3 × Chapel;')
  })
})
