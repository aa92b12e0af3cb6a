import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { editedOrder, orderDocument, withoutAliases, writtenAt } from '../order/edit-text.js'
import { isGroup } from '../order/group.js'
import { showProblem } from '../order/problem.js'
import { readYaml } from '../order/read-yaml.js'
import { withUnits } from '../order/unit-change.js'
import { unitsMeant } from '../order/units-meant.js'
import type { Units } from '../units/read-length.js'
import { addressOf, FIRST_LOOK, type Kept, keptIn, lookIn } from './address.js'
import { type Bench, BenchContext, type Change, TakenContext } from './bench.js'
import { besideOf } from './beside.js'
import { ChancePart } from './chance-part.js'
import { ChoosePart } from './choose-part.js'
import { dropDraft } from './draft.js'
import { DryFitPart } from './dry-fit-part.js'
import { TextField } from './field.js'
import { FinishPart } from './finish-part.js'
import { Following } from './following.js'
import { type Job, jobOf } from './job.js'
import { measuredAfter, measuredOf, measuredWithUnit, withUnit } from './measured.js'
import { NewOrderButtons } from './new-order-buttons.js'
import { OpenField } from './open-field.js'
import { OrderText } from './order-text.js'
import { OutdatedBar } from './outdated-bar.js'
import { PaperPart } from './paper-part.js'
import { Contents } from './part.js'
import { Problems, showProblems } from './problems.js'
import { SawPart } from './saw-part.js'
import { SeasonPart } from './season-part.js'
import { inPlace, inUnits, isSound, plannedStar, type Sound, stoodAfter, writtenStars } from './sound.js'
import { StarPart } from './star-part.js'
import { StarsList } from './stars-list.js'
import { changed, changedOn, type Steps, stepsFrom } from './steps.js'
import { TitleFields } from './title-fields.js'
import { UndoButtons } from './undo-buttons.js'
import { UnitsField } from './units-field.js'
import { useAddress } from './use-address.js'
import { usePainted } from './use-later.js'
import { saveAs, useWorker } from './use-worker.js'
import { WoodPart } from './wood-part.js'
import type { Given } from './work.js'

/** More than any order; the reader of the text has a narrower limit. */
const LARGEST_FILE = 1024 * 1024

/** The whole page: one order, from the star to its files. */
export const App = ({ example }: { readonly example: string }) => {
  const [steps, setSteps] = useState(() => stepsFrom(keptIn(location.hash) ?? keptExample(example)))
  const [pulled, setPulled] = useState(false)
  /** How many orders were taken in place of another: nothing typed in the one before stays in the fields. */
  const [taken, setTaken] = useState(0)
  const [unopened, setUnopened] = useState<readonly string[]>([])
  const [look, setLook] = useState(() => lookIn(location.hash))
  /** The star comes first, and what is below it when it has been painted. */
  const painted = usePainted()
  const setShown = (shown: number): void => setLook((before) => ({ ...before, shown }))
  const { order: text, wall, measured, furniture, before } = steps.now
  const job = useMemo(() => jobOf(text), [text])
  const sound = useSound(job, before?.order)
  // A text that is no YAML, or no group of keys, has nothing in it that can be told.
  const readable = useMemo(() => isSound(job) || isOrderLike(text), [job, text])
  const document = useMemo(() => orderDocument(readable ? text : ''), [readable, text])
  const names = useMemo(() => writtenStars(document), [document])
  const units = unitsMeant(writtenAt(document, ['units']))
  const plan = useMemo(() => sound && inUnits(sound.plan, units), [sound, units])
  const shown = Math.max(0, Math.min(look.shown, names.length - 1))
  const stood = isSound(job) ? inPlace(names.length) : (before?.stars ?? [])
  const star = plan && plannedStar(plan, stood, shown)
  const given = useMemo((): Given => ({ text, furniture }), [text, furniture])
  const { work, ask, stop, lay } = useWorker(given, isSound(job))
  const address = addressOf(isSound(job) ? { ...steps.now, before: undefined } : steps.now, look)
  const kept = useRef(address)
  kept.current = address
  useAddress(address)
  useEffect(() => {
    const opened = (): void => {
      const [given, look] = [keptIn(location.hash), lookIn(location.hash)]
      if (given && take(given)) setLook(look)
      // What is not taken must not be what a reload finds.
      else history.replaceState(null, '', kept.current)
    }
    addEventListener('hashchange', opened)
    return () => removeEventListener('hashchange', opened)
  }, [])

  /** Other work in place of this, which undo brings back; what cannot be read at all is not taken and changes nothing. */
  const take = (given: Partial<Kept> & Pick<Kept, 'order'>): boolean => {
    const read = readYaml(given.order)
    setUnopened(read.ok ? [] : read.problems.map(showProblem))
    if (!read.ok) return false
    setSteps((before) => changed(before, { before: undefined, ...given }))
    setLook(FIRST_LOOK)
    setTaken((before) => before + 1)
    dropDraft()
    return true
  }
  /**
   * A step in the same work, of which what is drawn now is shown until its mistakes are mended.
   *
   * @param changes of the order, or that all of its text is another
   */
  const step = (
    now: Steps,
    to: Partial<Kept>,
    changes: readonly Change[] | 'all' = [],
    go = changed,
  ): Steps => {
    const drawn = sound && { order: sound.text, stars: stood }
    const last = now.now.order === text ? drawn : now.now.before
    return go(now, {
      ...to,
      before: last && { ...last, stars: changes === 'all' ? [] : stoodAfter(last.stars, changes) },
    })
  }
  const change = (...changes: readonly Change[]): void => {
    setPulled(false)
    setSteps((before) => step(before, afterChanges(before, changes), changes))
  }
  const changeUnits = (wanted: Units): void => {
    if (wanted === units) return
    setSteps((before) =>
      step(before, {
        order: withUnits(before.now.order, units, wanted),
        wall: withUnit(before.now.wall, units),
        measured: measuredWithUnit(before.now.measured, units),
      }),
    )
  }
  const open = async (file: File): Promise<void> => {
    // What was measured belongs to the stars of the order before.
    if (file.size <= LARGEST_FILE) take({ order: withoutAliases(await file.text()), measured: {} })
    else setUnopened([`${file.name} is larger than 1 MB. Is this the right file?`])
  }
  const shownGiven = useMemo((): Given => ({ ...given, text: sound?.text ?? text }), [given, sound, text])
  const beside = besideOf(work, shownGiven, isSound(job))
  /** As it is written, also while the plan still has the name before a mistake. */
  const name = names[shown] ?? ''
  const laidStar = work.laid?.order.stars.find((each) => each.name === star?.order.name)
  const bench: Bench | undefined = plan && {
    job,
    plan,
    document,
    starIndex: shown,
    beside,
    ...(isSound(job) && beside === 'current' ? { save: (path) => ask({ ask: 'file', given, path }) } : {}),
    change,
    pull: (on, ...changes) => {
      setPulled(true)
      setSteps((before) => step(before, afterChanges(before, changes), changes, on ? changedOn : changed))
    },
  }
  return (
    <TakenContext.Provider value={taken}>
      <BenchContext.Provider value={bench}>
        <header>
          <h1>{plan?.order.title ?? 'An order with mistakes'}</h1>
          <p class="maker">Starwright: flat wooden stars, from the saw to the wall</p>
          <div class="fields">
            {star && <TextField place={['title']} label="Title" words />}
            {star && <UnitsField onUnits={changeUnits} />}
            <OpenField onFile={(file) => void open(file)} />
            <UndoButtons steps={steps} onStep={setSteps} />
          </div>
          {star && <TitleFields />}
          <NewOrderButtons text={readable ? text : undefined} units={units} onNew={take} />
          {unopened.length > 0 && (
            <p role="alert" class="problem">
              Not opened, nothing changed. {unopened.join(' ')}
            </p>
          )}
          <Problems
            problems={job.problems}
            names={names}
            shown={shown}
            drawn={star !== undefined}
            onShow={setShown}
          />
          {readable && (
            <StarsList names={names} shown={shown} units={units} change={change} onShow={setShown} />
          )}
          {star && <Contents />}
        </header>
        <main class={isSound(job) ? '' : 'outdated'}>
          {star ? (
            <>
              <StarPart
                star={star}
                tone={look.tone}
                onTone={(tone) => setLook((before) => ({ ...before, tone }))}
                wall={wall}
                onWall={(written) => setSteps((before) => step(before, { wall: written }))}
              />
              {painted && (
                <Following pulled={pulled}>
                  <ChoosePart
                    given={shownGiven}
                    wish={look.wish}
                    onWish={(wish) => setLook((before) => ({ ...before, wish }))}
                  />
                  <SawPart star={star} />
                  <ChancePart
                    laid={laidStar}
                    given={shownGiven}
                    set={look.set}
                    onSet={(set) => setLook((before) => ({ ...before, set }))}
                  />
                  <WoodPart star={star} work={work} stop={stop} lay={lay} />
                  <SeasonPart laid={laidStar} />
                  <PaperPart
                    work={work}
                    saveAll={() => ask({ ask: 'archive', given })}
                    stop={stop}
                    lay={lay}
                    furniture={furniture}
                    onFurniture={(pieces) => setSteps((before) => step(before, { furniture: pieces }))}
                    saveOrder={() => saveAs('order.yaml', text)}
                  />
                  <DryFitPart
                    star={star}
                    measured={measuredOf(measured, name)}
                    onMeasured={(fields, ...changes) =>
                      setSteps((before) => {
                        const after = afterChanges(before, changes)
                        return step(before, { ...after, measured: { ...after.measured, [name]: fields } })
                      })
                    }
                  />
                  <FinishPart star={star} />
                </Following>
              )}
            </>
          ) : (
            <OrderText
              key={taken}
              text={text}
              onTake={(written) =>
                setSteps((before) => step(before, { order: withoutAliases(written) }, 'all'))
              }
            />
          )}
        </main>
        {star && !isSound(job) && <OutdatedBar onShow={showProblems} />}
      </BenchContext.Provider>
    </TakenContext.Provider>
  )
}

const isOrderLike = (text: string): boolean => {
  const read = readYaml(text)
  return read.ok && isGroup(read.value.root)
}

const keptExample = (example: string): Kept => ({ order: example, wall: '', measured: {}, furniture: {} })

const afterChanges = ({ now }: Steps, changes: readonly Change[]): Pick<Kept, 'order' | 'measured'> => ({
  order: changes.reduce((written, [place, value]) => editedOrder(written, place, value), now.order),
  measured: measuredAfter(now.measured, changes, () => writtenStars(orderDocument(now.order))),
})

/** The order and its plan, or while it has mistakes what it was before them; undefined where that is not known. */
const useSound = (job: Job, before: string | undefined): Sound | undefined => {
  const needed = isSound(job) ? undefined : before
  const earlier = useMemo(() => (needed === undefined ? undefined : jobOf(needed)), [needed])
  if (isSound(job)) return job
  return earlier && isSound(earlier) ? earlier : undefined
}
