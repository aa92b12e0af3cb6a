import { SPECIES } from '../tables/species.js'
import { useBench } from './bench.js'
import { ChoiceField, TextField } from './field.js'
import { TableOf } from './table.js'
import { WordsOf } from './words.js'
import type { LaidStar } from './work.js'
import { WorkedOut } from './worked-out.js'

const SPECIES_CHOICES = [
  { value: '', words: 'not told' },
  ...SPECIES.map(({ name }) => ({ value: name, words: name })),
]

const RINGS = [
  { value: 'flat', words: "lie along the board's width" },
  { value: 'quarter', words: 'stand upright' },
]

const SEASONS = ['winter', 'summer']

/** The wood, the air where it is cut and where it hangs, and what becomes of the star between them. */
export const SeasonPart = ({ laid }: { readonly laid: LaidStar | undefined }) => {
  const { document, starIndex } = useBench()
  const ownWall = ['stars', starIndex, 'wall']
  const [wall, where] = document.hasIn(ownWall)
    ? [ownWall, "This star's wall"]
    : [['climate', 'wall'], 'Wall']
  const places = [
    { place: ['climate', 'workshop'], name: 'Workshop' },
    ...SEASONS.map((season) => ({ place: [...wall, season], name: `${where} in ${season}` })),
  ]
  const own = ['tangential', 'radial'].some((key) => document.hasIn(['shop', 'wood', key]))
  return (
    <section aria-labelledby="season-heading" class="part">
      <h2 id="season-heading">The wood, summer and winter</h2>
      <div class="fields">
        {!own && (
          <ChoiceField place={['shop', 'wood', 'species']} label="Species" choices={SPECIES_CHOICES} />
        )}
        <ChoiceField place={['shop', 'wood', 'rings']} label="The rings in the board's end" choices={RINGS} />
        {places.flatMap(({ place, name }) => [
          <TextField key={name} place={[...place, 'humidity']} label={`${name}: humidity, %`} />,
          <TextField key={`${name} °`} place={[...place, 'temperature']} label={`${name}: temperature`} />,
        ])}
      </div>
      <WorkedOut what="How the wood moves">
        {laid && (
          <>
            <p>{laid.wood}</p>
            <TableOf caption={`${laid.name}: how the wood moves`} rows={laid.seasons} />
            <WordsOf words={laid.movement} />
            <ul>
              {laid.advice.map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </>
        )}
      </WorkedOut>
    </section>
  )
}
