import { SET_TEXTS } from '../compose/chance-words.js'
import { SAW_SETS, type SawSet } from '../fit/closure-law.js'
import { DEFAULTS } from '../order/defaults.js'
import { showAngle, showSmall } from '../units/show.js'
import { AskedFile, KINDS } from './asked-file.js'
import { useBench } from './bench.js'
import { DrawnSvg } from './drawn.js'
import { TextField } from './field.js'
import { Part } from './part.js'
import { Select } from './select.js'
import { TableOf } from './table.js'
import { WordsOf } from './words.js'
import type { Given, LaidStar } from './work.js'
import { WorkedOut } from './worked-out.js'

/** How likely the stars close, before any is cut. */
export const ChancePart = ({
  laid,
  given,
  set,
  onSet,
}: {
  readonly laid: LaidStar | undefined
  /** The order that is shown. */
  readonly given: Given
  readonly set: SawSet
  readonly onSet: (set: SawSet) => void
}) => {
  const { plan, save } = useBench()
  const chances = laid?.chances[set]
  const { lengths } = plan.order
  return (
    <Part name="chance">
      <div class="fields">
        <Select
          id="saw-set"
          label="How the saw is set"
          value={set}
          choices={SAW_SETS.map((value) => ({ value, words: SET_TEXTS[value] }))}
          onChoose={onSet}
        />
        <TextField
          place={['shop', 'accepted-gap']}
          label="A gap that is still accepted"
          hint={`at the last joint; empty: ${showSmall(DEFAULTS.acceptedGap, lengths)}`}
        />
        <TextField
          place={['shop', 'saw', 'repeats-to']}
          label="A cut repeats to, degrees"
          hint={`one standard deviation, measured on your saw; empty: ${showAngle(DEFAULTS.repeatsTo)}`}
        />
        <TextField
          place={['shop', 'stop', 'repeats-to']}
          label="A piece at the stop repeats to"
          hint={`one standard deviation; empty: ${showSmall(DEFAULTS.stopRepeatsTo, lengths)}`}
        />
        <TextField
          place={['shop', 'saw', 'true-to']}
          label="The scale is true to, degrees"
          hint={`until a dry fit has taught it; empty: ${showAngle(DEFAULTS.trueTo)}`}
        />
      </div>
      <WorkedOut what="Chance that the last joint closes">
        {laid && chances && (
          <>
            <TableOf caption={`${laid.name}: chance that the last joint closes`} rows={chances.table} />
            <DrawnSvg title={`${laid.name}: how the gaps spread`} svg={chances.gaps} />
            <p class="files">
              {KINDS.map((kind) => (
                <AskedFile
                  key={kind}
                  kind={kind}
                  of="how the gaps spread"
                  disabled={!save}
                  asked={{ ask: 'gaps-file', given, star: laid.name, set, kind }}
                />
              ))}
            </p>
            <WordsOf words={chances.words} />
          </>
        )}
      </WorkedOut>
    </Part>
  )
}
