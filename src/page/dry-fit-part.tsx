import { useMemo } from 'preact/hooks'
import { SAW_CAUTION } from '../compose/cautions.js'
import { dryFitDrawing } from '../compose/dry-fit-drawing.js'
import { findings, outcomes, recutSteps } from '../compose/dry-fit-words.js'
import { type DryFit, dryFit } from '../fit/dry-fit.js'
import {
  ANGLE_TOOLS,
  LENGTH_TOOLS,
  readMeasurements,
  type WrittenMeasurements,
} from '../fit/read-measurements.js'
import { readTerms } from '../fit/read-terms.js'
import { type Outcome, problemsOf, refused } from '../order/problem.js'
import { writtenBias } from '../order/save-bias.js'
import type { StarPlan } from '../plan/plan.js'
import { trimmed } from '../units/show.js'
import { writeSvg } from '../write/svg.js'
import type { Measured } from './address.js'
import { useBench } from './bench.js'
import { DrawnSvg } from './drawn.js'
import { LabelledField } from './field.js'
import { Select } from './select.js'
import { TypedInput } from './typed-input.js'
import { saveAs } from './use-worker.js'
import { WordsOf } from './words.js'

const OPENS = [
  { value: '', words: 'nowhere, or not measured' },
  { value: 'valley', words: 'at the valley, outside' },
  { value: 'centre', words: 'at the centre, inside' },
]

/** What is typed, and the flag of the command line whose words tell what is wrong with it. */
const FIELDS = [
  { key: 'will-not-drop-in-by', label: 'The last arm is too wide by', hint: 'where it will not drop in' },
  { key: 'measured-tip', label: 'Tip angle of an arm' },
  { key: 'measured-side', label: 'Side angle of an arm' },
  { key: 'measured-centre', label: 'Centre angle of an arm' },
  { key: 'measured-tip-edge', label: 'Tip edge of an arm' },
  { key: 'measured-across', label: 'Tip to tip at the widest' },
  { key: 'cut-at', label: 'The saw was set to', hint: 'empty: as planned' },
]

/** Fields that show their own mistakes. */
const SHOWN = new Set(['gap', ...FIELDS.map(({ key }) => key)].map((key) => `--${key}`))

const TOOLS = [
  { key: 'angles-by', label: 'Angles measured with', tools: ANGLE_TOOLS },
  { key: 'lengths-by', label: 'Lengths measured with', tools: LENGTH_TOOLS },
]

const writtenOf = (measured: Measured): WrittenMeasurements => {
  const some = (key: string): readonly string[] => (measured[key] === undefined ? [] : [measured[key]])
  return {
    gap: measured.gap,
    opensAt: measured['opens-at'],
    willNotDropInBy: measured['will-not-drop-in-by'],
    tip: some('measured-tip'),
    side: some('measured-side'),
    centre: some('measured-centre'),
    tipEdge: some('measured-tip-edge'),
    across: some('measured-across'),
    anglesBy: measured['angles-by'],
    lengthsBy: measured['lengths-by'],
  }
}

/** One star laid together without glue: where it gapes, and what to do about it. */
export const DryFitPart = ({
  star,
  measured,
  onMeasured,
}: {
  readonly star: StarPlan
  readonly measured: Measured
  readonly onMeasured: (measured: Measured) => void
}) => {
  const { plan, change } = useBench()
  const { order } = plan
  const told = Object.keys(measured).some((key) => !key.endsWith('-by') || key === 'will-not-drop-in-by')
  const fit = useMemo(() => (told ? fitOf(star, measured, order) : undefined), [star, measured, order, told])
  const problems = fit ? problemsOf(fit) : []
  const type = (key: string, text: string): void => {
    const { [key]: _, ...others } = measured
    onMeasured(text === '' ? others : { ...others, [key]: text })
  }
  const field = (key: string, label: string, hint?: string) => (
    <LabelledField
      key={key}
      id={`fit-${key}`}
      label={label}
      {...(hint === undefined ? {} : { hint })}
      problems={problems.filter(({ place }) => place === `--${key}`)}
    >
      {(described) => (
        <TypedInput {...described} text={measured[key] ?? ''} onTake={(text) => type(key, text)} />
      )}
    </LabelledField>
  )
  return (
    <section aria-labelledby="fit-heading" class="part">
      <h2 id="fit-heading">The dry fit</h2>
      <p>
        Lay one star together without glue, face A up, every joint closed but the last. Measure there, and
        what else you can.
      </p>
      <div class="fields">
        <Select
          id="fit-opens-at"
          label="Where the last joint gapes"
          value={measured['opens-at'] ?? ''}
          choices={OPENS}
          onChoose={(end) => type('opens-at', end)}
        />
        {field('gap', 'How wide it gapes', 'such as 2.8 mm; 0 when it closes')}
        {FIELDS.map(({ key, label, hint }) => field(key, label, hint))}
        {TOOLS.map(({ key, label, tools }) => (
          <Select
            key={key}
            id={`fit-${key}`}
            label={label}
            value={measured[key] ?? ''}
            choices={[
              { value: '', words: 'the usual' },
              ...Object.keys(tools).map((tool) => ({ value: tool, words: tool.replace('-', ' ') })),
            ]}
            onChoose={(tool) => type(key, tool)}
          />
        ))}
      </div>
      {problems
        .filter(({ place }) => !SHOWN.has(place))
        .map(({ advice }) => (
          <p key={advice} class="problem" role="alert">
            {advice}
          </p>
        ))}
      {fit?.ok && (
        <FitTold
          fit={fit.value}
          onBias={({ setting, terms }) => {
            change([
              ['shop', 'saw', 'bias'],
              writtenBias({ miter: setting.learned, uncertainty: setting.uncertainty }),
            ])
            // From now on the plan reads otherwise; this star was cut at what it read before.
            onMeasured({ ...measured, 'cut-at': trimmed(terms.reading, 2) })
          }}
        />
      )}
    </section>
  )
}

const fitOf = (
  star: StarPlan,
  measured: Measured,
  { shop, lengths }: ReturnType<typeof useBench>['plan']['order'],
): Outcome<DryFit> => {
  const read = readMeasurements(writtenOf(measured), star.star, lengths)
  const terms = readTerms({ cutAt: measured['cut-at'] }, star, shop, lengths)
  return read.ok && terms.ok
    ? dryFit(star, shop.saw, read.value, terms.value, lengths)
    : refused([read, terms].flatMap(problemsOf))
}

const FitTold = ({ fit, onBias }: { readonly fit: DryFit; readonly onBias: (fit: DryFit) => void }) => {
  const { order } = useBench().plan
  const drawing = useMemo(() => dryFitDrawing(fit, order), [fit, order])
  const svg = useMemo(() => writeSvg(drawing), [drawing])
  const steps = recutSteps(fit, order)
  return (
    <div aria-live="polite">
      <DrawnSvg title={`${fit.plan.order.name}: dry fit, the gap drawn larger`} svg={svg} />
      <WordsOf words={findings(fit, order, 'name')} />
      {steps.length > 0 && (
        <>
          <h3>Do this, in this order</h3>
          <ol>
            {steps.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ol>
          <p class="caution">{SAW_CAUTION}</p>
        </>
      )}
      <WordsOf words={outcomes(fit, order, 'name')} />
      <p class="files">
        {fit.verdict !== 'unknown' && (
          <button type="button" onClick={() => onBias(fit)}>
            Plan with this saw as it cuts
          </button>
        )}
        <button type="button" onClick={() => saveAs(`${fit.plan.order.name}-dry-fit.svg`, svg)}>
          Save SVG<span class="unseen"> of the dry fit</span>
        </button>
      </p>
    </div>
  )
}
