import { plateAs } from '../compose/thickness-words.js'
import { DEFAULTS } from '../order/defaults.js'
import type { OrderPlace } from '../order/edit-text.js'
import { FASTENER_NAMES, HANGING_NAMES } from '../order/order.js'
import { USUAL_HOLES } from '../order/to-plate.js'
import type { StarPlan } from '../plan/plan.js'
import { useBench } from './bench.js'
import { ifEmpty } from './field.js'
import { KindField } from './kind-field.js'
import { FieldsOf, type FieldWords, MoreFields } from './more-fields.js'

const SHAPES = [
  { value: 'none', words: 'none' },
  { value: 'star', words: 'star, inset' },
  { value: 'polygon', words: 'polygon through the valleys' },
  { value: 'disc', words: 'disc' },
  { value: 'auto', words: 'the smallest that covers the joints' },
]

const HANGINGS = [
  { value: 'none', words: 'no holes' },
  { value: 'cord', words: 'two holes for a cord' },
  { value: 'keyhole', words: 'keyhole over a screw' },
  { value: 'screws', words: 'two holes for a hanger' },
] as const

const FASTENERS = [
  { value: 'none', words: 'glue alone' },
  { value: 'nails', words: 'nails beside the glue' },
  { value: 'screws', words: 'screws beside the glue' },
] as const

/** The plate behind the star: what it covers, how it hangs, what holds it. */
export const BackingFields = ({ star }: { readonly star: StarPlan }) => {
  const { backing } = star
  const { change, document, starIndex, plan } = useBench()
  const { lengths } = plan.order
  const at = (...keys: readonly string[]): OrderPlace => ['stars', starIndex, 'backing', ...keys]
  const kindAt = <Kind extends string>(key: string, kinds: readonly Kind[]): Kind | 'none' => {
    const written = document.getIn(at(key, 'kind'))
    return kinds.find((kind) => kind === written) ?? 'none'
  }
  const hanging = kindAt('hanging', HANGING_NAMES)
  const fixing = kindAt('fixing', FASTENER_NAMES)
  const shape = document.hasIn(at()) ? String(document.getIn(at('shape')) ?? 'star') : 'none'
  const goesByCovers = shape === 'auto' && document.hasIn(at('covers'))
  const chooseShape = (chosen: string): void => {
    if (chosen === 'none') change([at(), undefined])
    else if (shape === 'none') change([at(), { shape: chosen, inset: lengths.units === 'mm' ? 10 : '3/8' }])
    else
      change(
        [at('shape'), chosen],
        // Only a star has corners to round.
        ...(chosen === 'star' ? [] : [[at('corner-radius'), undefined] as const]),
      )
  }
  /** Its sizes belong to what it was before. */
  const chooseKind = (key: string, kind: string): void =>
    change([at(key), kind === 'none' ? undefined : { kind }])
  const hangingFields: readonly FieldWords[] =
    hanging === 'none'
      ? []
      : [
          {
            place: at('hanging', 'hole'),
            label: hanging === 'keyhole' ? 'Round end of the keyhole' : 'Hole, across',
            hint: ifEmpty(USUAL_HOLES[hanging], lengths),
          },
          ...(hanging === 'keyhole'
            ? [
                {
                  place: at('hanging', 'slot'),
                  label: 'Slot of the keyhole',
                  hint: ifEmpty(DEFAULTS.keyholeSlot, lengths),
                },
                {
                  place: at('hanging', 'rise'),
                  label: 'Up to where the screw rests',
                  hint: `from the middle of the round end; ${ifEmpty(DEFAULTS.keyholeRise, lengths)}`,
                },
              ]
            : [
                {
                  place: at('hanging', 'apart'),
                  label: 'From hole to hole',
                  hint: `${ifEmpty(hanging === 'cord' ? DEFAULTS.cordApart : DEFAULTS.hangerApart, lengths)} where there is room`,
                },
              ]),
        ]
  const fixingFields: readonly FieldWords[] =
    fixing === 'none'
      ? []
      : [
          {
            place: at('fixing', 'length'),
            label: `Length of the ${fixing}`,
            hint: 'empty: not known, look yourself',
          },
        ]
  const more: readonly FieldWords[] = [
    {
      place: at('covers'),
      label: 'Covers of each joint',
      hint: 'from the centre; empty: as the inset leaves it',
    },
    ...(shape === 'star'
      ? [{ place: at('corner-radius'), label: 'Corners rounded by', hint: 'empty: sharp' }]
      : []),
    ...(hanging === 'none'
      ? []
      : [
          {
            place: at('hanging', 'wall'),
            label: 'Plate left around a hole',
            hint: ifEmpty(DEFAULTS.wall, lengths),
          },
        ]),
    ...(fixing === 'none'
      ? []
      : [
          {
            place: at('fixing', 'clear'),
            label: `Wood left around the ${fixing}`,
            hint: ifEmpty(DEFAULTS.fixingClear, lengths),
          },
        ]),
  ]
  return (
    <>
      <div class="fields">
        <KindField
          place={at()}
          also={[at('shape')]}
          label="Backing"
          value={shape}
          choices={SHAPES}
          onChoose={chooseShape}
        />
        {shape !== 'none' && (
          <>
            <FieldsOf
              fields={[
                {
                  place: at('inset'),
                  label: 'Backing stays inside by',
                  hint: `${goesByCovers ? 'limits what it covers; ' : ''}${ifEmpty(DEFAULTS.inset, lengths)}`,
                },
                {
                  place: at('thickness'),
                  label: 'Thickness of the backing',
                  hint: `empty: ${plateAs(star, plan.order) ?? 'that of the first panel that holds it'}`,
                },
              ]}
            />
            <KindField
              place={at('hanging')}
              also={[at('hanging', 'kind')]}
              label="It hangs by"
              value={hanging}
              choices={HANGINGS}
              onChoose={(kind) => chooseKind('hanging', kind)}
            />
            <FieldsOf fields={hangingFields} />
            <KindField
              place={at('fixing')}
              also={[at('fixing', 'kind')]}
              label="The backing is held by"
              value={fixing}
              choices={FASTENERS}
              onChoose={(kind) => chooseKind('fixing', kind)}
            />
            <FieldsOf fields={fixingFields} />
          </>
        )}
      </div>
      {backing && <MoreFields name="More about the backing" fields={more} />}
    </>
  )
}
