import { DEFAULTS } from '../order/defaults.js'
import type { OrderPlace, OrderValue } from '../order/edit-text.js'
import { asGroup } from '../order/group.js'
import { celsius } from '../units/convert.js'
import type { Units } from '../units/read-length.js'
import { showTemperature } from '../units/show-measure.js'
import { useBench } from './bench.js'
import { FieldsOf, type FieldWords, MoreFields } from './more-fields.js'
import { Select } from './select.js'

const SEASONS = ['winter', 'summer'] as const

const WALLS = [
  { value: 'shared', words: 'where all stars of the order hang' },
  { value: 'own', words: 'in a place of its own' },
]

/** The air of the workshop and where the stars hang, or what a moisture meter shows in the wood there. */
export const AirFields = () => {
  const { document, starIndex, plan, change } = useBench()
  const { units } = plan.order.lengths
  const ownWall: OrderPlace = ['stars', starIndex, 'wall']
  const isOwn = document.hasIn(ownWall)
  const [wall, where] = isOwn ? [ownWall, 'Where this star hangs'] : [['climate', 'wall'], 'Where they hang']
  const places = [
    { place: ['climate', 'workshop'], name: 'Workshop', usual: DEFAULTS.air.workshop },
    ...SEASONS.map((season) => ({
      place: [...wall, season],
      name: `${where}, ${season}`,
      usual: DEFAULTS.air[season],
    })),
  ]
  const fields = places.flatMap(({ place, name, usual }): FieldWords[] =>
    document.hasIn([...place, 'moisture'])
      ? []
      : [
          {
            place: [...place, 'humidity'],
            label: `${name}: humidity, %`,
            hint: `empty: ${usual.humidity}`,
            also: [place],
          },
          {
            place: [...place, 'temperature'],
            label: `${name}: temperature`,
            hint: `empty: ${showTemperature(celsius(usual.temperature), units)}`,
          },
        ],
  )
  const metered = places.map(
    ({ place, name }): FieldWords => ({
      place: [...place, 'moisture'],
      label: `${name}: moisture of the wood, %`,
      instead: [
        [...place, 'humidity'],
        [...place, 'temperature'],
      ],
      ...(document.hasIn([...place, 'moisture']) ? { also: [place] } : {}),
    }),
  )
  /** Begins as the wall of the order. */
  const chooseWall = (chosen: string): void =>
    change([ownWall, chosen === 'own' ? wallOf(document.toJS(), units) : undefined])
  return (
    <>
      <div class="fields">
        <FieldsOf fields={fields} />
      </div>
      <MoreFields name="A moisture meter, a place of its own" fields={metered}>
        <Select
          id="own-wall"
          label="This star hangs"
          value={isOwn ? 'own' : 'shared'}
          choices={WALLS}
          onChoose={chooseWall}
        />
      </MoreFields>
    </>
  )
}

/** What an order says of its wall, what it leaves open filled in. */
const wallOf = (order: unknown, units: Units): OrderValue => {
  const written = asGroup(asGroup(asGroup(order)?.climate)?.wall)
  return Object.fromEntries(
    SEASONS.map((season) => {
      const { humidity, temperature } = DEFAULTS.air[season]
      const usual = { humidity, temperature: showTemperature(celsius(temperature), units) }
      return [season, (asGroup(written?.[season]) as OrderValue | undefined) ?? usual]
    }),
  )
}
