import { AirFields } from './air-fields.js'
import { useBench } from './bench.js'
import { FieldsOf, MoreFields } from './more-fields.js'
import { Part } from './part.js'
import { TableOf } from './table.js'
import { ownWoodFields, speciesFields } from './wood-fields.js'
import { WordsOf } from './words.js'
import type { LaidStar } from './work.js'
import { WorkedOut } from './worked-out.js'

const WOOD = ['shop', 'wood']

/** The wood, the air where it is cut and where it hangs, and what becomes of the star between them. */
export const SeasonPart = ({ laid }: { readonly laid: LaidStar | undefined }) => {
  const { document } = useBench()
  return (
    <Part name="season">
      <div class="fields">
        <FieldsOf fields={speciesFields(document, WOOD, { species: 'not told' })} />
      </div>
      <MoreFields name="A wood of your own" fields={ownWoodFields(WOOD)} />
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
    </Part>
  )
}
