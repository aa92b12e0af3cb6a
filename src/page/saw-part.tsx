import { useMemo } from 'preact/hooks'
import { accuracyText, firstPiece } from '../compose/card-words.js'
import { SAW_CAUTIONS } from '../compose/cautions.js'
import { biasText, cutSteps, leftOpenText, settingText } from '../compose/cut-steps.js'
import { stepDrawings } from '../compose/step-drawings.js'
import { blankIsArm } from '../geometry/kite.js'
import { DEFAULTS } from '../order/defaults.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { degrees } from '../units/convert.js'
import { showAngle, showSetting } from '../units/show.js'
import { useBench } from './bench.js'
import { Drawn } from './drawn.js'
import { ifEmpty, TextField } from './field.js'
import { ListField } from './list-field.js'
import { type FieldWords, MoreFields } from './more-fields.js'
import { Part } from './part.js'
import { SawDial } from './saw-dial.js'
import { Warnings } from './warnings.js'

/** Of the step drawings, in mm of a sheet: the shop card's own. */
const STEPS = { across: 180, height: 78 }

const MORE: readonly FieldWords[] = [
  {
    place: ['shop', 'saw', 'bias', 'miter'],
    label: 'Its bias, degrees',
    hint: 'what the joint cuts come out at, less what the scale reads; a dry fit learns it',
  },
  {
    place: ['shop', 'saw', 'bias', 'uncertainty'],
    label: 'How sure the bias is, degrees',
    hint: 'either way',
  },
]

/** The saw as it is, what to set on it, the cuts one by one, and the cautions where the blade is. */
export const SawPart = ({ star: plan }: { readonly star: StarPlan }) => {
  const { plan: whole } = useBench()
  const { order } = whole
  const rhombus = blankIsArm(plan.star)
  const settings = [
    { name: 'Cut 1', cut: plan.firstCut, stop: plan.blank.side, stopName: 'blank stop' },
    ...(rhombus ? [] : [{ name: 'Cuts 2 and 3', cut: plan.jointCut, stop: plan.stop, stopName: 'stop' }]),
  ]
  return (
    <Part name="saw">
      <div class="fields">
        <TextField
          place={['shop', 'saw', 'limit']}
          label="Saw stops at, degrees"
          hint={`from square; empty: ${showAngle(DEFAULTS.sawLimit)}`}
        />
        <TextField
          place={['shop', 'saw', 'kerf']}
          label="Kerf"
          hint={`wood the blade removes; ${ifEmpty(DEFAULTS.kerf, order.lengths)}`}
        />
        <TextField
          place={['shop', 'saw', 'reads-to']}
          label="Scale reads to, degrees"
          hint={`empty: ${showAngle(DEFAULTS.readsTo)}`}
        />
        <TextField
          place={['shop', 'saw', 'crosscut']}
          label="Longest crosscut"
          hint="the saw's manual names it"
        />
        <ListField
          place={['shop', 'saw', 'detents']}
          label="It clicks in at, degrees"
          hint="such as 0 15 22.5 31.6 45"
        />
      </div>
      <MoreFields name="More about the saw" fields={MORE} />
      <aside class="caution">
        <strong>A miter saw takes fingers.</strong>
        <ul>
          {SAW_CAUTIONS.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </aside>
      <SawDial saw={order.shop.saw} plan={plan} />
      <dl class="settings" aria-live="polite">
        {settings.map(({ name, cut, stop, stopName }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <span class="big">{settingText(cut)}</span>{' '}
              <span class="big">{showSetting(stop, order.lengths)}</span> {stopName}
              <br />
              nearest mark {showAngle(cut.mark)}: leaves {leftOpenText(cut, plan, order)} open
              <Bias text={biasText(cut, order)} />
            </dd>
          </div>
        ))}
      </dl>
      <Warnings of={plan.warnings} />
      <div id="cuts">
        <StepDrawings star={plan} order={order} />
      </div>
      <ol class="steps">
        {cutSteps(plan, order).map(({ name, text }) => (
          <li key={name}>
            <strong>{name}:</strong> {text}
          </li>
        ))}
      </ol>
      <h3>Check the first piece</h3>
      <ul class="checks">
        {firstPiece(plan, order).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <p>{accuracyText(plan, order)}</p>
      {plan.markPairs.length > 0 && (
        <>
          <h3>Stars near this one with both settings on marks of this saw</h3>
          <ul>
            {plan.markPairs.map(({ tipAngle, first, joint }) => (
              <li key={tipAngle}>
                tip {showAngle(tipAngle)}: set {showAngle(degrees(Math.abs(first)))} and {showAngle(joint)}
              </li>
            ))}
          </ul>
        </>
      )}
    </Part>
  )
}

const StepDrawings = ({ star, order }: { readonly star: StarPlan; readonly order: Order }) =>
  useMemo(
    () => (
      <Drawn
        title="The cuts, seen from above"
        shapes={stepDrawings(star, order, STEPS.across, STEPS.height).shapes}
        wide
      />
    ),
    [star, order],
  )

/** What a learned bias makes of a setting. */
const Bias = ({ text }: { readonly text: string | undefined }) =>
  text === undefined ? null : (
    <>
      <br />
      {text}
    </>
  )
