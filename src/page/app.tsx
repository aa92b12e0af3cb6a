import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { editedOrder, orderDocument } from '../order/edit-text.js'
import { showProblem } from '../order/problem.js'
import { readYaml } from '../order/read-yaml.js'
import { withUnits } from '../order/unit-change.js'
import type { Plan } from '../plan/plan.js'
import type { Units } from '../units/read-length.js'
import { addressOf, keptIn } from './address.js'
import { type Bench, BenchContext, type Change } from './bench.js'
import { ChancePart } from './chance-part.js'
import { DryFitPart } from './dry-fit-part.js'
import { TextField } from './field.js'
import { FinishPart } from './finish-part.js'
import { type Job, jobOf } from './job.js'
import { changed, changedOn, historyOf, redone, undone } from './order-text.js'
import { PaperPart } from './paper-part.js'
import { Problems } from './problems.js'
import { SawPart } from './saw-part.js'
import { SeasonPart } from './season-part.js'
import { Select } from './select.js'
import { StarPart } from './star-part.js'
import { StarsList } from './stars-list.js'
import { saveAs, useWorker } from './use-worker.js'
import { WoodPart } from './wood-part.js'

const UNITS = [
  { value: 'mm', words: 'millimetres' },
  { value: 'in', words: 'inches' },
] as const

/** More than any order; the reader of the text has a narrower limit. */
const LARGEST_FILE = 1024 * 1024

/** The whole page: one order, from the star to its files. */
export const App = ({ example }: { readonly example: string }) => {
  const kept = useMemo(() => keptIn(location.hash), [])
  const [history, setHistory] = useState(() =>
    historyOf(kept && isReadable(kept.order) ? kept.order : example),
  )
  const [unopened, setUnopened] = useState<readonly string[]>([])
  const [wall, setWall] = useState(kept?.wall ?? '')
  const [measured, setMeasured] = useState(kept?.measured ?? {})
  const [shown, setShown] = useState(0)
  const job = useMemo(() => jobOf(history.now), [history.now])
  const plan = useLastPlan(job, example)
  const document = useMemo(() => orderDocument(history.now), [history.now])
  const sound = job.plan !== undefined
  const { work, ask, stop, lay } = useWorker(history.now, sound)
  useEffect(
    () => window.history.replaceState(null, '', addressOf({ order: history.now, wall, measured })),
    [history.now, wall, measured],
  )
  useEffect(() => {
    const opened = (): void => {
      const given = keptIn(location.hash)
      if (!given) return
      take(given.order)
      setWall(given.wall)
      setMeasured(given.measured)
    }
    addEventListener('hashchange', opened)
    return () => removeEventListener('hashchange', opened)
  }, [])

  /** Another order in place of this one, which undo brings back; text that cannot be read changes nothing. */
  const take = (text: string): void => {
    const read = readYaml(text)
    setUnopened(read.ok ? [] : read.problems.map(showProblem))
    if (!read.ok) return
    setHistory((before) => changed(before, text))
    setShown(0)
  }
  const edited = (text: string, changes: readonly Change[]): string =>
    changes.reduce((written, [place, value]) => editedOrder(written, place, value), text)
  const starIndex = Math.min(shown, plan.stars.length - 1)
  const star = plan.stars[starIndex]
  const laidStar = work.laid?.order.stars.find(({ name }) => name === star?.order.name)
  const bench: Bench = {
    job,
    plan,
    document,
    starIndex,
    change: (...changes) => setHistory((before) => changed(before, edited(before.now, changes))),
    changeOn: (...changes) => setHistory((before) => changedOn(before, edited(before.now, changes))),
  }
  const changeUnits = (wanted: Units): void =>
    setHistory((before) => changed(before, withUnits(before.now, plan.order.lengths.units, wanted)))
  const open = async (file: File | undefined): Promise<void> => {
    if (file && file.size <= LARGEST_FILE) take(await file.text())
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
          <div class="back-and-on">
            <button type="button" disabled={history.past.length === 0} onClick={() => setHistory(undone)}>
              Undo
            </button>
            <button type="button" disabled={history.future.length === 0} onClick={() => setHistory(redone)}>
              Redo
            </button>
          </div>
        </div>
        {unopened.length > 0 && (
          <p role="alert" class="problem">
            Not opened, nothing changed. {unopened.join(' ')}
          </p>
        )}
        <Problems />
        <StarsList onShow={setShown} />
      </header>
      {star && (
        <main>
          <StarPart star={star} wall={wall} onWall={setWall} />
          <SawPart star={star} />
          <ChancePart laid={laidStar} />
          <WoodPart star={star} laid={work.laid?.order.boards} />
          <SeasonPart laid={laidStar} />
          <PaperPart
            work={work}
            ask={ask}
            stop={stop}
            lay={lay}
            saveOrder={() => saveAs('order.yaml', history.now)}
          />
          <DryFitPart
            star={star}
            measured={(Object.hasOwn(measured, star.order.name) && measured[star.order.name]) || {}}
            onMeasured={(fields) => setMeasured({ ...measured, [star.order.name]: fields })}
          />
          <FinishPart star={star} />
        </main>
      )}
    </BenchContext.Provider>
  )
}

const isReadable = (text: string): boolean => readYaml(text).ok

/** The plan of the order, or while it has mistakes the one before; at first that of the example. */
const useLastPlan = (job: Job, example: string): Plan => {
  const last = useRef<Plan | undefined>(undefined)
  if (job.plan) last.current = job.plan
  last.current ??= jobOf(example).plan
  if (!last.current) throw new Error('the example has mistakes')
  return last.current
}
