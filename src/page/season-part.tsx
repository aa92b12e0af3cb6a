import { SPECIES } from '../tables/species.js'
import { AirFields } from './air-fields.js'
import { useBench } from './bench.js'
import { ChoiceField } from './field.js'
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

/** The wood, the air where it is cut and where it hangs, and what becomes of the star between them. */
export const SeasonPart = ({ laid }: { readonly laid: LaidStar | undefined }) => {
  const { document } = useBench()
  const own = ['tangential', 'radial'].some((key) => document.hasIn(['shop', 'wood', key]))
  return (
    <section aria-labelledby="season-heading" class="part">
      <h2 id="season-heading">The wood, summer and winter</h2>
      <div class="fields">
        {!own && (
          <ChoiceField place={['shop', 'wood', 'species']} label="Species" choices={SPECIES_CHOICES} />
        )}
        <ChoiceField place={['shop', 'wood', 'rings']} label="The rings in the board's end" choices={RINGS} />
      </div>
      <AirFields />
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
