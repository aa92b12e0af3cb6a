import { DEFAULTS } from '../order/defaults.js'
import type { OrderPlace } from '../order/edit-text.js'
import type { Cutter } from '../order/order.js'
import { useBench } from './bench.js'
import { ifEmpty } from './field.js'
import { KindField } from './kind-field.js'
import { FieldsOf, type FieldWords, MoreFields } from './more-fields.js'

const CUTTERS: readonly { readonly value: Cutter['kind']; readonly words: string }[] = [
  { value: 'hand', words: 'hand saw' },
  { value: 'laser', words: 'laser' },
  { value: 'router', words: 'router' },
]

const DXF = [
  { value: 'r12', words: 'R12, for old importers' },
  { value: 'r2000', words: 'R2000' },
]

const at = (...keys: readonly string[]): OrderPlace => ['shop', 'cutter', ...keys]

/** What cuts backings and jigs, what it takes away and how large a sheet it takes. */
export const CutterFields = () => {
  const { document, change, plan } = useBench()
  const { lengths } = plan.order
  const written = document.getIn(at('kind'))
  const kind = CUTTERS.find(({ value }) => value === written)?.value ?? DEFAULTS.cutter
  const removed: Readonly<Record<Cutter['kind'], readonly FieldWords[]>> = {
    hand: [],
    laser: [{ place: at('kerf'), label: 'Width of the beam', hint: ifEmpty(DEFAULTS.laserKerf, lengths) }],
    router: [
      { place: at('bit'), label: 'Bit, across', hint: ifEmpty(DEFAULTS.bit, lengths) },
      { place: at('tabs'), label: 'Holding tabs on each plate', hint: 'empty: none' },
      ...(['tabs', 'tab'].some((key) => document.hasIn(at(key)))
        ? [{ place: at('tab'), label: 'Length of a tab', hint: ifEmpty(DEFAULTS.tab, lengths) }]
        : []),
    ],
  }
  const bed: readonly FieldWords[] = [
    { place: at('bed', 'width'), label: 'Bed, across', hint: 'empty: takes any size' },
    { place: at('bed', 'length'), label: 'Bed, along' },
    { place: at('dxf'), label: 'DXF files', choices: DXF },
  ]
  return (
    <>
      <div class="fields">
        <KindField
          place={at('kind')}
          also={[at()]}
          label="Backing and jigs are cut by"
          value={kind}
          choices={CUTTERS}
          onChoose={(chosen) =>
            // What one cutter takes away says nothing of another.
            change(...['kerf', 'bit', 'tabs', 'tab'].map((key) => [at(key), undefined] as const), [
              at('kind'),
              chosen,
            ])
          }
        />
        <FieldsOf fields={removed[kind]} />
      </div>
      <MoreFields name="Bed and files of the cutter" fields={bed} />
    </>
  )
}
