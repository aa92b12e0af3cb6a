import { armsAs } from '../compose/thickness-words.js'
import { FEWEST_POINTS, MOST_POINTS, type SizeName } from '../geometry/star.js'
import { DEFAULTS } from '../order/defaults.js'
import { countAt, type OrderDocument, type OrderPlace, writtenAt } from '../order/edit-text.js'
import { SIZE_KEYS } from '../order/flags.js'
import { problemsOf } from '../order/problem.js'
import { fileNameOf } from '../order/star-name.js'
import type { Plan, StarPlan } from '../plan/plan.js'
import type { WarningCode } from '../plan/warnings.js'
import type { Mm } from '../units/brand.js'
import { type LengthStyle, showAngle, showAtMost, showLength } from '../units/show.js'
import { BackingFields } from './backing-fields.js'
import { useBench } from './bench.js'
import { LabelledField, TextField } from './field.js'
import { Part } from './part.js'
import { Select } from './select.js'
import { SHAPES, shapeChanges } from './shape-changes.js'
import { largestRadius, STAR_SIZES, starSize, typedLength } from './star-sizes.js'
import { StarView } from './star-view.js'
import { TypedInput } from './typed-input.js'
import { usePulls } from './use-pulls.js'
import { readWall } from './wall.js'
import { WallView } from './wall-view.js'
import { Warnings } from './warnings.js'
import { toneOf, WOOD_TONES } from './wood-tones.js'

/** The species of the order; until it has one, paper. */
const TONE_CHOICES = [
  { value: '', words: 'as ordered' },
  ...WOOD_TONES.map(({ name }) => ({ value: name, words: name })),
]

/** Warnings of a star that is pulled too far for the saw. */
const BEYOND_SAW: readonly WarningCode[] = ['saw-limit', 'crosscut']

/** The star itself: drawn, pulled, named, given its shape and size. */
export const StarPart = ({
  star: plan,
  tone: toneName,
  onTone,
  wall,
  onWall,
}: {
  readonly star: StarPlan
  /** Name of the wood it is tinted as; empty as ordered. */
  readonly tone: string
  readonly onTone: (tone: string) => void
  readonly wall: string
  readonly onWall: (wall: string) => void
}) => {
  const { job, change, document, starIndex, plan: whole } = useBench()
  const { lengths, shop } = whole.order
  const { star } = plan
  const at = (key: string) => ['stars', starIndex, key] as const
  const size = STAR_SIZES.find(({ value }) => document.hasIn(at(value))) ?? starSize(plan.order.size.by)
  const pulls = usePulls(plan, size)
  const tone = toneOf(toneName === '' ? plan.wood.name : toneName)
  if (!tone) return null
  const shape = document.hasIn(at('regular'))
    ? 'regular'
    : document.hasIn(at('slenderest'))
      ? 'slenderest'
      : 'tip-angle'
  const chooseSize = (chosen: SizeName): void => {
    change([at(size.value), undefined], [at(chosen), typedLength(starSize(chosen).of(star), lengths)])
  }
  const hung = readWall(wall, lengths)
  const thickness = armsAs(plan, whole.order)
  return (
    <Part name="star">
      <StarView plan={plan} lengths={lengths} tone={tone} pulls={pulls} held={!job.plan} />
      {whole.stars.length > 1 && <p class="printed">{printedTold(whole, starIndex)}</p>}
      <p class="live" aria-live="polite">
        {plan.order.name}, {plan.order.quantity === 1 ? 'one star' : `${plan.order.quantity} stars`}:{' '}
        {showLength(star.across, lengths)} across, {showLength(star.height, lengths)} high, tip{' '}
        {showAngle(star.tipAngle)}; arms {showLength(star.radius, lengths)} long, boards{' '}
        {showLength(star.armStrip, lengths)} wide.
      </p>
      <Warnings of={plan.warnings.filter(({ code }) => BEYOND_SAW.includes(code))} />
      <p class="hint">
        {job.plan
          ? 'Pull the tip for the size, the valley for slimmer or fatter.'
          : 'Once the mistakes are mended, the star can be pulled again, and given another shape or measure: both go by its figures.'}{' '}
        {rangeTold(plan, largestRadius(plan, shop.saw), lengths)}
      </p>
      <div class="fields">
        <TextField place={at('name')} label="Name" words also={namesakes(document, starIndex)} />
        <TextField place={at('quantity')} label="How many" hint={`empty: ${DEFAULTS.quantity}`} />
        <Select
          id="shape"
          label="Shape"
          value={shape}
          choices={SHAPES}
          held={!job.plan}
          onChoose={(chosen) => change(...shapeChanges(starIndex, star, chosen, shop.saw.readsTo))}
        />
        {shape === 'regular' ? (
          <TextField place={at('regular')} label="Points / step" hint="such as 5/2 or 8/3" />
        ) : (
          <TextField place={at('points')} label="Points" hint={`${FEWEST_POINTS} to ${MOST_POINTS}`} />
        )}
        {shape === 'tip-angle' && <TextField place={at('tip-angle')} label="Tip angle, degrees" />}
        <Select
          id="size"
          label="Size by"
          value={size.value}
          choices={STAR_SIZES}
          held={!job.plan}
          onChoose={chooseSize}
        />
        <TextField place={at(size.value)} label={size.words} also={[at(SIZE_KEYS[0])]} />
        <TextField
          place={at('thickness')}
          label="Thickness of the arms"
          hint={thickness === undefined ? '' : `empty: ${thickness}`}
        />
        <TextField place={at('chamfer')} label="Chamfer" hint="empty: none" />
        <TextField place={at('note')} label="A line of your own" hint="lettered on the patterns" words />
        <TextField
          place={at('hardware')}
          label="Price of hanger, glue and finish"
          hint="for one star; part of what it costs"
        />
        <LabelledField
          id="wall"
          label="Wall or door behind it"
          hint="for the picture: width × height, or width × eaves × ridge of a gable"
          problems={problemsOf(hung)}
        >
          {(described) => <TypedInput {...described} text={wall} onTake={onWall} />}
        </LabelledField>
        <Select
          id="tone"
          label="Wood, to look at"
          value={toneName}
          choices={TONE_CHOICES}
          onChoose={onTone}
        />
      </div>
      <BackingFields star={plan} />
      {hung.ok && hung.value && <WallView star={star} wall={hung.value} lengths={lengths} tone={tone} />}
    </Part>
  )
}

/** What the thick lines on the drawing mean. */
const rangeTold = ({ tipAngles }: StarPlan, largest: Mm | undefined, lengths: LengthStyle): string => {
  const tips = tipAngles
    ? `The thick lines are what this saw cuts without a wedge: tips from ${showAngle(tipAngles.least)} to ${showAngle(tipAngles.most)}`
    : 'This saw cuts no star of so many points without a wedge'
  return largest === undefined
    ? `${tips}.`
    : `${tips}; of this shape, up to ${showAtMost(largest, lengths)} from centre to tip.`
}

/** On paper there are no buttons to choose another star by. */
const printedTold = ({ stars }: Plan, shown: number): string => {
  const others = stars.flatMap(({ order: { name } }, index) => (index === shown ? [] : [name]))
  return `This print shows ${stars[shown]?.order.name ?? 'a star'}, star ${shown + 1} of ${stars.length}. Choose another on the page to print it: ${others.join(', ')}.`
}

/** The mistake of two equal names stands at the later one; it is told at this one too. */
const namesakes = (document: OrderDocument, starIndex: number): readonly OrderPlace[] => {
  const nameAt = (index: number): string =>
    fileNameOf(writtenAt(document, ['stars', index, 'name']) ?? '', index)
  const own = nameAt(starIndex)
  return Array.from({ length: countAt(document, ['stars']) }, (_, index) => index)
    .filter((index) => index > starIndex && own !== '' && nameAt(index) === own)
    .map((index) => ['stars', index, 'name'])
}
