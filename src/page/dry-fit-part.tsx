import { useMemo } from 'preact/hooks'
import { SAW_CAUTION } from '../compose/cautions.js'
import { dryFitDrawing } from '../compose/dry-fit-drawing.js'
import { findings, outcomes, recutSteps } from '../compose/dry-fit-words.js'
import type { DryFit } from '../fit/dry-fit.js'
import { ANGLE_TOOLS, LENGTH_TOOLS } from '../fit/read-measurements.js'
import { problemsOf } from '../order/problem.js'
import { writtenBias } from '../order/save-bias.js'
import type { StarPlan } from '../plan/plan.js'
import { trimmed } from '../units/show.js'
import { writeSvg } from '../write/svg.js'
import { AskedFile } from './asked-file.js'
import { type Change, useBench } from './bench.js'
import { DrawnSvg } from './drawn.js'
import { LabelledField } from './field.js'
import { dryFitFile, fitOf, isMeasured, termsOf } from './fit-of.js'
import type { Measured } from './measured.js'
import { Part } from './part.js'
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
  { key: 'measured-tip', label: 'Tip angle of an arm', hint: 'several arms: 45.2; 45.0; 45.1' },
  { key: 'measured-side', label: 'Side angle of an arm' },
  { key: 'measured-centre', label: 'Centre angle of an arm' },
  { key: 'measured-tip-edge', label: 'Tip edge of an arm' },
  { key: 'measured-across', label: 'Tip to tip at the widest' },
  { key: 'cut-at', label: 'The saw was set to', hint: 'empty: as planned' },
  { key: 'clean-up', label: 'A recut takes off at least', hint: 'empty: what a sound face needs' },
]

/** Fields that show their own mistakes. */
const SHOWN = new Set(['gap', ...FIELDS.map(({ key }) => key)].map((key) => `--${key}`))

const TOOLS = [
  { key: 'angles-by', label: 'Angles measured with', tools: ANGLE_TOOLS },
  { key: 'lengths-by', label: 'Lengths measured with', tools: LENGTH_TOOLS },
]

/** One star laid together without glue: where it gapes, and what to do about it. */
export const DryFitPart = ({
  star,
  measured,
  onMeasured,
}: {
  readonly star: StarPlan
  readonly measured: Measured
  /** Together with changes of the order, as one step that can be undone. */
  readonly onMeasured: (measured: Measured, ...changes: readonly Change[]) => void
}) => {
  const { order } = useBench().plan
  const fit = useMemo(
    () => (isMeasured(measured) ? fitOf(star, measured, order) : undefined),
    [star, measured, order],
  )
  const problems = problemsOf(fit ?? termsOf(star, measured, order))
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
    <Part name="fit" printed={isMeasured(measured)}>
      <p>
        Lay one star together without glue, face sides up, every joint closed but the last. Measure there, and
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
        {field(
          'gap',
          'How wide it gapes',
          `such as ${order.lengths.units === 'mm' ? '2.8 mm' : '7/64 in'}; 0 when it closes`,
        )}
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
          measured={measured}
          onBias={({ setting, terms }) => {
            const bias = writtenBias({ miter: setting.learned, uncertainty: setting.uncertainty })
            // From now on the plan reads otherwise; this star was cut at what it read before.
            const cutAt = trimmed(terms.reading, 2)
            onMeasured({ ...measured, 'cut-at': cutAt }, [['shop', 'saw', 'bias'], bias])
          }}
        />
      )}
    </Part>
  )
}

const FitTold = ({
  fit,
  measured,
  onBias,
}: {
  readonly fit: DryFit
  readonly measured: Measured
  readonly onBias: (fit: DryFit) => void
}) => {
  const { job, plan } = useBench()
  const { order } = plan
  const drawing = useMemo(() => dryFitDrawing(fit, order), [fit, order])
  // The notes of the file stand below in words.
  const figure = useMemo(() => writeSvg({ ...drawing, shapes: drawing.figure }), [drawing])
  const steps = recutSteps(fit, order)
  return (
    <div aria-live="polite">
      <DrawnSvg title={`${fit.plan.order.name}: dry fit, the gap drawn larger`} svg={figure} />
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
        {(fit.verdict === 'turn' || fit.verdict === 'closes') && (
          <button type="button" disabled={!job.plan} onClick={() => onBias(fit)}>
            Plan with this saw as it cuts
          </button>
        )}
        <button
          type="button"
          disabled={!job.plan}
          onClick={() => saveAs(dryFitFile(fit.plan, 'svg'), writeSvg(drawing))}
        >
          Save SVG<span class="unseen"> of the dry fit</span>
        </button>
        <AskedFile
          kind=".pdf"
          of="the dry fit"
          asked={{
            ask: 'dry-fit',
            given: { text: job.text, furniture: {} },
            star: fit.plan.order.name,
            measured,
          }}
        />
      </p>
    </div>
  )
}
