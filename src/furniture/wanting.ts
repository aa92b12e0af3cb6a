import type { ArtMark, ArtText, Artwork } from '../drawing/artwork.js'
import type { Point } from '../geometry/point.js'
import type { Problem } from '../order/problem.js'
import { inches, mm } from '../units/convert.js'
import { showAtLeast } from '../units/show.js'
import { FURNITURE, type FurnitureName } from './furniture-names.js'
import { roomFor, type SlotValues, slotsIn } from './slots.js'

type Wanting = Omit<Problem, 'place'>

/**
 * What a piece lacks that a page cannot do without: sheets that cannot be told apart, or that do not say how large they
 * are, are not to be trusted.
 */
export const wantingIn = (name: FurnitureName, { marks }: Artwork): Wanting[] => {
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []))
  const ruler = RULERS[name]
  return [
    ...missingSlots(name, texts),
    ...texts.flatMap(tooNarrow),
    ...(ruler === undefined || hasRuler(marks, ruler.length)
      ? []
      : [
          {
            given: 'a drawing without a ruler',
            advice: `Draw two upright strokes ${ruler.words} apart, to lay a steel rule on.`,
          },
        ]),
  ]
}

const inBraces = (slots: readonly string[]): string => slots.map((slot) => `{${slot}}`).join(', ')

const missingSlots = (name: FurnitureName, texts: readonly ArtText[]): Wanting[] => {
  const { needed } = FURNITURE[name]
  const lettered = texts.flatMap(({ text }) => slotsIn(text))
  const missing = needed.filter((slot) => !lettered.includes(slot))
  return missing.length === 0
    ? []
    : [
        {
          given: `a drawing without ${inBraces(missing)}`,
          advice: `Letter ${inBraces(needed)} in it, each in a text element with its data-room.`,
        },
      ]
}

/** The longest values of what may not be cut short. A title may. */
const WHOLE: SlotValues = { sheet: '24W', sheets: '9999', scale: '1:1', frame: 'Frame 2000.0 × 5000.0 mm' }

const tooNarrow = (mark: ArtText): Wanting[] => {
  if (mark.room === undefined || !slotsIn(mark.text).some((slot) => Object.hasOwn(WHOLE, slot))) return []
  const needed = roomFor(mark, WHOLE)
  return needed <= mark.room
    ? []
    : [
        {
          given: `"${mark.text}" with data-room="${mark.room}"`,
          advice: `It needs ${showAtLeast(needed, { units: 'mm', nearest: 1 })} at least, or fewer words of its own: it must never be cut short.`,
        },
      ]
}

/** What each scale check carries at least. */
const RULERS: Readonly<Partial<Record<FurnitureName, { readonly length: number; readonly words: string }>>> =
  {
    'scale-check-mm': { length: mm(100), words: '100 mm' },
    'scale-check-in': { length: inches(4), words: '4 in (101.6 mm)' },
  }

/** A stroke of a ruler, as printed, may be this far off: less than a line is wide. */
const LINE = 0.05
/** A stroke a rule can be laid to. */
const SHORTEST = 1

const hasRuler = (marks: readonly ArtMark[], length: number): boolean => {
  const strokes = marks.flatMap(uprightStrokes)
  return strokes.some((from) => strokes.some((to) => Math.abs(to - from - length) <= LINE))
}

/** Where along the level the upright strokes of a mark stand, steps apart. */
const uprightStrokes = (mark: ArtMark): number[] => {
  if (mark.kind === 'text') return []
  let [began, last]: (Point | undefined)[] = []
  return mark.steps.flatMap((step) => {
    const at = step.to === 'start' ? began : step.at
    const from = step.to === 'move' || step.to === 'curve' ? undefined : last
    if (step.to === 'move') began = at
    last = at
    return at && from && Math.abs(at.x - from.x) < LINE && Math.abs(at.y - from.y) >= SHORTEST ? [at.x] : []
  })
}
