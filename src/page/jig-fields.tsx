import { DEFAULTS } from '../order/defaults.js'
import { entriesAt } from '../order/edit-text.js'
import { JIG_NAMES, type JigName, type Order } from '../order/order.js'
import { usualScrew } from '../order/wood-screw.js'
import { mm } from '../units/convert.js'
import { useBench } from './bench.js'
import { fieldId, ifEmpty, ProblemsTold } from './field.js'
import { FieldsOf, type FieldWords, MoreFields } from './more-fields.js'
import { problemsAt } from './problem-place.js'

const PLACE = ['jigs'] as const

/** What each is for. */
const JIGS: Readonly<Record<JigName, string>> = {
  'blank-stop': 'Blank stop: cut 1, piece after piece of one length',
  'first-cut-wedge': 'First-cut wedge: cut 1 beyond what the saw reaches',
  'arm-cradle': 'Arm cradle: holds the short piece for cuts 2 and 3',
  'joint-cut-wedge': 'Joint-cut wedge: cuts 2 and 3 beyond what the saw reaches',
  'angle-gauge': 'Angle gauge: checks the first piece',
  'trial-window': 'Trial-piece window: a good arm drops through GO and stays out of NO GO',
  'glue-up-frame': 'Glue-up frame: holds the ring round while the glue sets',
}

const SIDES = [
  { value: 'right', words: 'right of the blade' },
  { value: 'left', words: 'left of the blade' },
]

/** Which jigs are drawn for every star, and what they are made of. */
export const JigFields = () => {
  const { document, change, job, plan } = useBench()
  const { lengths, jigs } = plan.order
  const wanted: readonly string[] = document.hasIn(PLACE) ? entriesAt(document, PLACE) : jigs.names
  const problems = [PLACE, ...wanted.map((_, index) => [...PLACE, index])].flatMap((place) =>
    problemsAt(job.problems, place),
  )
  const toggle = (name: JigName): void => {
    const next = JIG_NAMES.filter((each) => wanted.includes(each) !== (each === name))
    const usual = JIG_NAMES.every((each) => next.includes(each) === DEFAULTS.jigs.some((jig) => jig === each))
    change([PLACE, usual ? undefined : next])
  }
  return (
    <>
      <fieldset class="row" {...(problems.length > 0 ? { 'aria-describedby': 'jigs-problem' } : {})}>
        <legend>Jigs for every star</legend>
        {JIG_NAMES.map((name) => (
          <label key={name} class="check">
            <input
              id={fieldId([...PLACE, name])}
              type="checkbox"
              checked={wanted.includes(name)}
              onChange={() => toggle(name)}
            />
            <span>{JIGS[name]}</span>
          </label>
        ))}
        <ProblemsTold id="jigs-problem" problems={problems} />
      </fieldset>
      <div class="fields">
        <FieldsOf
          fields={[
            {
              place: ['shop', 'jig-stock', 'thickness'],
              label: 'Jigs are cut from a panel of',
              hint: ifEmpty(DEFAULTS.jigThickness, lengths),
            },
            {
              place: ['shop', 'jig-stock', 'side'],
              label: 'The kept piece lies, as you stand at the saw',
              choices: SIDES,
            },
          ]}
        />
      </div>
      <MoreFields name="Screws, clamps and play of the jigs" fields={moreOfJigs(plan.order)} />
    </>
  )
}

const moreOfJigs = ({
  lengths,
  shop: {
    jigStock: { thickness, screw },
  },
}: Order): readonly FieldWords[] =>
  (
    [
      ['screw', 'Holes for wood screws', usualScrew(thickness)],
      ['pilot', 'Holes that wood screws bite in', mm(screw * DEFAULTS.pilotPart)],
      ['bolt', 'Holes for bolts and cords', DEFAULTS.boltHole],
      ['clamp-across', "Toggle clamp's holes, across its arm", DEFAULTS.clampAcross],
      ['clamp-along', "Toggle clamp's holes, along its arm", DEFAULTS.clampAlong],
      ['clamp-slot', 'Its holes are longer than round by', DEFAULTS.clampSlot],
      ['hands', 'Hands stay off the blade by', DEFAULTS.hands],
      ['register', 'Wood bears on a fence wedge along', DEFAULTS.register],
      ['tolerance', 'An arm may be off on each edge by', DEFAULTS.tolerance],
      ['clearance', 'Room for wedges round the star', DEFAULTS.clearance],
      ['fit', "Play of the frame's keys", DEFAULTS.fit],
    ] as const
  ).map(([key, label, usual]) => ({
    place: ['shop', 'jig-stock', key],
    label,
    hint: ifEmpty(usual, lengths),
  }))
