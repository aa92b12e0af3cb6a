import { expect, it, vi } from 'vitest'
import { partLettering, turnedWords } from '../../src/compose/jig-letters.js'
import { jigWords } from '../../src/compose/jig-words.js'
import { jigOf } from '../../src/compose/jigs.js'
import { levelling, turnedPart } from '../../src/jigs/levelled.js'
import { JIG_NAMES } from '../../src/order/order.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

/** What hands rely on at the saw; the star's name and a part's own may give way where a part is small. */
const NEEDED = /SAW|BLADE|LIFT OUT|CLAMPS|GO|NOMINAL|TIP \d|SIDE|CENTRE|VALLEY/

it.each([75, 40])(
  'a saw that stops at %s°: settings and warnings are on every part they belong to',
  (limit) => {
    let read = 0
    for (const { plan, order, name } of sweptPlans('', limit)) {
      for (const kind of JIG_NAMES) {
        const jig = jigOf(kind, plan, order)
        if (!jig.ok) continue
        const { onParts } = jigWords(jig.value, plan, order)
        for (const part of jig.value.parts) {
          const by = levelling(part.outer)
          const lies = turnedPart(part, by)
          const words = (onParts[part.word] ?? []).map((line) => turnedWords(line, by))
          const strokes = words.map((_, index) => partLettering(lies, words.slice(0, index + 1)).length)
          words.forEach(({ text }, index) => {
            if (!NEEDED.test(text)) return
            expect(strokes[index], `${name}: ${part.name}, ${text}`).toBeGreaterThan(strokes[index - 1] ?? 0)
            read += 1
          })
        }
      }
    }
    expect(read).toBeGreaterThan(1000)
  },
)
