import { useState } from 'preact/hooks'
import { FEWEST_POINTS, MOST_POINTS, type SizeName, type Star } from '../geometry/star.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { degrees, MM_PER_INCH } from '../units/convert.js'
import { type LengthStyle, showAngle, showLength, showNumber } from '../units/show.js'
import { toStep } from '../units/step.js'
import { type Change, useBench } from './bench.js'
import { TextField } from './field.js'
import { steppedSize } from './pull.js'
import { Select } from './select.js'
import { SHAPES, shapeChanges, tipAngleChanges } from './shape-changes.js'
import { StarView } from './star-view.js'
import { readWall } from './wall.js'
import { toneOf, WOOD_TONES } from './wood-tones.js'

/** What a size is called, and what of the star it is. */
const SIZES: readonly {
  readonly value: SizeName
  readonly words: string
  readonly of: (star: Star) => Mm
}[] = [
  { value: 'board-width', words: 'Board width it takes', of: (star) => star.armStrip },
  { value: 'across', words: 'Width across', of: (star) => star.across },
  { value: 'height', words: 'Height', of: (star) => star.height },
  { value: 'radius', words: 'Centre to tip', of: (star) => star.radius },
  { value: 'tip-edge', words: 'Tip edge', of: (star) => star.tipEdge },
]

const BACKINGS = [
  { value: 'none', words: 'none' },
  { value: 'star', words: 'star, inset' },
  { value: 'polygon', words: 'polygon through the valleys' },
  { value: 'disc', words: 'disc' },
]

/** The species of the order; until it has one, paper. */
const AS_ORDERED = 'as ordered'
const TONE_CHOICES = [AS_ORDERED, ...WOOD_TONES.map(({ name }) => name)].map((name) => ({
  value: name,
  words: name,
}))

/** What a pull moves a size by. */
const pullStep = ({ units }: LengthStyle): number => (units === 'mm' ? 1 : MM_PER_INCH / 16)

/** A length as it is typed in the order's units. */
const typed = (length: Mm, lengths: LengthStyle): string => showNumber(length, lengths).replace(/\.0$/, '')

/** The star itself: drawn, pulled, named, given its shape and size. */
export const StarPart = ({
  star: plan,
  wall,
  onWall,
}: {
  readonly star: StarPlan
  readonly wall: string
  readonly onWall: (wall: string) => void
}) => {
  const { change, changeOn, document, starIndex, plan: whole } = useBench()
  const [toneName, setToneName] = useState(AS_ORDERED)
  const { lengths, shop } = whole.order
  const { star } = plan
  const at = (key: string) => ['stars', starIndex, key] as const
  const written = SIZES.find(({ value }) => document.hasIn(at(value)))
  const size = written ?? SIZES.find(({ value }) => value === plan.order.size.by)
  const tone = toneOf(toneName === AS_ORDERED ? plan.wood.name : toneName)
  if (!size || !tone) return null
  const shape = document.hasIn(at('regular'))
    ? 'regular'
    : document.hasIn(at('slenderest'))
      ? 'slenderest'
      : 'tip-angle'
  const step = pullStep(lengths)
  const sized = (length: number): Change => [
    at(size.value),
    typed(steppedSize(length, step), { ...lengths, nearest: 16 }),
  ]
  const apply = (on: boolean, changes: readonly Change[]): void => (on ? changeOn : change)(...changes)
  const chooseSize = (chosen: SizeName): void => {
    const next = SIZES.find(({ value }) => value === chosen)
    if (next) change([at(size.value), undefined], [at(chosen), typed(next.of(star), lengths)])
  }
  const chooseBacking = (chosen: string): void => {
    if (chosen === 'none') change([at('backing'), undefined])
    else if (plan.backing) change([[...at('backing'), 'shape'], chosen])
    else change([at('backing'), { shape: chosen, inset: lengths.units === 'mm' ? 10 : '3/8' }])
  }
  const shownWall = readWall(wall, lengths)
  return (
    <section aria-labelledby="star-heading" class="part">
      <h2 id="star-heading">The star</h2>
      <StarView
        plan={plan}
        lengths={lengths}
        tone={tone}
        {...(shownWall ? { wall: shownWall } : {})}
        onSize={(factor, on) => apply(on, [sized(size.of(star) * factor)])}
        onSizeStep={(steps) => change(sized(toStep(size.of(star), step, Math.round) + steps * step))}
        onTipAngle={(tipAngle, on) => apply(on, tipAngleChanges(starIndex, star, tipAngle, shop.saw.readsTo))}
        onTipAngleStep={(steps) =>
          change(
            ...tipAngleChanges(
              starIndex,
              star,
              degrees(star.tipAngle + steps * shop.saw.readsTo),
              shop.saw.readsTo,
            ),
          )
        }
      />
      <p class="live" aria-live="polite">
        {showLength(star.across, lengths)} across, {showLength(star.height, lengths)} high, tip{' '}
        {showAngle(star.tipAngle)}; arms {showLength(star.radius, lengths)} long, boards{' '}
        {showLength(star.armStrip, lengths)} wide.
      </p>
      <p class="hint">
        Pull the tip for the size, the valley for slimmer or fatter. The thick line is what this saw cuts
        without a wedge
        {plan.tipAngles &&
          `: tips from ${showAngle(plan.tipAngles.least)} to ${showAngle(plan.tipAngles.most)}`}
        .
      </p>
      <div class="fields">
        <TextField place={at('name')} label="Name" words />
        <TextField place={at('quantity')} label="How many" />
        <Select
          id="shape"
          label="Shape"
          value={shape}
          choices={SHAPES}
          onChoose={(chosen) => change(...shapeChanges(starIndex, star, chosen, shop.saw.readsTo))}
        />
        {shape === 'regular' ? (
          <TextField place={at('regular')} label="Points / step" hint="such as 5/2 or 8/3" />
        ) : (
          <TextField place={at('points')} label="Points" hint={`${FEWEST_POINTS} to ${MOST_POINTS}`} />
        )}
        {shape === 'tip-angle' && <TextField place={at('tip-angle')} label="Tip angle, degrees" />}
        <Select id="size" label="Size by" value={size.value} choices={SIZES} onChoose={chooseSize} />
        <TextField place={at(size.value)} label={size.words} />
        <TextField place={at('thickness')} label="Thickness of the arms" />
        <TextField place={at('chamfer')} label="Chamfer" hint="empty: none" />
        <TextField place={at('note')} label="A line of your own" hint="lettered on the patterns" words />
        <Select
          id="backing"
          label="Backing"
          value={plan.backing?.shape ?? 'none'}
          choices={BACKINGS}
          onChoose={chooseBacking}
        />
        {plan.backing && <TextField place={[...at('backing'), 'inset']} label="Backing stays inside by" />}
        <div class="field">
          <label for="wall">Wall or door behind it</label>
          <input
            id="wall"
            type="text"
            value={wall}
            placeholder="width × height"
            aria-describedby="wall-hint"
            onChange={(event) => onWall(event.currentTarget.value)}
          />
          <p class="hint" id="wall-hint">
            {wall !== '' && !shownWall ? 'Write two lengths, such as 900 × 2000.' : 'only to look at'}
          </p>
        </div>
        <Select
          id="tone"
          label="Wood, to look at"
          value={toneName}
          choices={TONE_CHOICES}
          onChoose={setToneName}
        />
      </div>
    </section>
  )
}
