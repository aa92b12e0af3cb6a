import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { editedOrder, orderDocument, writtenAt } from '../order/edit-text.js'
import { showProblem } from '../order/problem.js'
import { readYaml } from '../order/read-yaml.js'
import { withUnits } from '../order/unit-change.js'
import type { Plan } from '../plan/plan.js'
import type { Units } from '../units/read-length.js'
import { addressOf, FIRST_LOOK, type Kept, keptIn, lookIn } from './address.js'
import { type Bench, BenchContext, type Change } from './bench.js'
import { besideOf } from './beside.js'
import { ChancePart } from './chance-part.js'
import { ChoosePart } from './choose-part.js'
import { DryFitPart } from './dry-fit-part.js'
import { TextField } from './field.js'
import { FinishPart } from './finish-part.js'
import { Following } from './following.js'
import { type Job, jobOf } from './job.js'
import { measuredAfter, measuredOf, measuredWithUnit, withUnit } from './measured.js'
import { NewOrderButtons } from './new-order-buttons.js'
import { PaperPart } from './paper-part.js'
import { Problems } from './problems.js'
import { SawPart } from './saw-part.js'
import { SeasonPart } from './season-part.js'
import { Select } from './select.js'
import { StarPart } from './star-part.js'
import { StarsList } from './stars-list.js'
import { changed, changedOn, redone, type Steps, stepsFrom, undone } from './steps.js'
import { TitleFields } from './title-fields.js'
import { useAddress } from './use-address.js'
import { usePainted } from './use-later.js'
import { saveAs, useWorker } from './use-worker.js'
import { WoodPart } from './wood-part.js'
import type { Given } from './work.js'

const UNITS = [
  { value: 'mm', words: 'millimetres' },
  { value: 'in', words: 'inches' },
] as const

/** More than any order; the reader of the text has a narrower limit. */
const LARGEST_FILE = 1024 * 1024

/** The whole page: one order, from the star to its files. */
export const App = ({ example }: { readonly example: string }) => {
  const [steps, setSteps] = useState(() => stepsFrom(keptAtFirst(example)))
  const [pulled, setPulled] = useState(false)
  const [unopened, setUnopened] = useState<readonly string[]>([])
  const [look, setLook] = useState(() => lookIn(location.hash))
  /** The star comes first, and what is below it when it has been painted. */
  const painted = usePainted()
  const setShown = (shown: number): void => setLook((before) => ({ ...before, shown }))
  const { order: text, wall, measured, furniture } = steps.now
  const job = useMemo(() => jobOf(text), [text])
  const sound = useLastSound(job, example)
  const { plan } = sound
  const document = useMemo(() => orderDocument(text), [text])
  const given = useMemo((): Given => ({ text, furniture }), [text, furniture])
  const { work, ask, stop, lay } = useWorker(given, job.plan !== undefined)
  useAddress(addressOf(steps.now, look))
  useEffect(() => {
    const opened = (): void => {
      const given = keptIn(location.hash)
      if (!given) return
      take(given)
      setLook(lookIn(location.hash))
    }
    addEventListener('hashchange', opened)
    return () => removeEventListener('hashchange', opened)
  }, [])

  /** Other work in place of this, which undo brings back; an order that cannot be read changes nothing. */
  const take = (given: Partial<Kept> & Pick<Kept, 'order'>): void => {
    const read = readYaml(given.order)
    setUnopened(read.ok ? [] : read.problems.map(showProblem))
    if (!read.ok) return
    setSteps((before) => changed(before, given))
    setLook(FIRST_LOOK)
  }
  const starIndex = Math.min(look.shown, plan.stars.length - 1)
  const star = plan.stars[starIndex]
  /** As it is written, also while the plan still has the name before a mistake. */
  const name = writtenAt(document, ['stars', starIndex, 'name']) ?? star?.order.name ?? ''
  const shown = useMemo((): Given => ({ ...given, text: sound.text }), [given, sound.text])
  const beside = besideOf(work, shown)
  const laidStar = work.laid?.order.stars.find((each) => each.name === star?.order.name)
  const bench: Bench = {
    job,
    plan,
    document,
    starIndex,
    beside,
    ...(job.plan && beside === 'current' ? { save: (path) => ask({ ask: 'file', given, path }) } : {}),
    change: (...changes) => {
      setPulled(false)
      setSteps((before) => changed(before, afterChanges(before, changes)))
    },
    pull: (on, ...changes) => {
      setPulled(true)
      setSteps((before) => (on ? changedOn : changed)(before, afterChanges(before, changes)))
    },
  }
  const changeUnits = (wanted: Units): void => {
    const { units } = plan.order.lengths
    if (wanted === units) return
    setSteps((before) =>
      changed(before, {
        order: withUnits(before.now.order, units, wanted),
        wall: withUnit(before.now.wall, units),
        measured: measuredWithUnit(before.now.measured, units),
      }),
    )
  }
  const open = async (file: File | undefined): Promise<void> => {
    // What was measured belongs to the stars of the order before.
    if (file && file.size <= LARGEST_FILE) take({ order: await file.text(), measured: {} })
    else if (file) setUnopened([`${file.name} is larger than 1 MB. Is this the right file?`])
  }
  return (
    <BenchContext.Provider value={bench}>
      <header>
        <h1>{plan.order.title}</h1>
        <p class="maker">Starwright: flat wooden stars, from the saw to the wall</p>
        <div class="fields">
          <TextField place={['title']} label="Title" words />
          <Select
            id="units"
            label="Lengths in"
            value={plan.order.lengths.units}
            choices={UNITS}
            onChoose={changeUnits}
          />
          <div class="field">
            <label for="open">Open an order</label>
            <input
              id="open"
              type="file"
              accept=".yaml,.yml,.json"
              onChange={(event) => void open(event.currentTarget.files?.[0])}
            />
          </div>
          <div class="field">
            <span />
            <div class="back-and-on">
              <button type="button" disabled={steps.past.length === 0} onClick={() => setSteps(undone)}>
                Undo
              </button>
              <button type="button" disabled={steps.future.length === 0} onClick={() => setSteps(redone)}>
                Redo
              </button>
            </div>
          </div>
        </div>
        <TitleFields />
        <NewOrderButtons text={text} onNew={take} />
        {unopened.length > 0 && (
          <p role="alert" class="problem">
            Not opened, nothing changed. {unopened.join(' ')}
          </p>
        )}
        <Problems onShow={setShown} />
        <StarsList onShow={setShown} />
      </header>
      {star && (
        <main>
          <StarPart
            star={star}
            tone={look.tone}
            onTone={(tone) => setLook((before) => ({ ...before, tone }))}
            wall={wall}
            onWall={(written) => setSteps((before) => changed(before, { wall: written }))}
          />
          {painted && (
            <Following pulled={pulled}>
              <ChoosePart
                given={shown}
                wish={look.wish}
                onWish={(wish) => setLook((before) => ({ ...before, wish }))}
              />
              <SawPart star={star} />
              <ChancePart laid={laidStar} given={shown} />
              <WoodPart star={star} work={work} stop={stop} lay={lay} />
              <SeasonPart laid={laidStar} />
              <PaperPart
                work={work}
                saveAll={() => ask({ ask: 'archive', given })}
                stop={stop}
                lay={lay}
                furniture={furniture}
                onFurniture={(pieces) => setSteps((before) => changed(before, { furniture: pieces }))}
                saveOrder={() => saveAs('order.yaml', text)}
              />
              <DryFitPart
                star={star}
                measured={measuredOf(measured, name)}
                onMeasured={(fields, ...changes) =>
                  setSteps((before) => {
                    const after = afterChanges(before, changes)
                    return changed(before, { ...after, measured: { ...after.measured, [name]: fields } })
                  })
                }
              />
              <FinishPart star={star} />
            </Following>
          )}
        </main>
      )}
    </BenchContext.Provider>
  )
}

/** What the address keeps, or the example where it keeps no order that can be read. */
const keptAtFirst = (example: string): Kept => {
  const kept = keptIn(location.hash)
  return kept && readYaml(kept.order).ok ? kept : { order: example, wall: '', measured: {}, furniture: {} }
}

const afterChanges = ({ now }: Steps, changes: readonly Change[]): Pick<Kept, 'order' | 'measured'> => ({
  order: changes.reduce((written, [place, value]) => editedOrder(written, place, value), now.order),
  measured: measuredAfter(now.measured, changes, () => starNames(now.order)),
})

const starNames = (order: string): string[] => {
  const document = orderDocument(order)
  const stars: unknown = document.toJS()?.stars
  return Array.isArray(stars)
    ? stars.map((_, index) => writtenAt(document, ['stars', index, 'name']) ?? '')
    : []
}

/** The plan of the order and its text, or while it has mistakes those before; at first those of the example. */
const useLastSound = (job: Job, example: string): Sound => {
  const last = useRef<Sound | undefined>(undefined)
  if (isSound(job)) last.current = job
  if (!last.current) {
    const shown = jobOf(example)
    if (!isSound(shown)) throw new Error('the example has mistakes')
    last.current = shown
  }
  return last.current
}

type Sound = Job & { readonly plan: Plan }

const isSound = (job: Job): job is Sound => job.plan !== undefined
