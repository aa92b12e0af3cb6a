import { useEffect, useRef, useState } from 'preact/hooks'
import { RANKS } from '../choose/ranks.js'
import { LISTED, readWish } from '../choose/wish.js'
import { RANK_TEXTS } from '../compose/choice-words.js'
import { capital, problemsOf } from '../order/problem.js'
import { AskedFile, KINDS } from './asked-file.js'
import { useBench } from './bench.js'
import { ChosenList, LOOKED, ONE, OTHER } from './chosen-list.js'
import { LabelledField, TextField } from './field.js'
import { answerOf } from './open-worker.js'
import { Part } from './part.js'
import { Select } from './select.js'
import { TypedInput } from './typed-input.js'
import { type Ask, type ChosenStars, type Given, isSameGiven, type WrittenWish } from './work.js'

const FIELDS = [
  { key: 'points', label: 'Only with so many points', hint: 'empty: of all points' },
  { key: 'quantity', label: 'So many of them', hint: 'empty: one' },
]

/** What was found, and for what. */
interface Answered {
  readonly given: Given
  readonly wish: WrittenWish
  readonly chosen: ChosenStars
}

/** The stars that this shop can make, two of them compared; one of them can be taken. */
export const ChoosePart = ({
  given,
  wish,
  onWish,
}: {
  /** The order that is shown. */
  readonly given: Given
  readonly wish: Readonly<Record<string, string>>
  readonly onWish: (wish: Readonly<Record<string, string>>) => void
}) => {
  const { job } = useBench()
  const [answered, setAnswered] = useState<Answered>()
  const [doing, setDoing] = useState('')
  /** A comparison asked for here comes into sight; one that is there from the start does not. */
  const [comparedHere, setComparedHere] = useState(false)
  const [unfound, setUnfound] = useState<readonly string[]>([])
  const problems = problemsOf(readWish(wish))
  const type = (key: string, text: string): void => {
    const { [key]: _, ...others } = wish
    onWish(text === '' ? others : { ...others, [key]: text })
  }
  /** Only what was asked last is shown: an answer before it may come after it. */
  const latest = useRef<Ask | undefined>(undefined)
  const ask = async (asked: Extract<Ask, { ask: 'choose' }>): Promise<void> => {
    latest.current = asked
    setDoing('Looking for stars.')
    setUnfound([])
    const answer = await answerOf(asked).catch(
      (error: unknown) => ({ answer: 'refused', problems: [String(error)] }) as const,
    )
    if (latest.current !== asked) return
    setDoing('')
    if (answer.answer === 'refused') setUnfound(answer.problems)
    if (answer.answer === 'chosen')
      setAnswered({ given: asked.given, wish: asked.wish, chosen: answer.chosen })
  }
  /** What is looked for is kept with the page, to be looked for again when it is opened again. */
  const look = (wanted: Readonly<Record<string, string>>): void => {
    onWish({ ...wanted, [LOOKED]: 'yes' })
    void ask({ ask: 'choose', given, wish: writtenWish(wanted) })
  }
  useEffect(() => {
    if (LOOKED in wish && job.plan && problems.length === 0) look(wish)
  }, [])
  const isCurrent =
    answered !== undefined &&
    doing === '' &&
    isSameGiven(answered.given, given) &&
    isSameWish(answered.wish, writtenWish(wish))
  const isTwoCurrent =
    doing !== '' || JSON.stringify(answered?.wish.compare) === JSON.stringify(writtenWish(wish).compare)
  return (
    <Part name="choose" printed={answered !== undefined}>
      <p>
        From the saw, the boards and the room for the star: every star that can be cut, with what it takes.
      </p>
      <div class="fields">
        {FIELDS.map(({ key, label, hint }) => (
          <LabelledField
            key={key}
            id={`choose-${key}`}
            label={label}
            hint={hint}
            problems={problems.filter(({ place }) => place === `--${key}`)}
          >
            {(described) => (
              <TypedInput {...described} text={wish[key] ?? ''} onTake={(text) => type(key, text)} />
            )}
          </LabelledField>
        ))}
        <TextField
          place={['space', 'across']}
          label="Room for the star, across"
          hint="wider ones are left out; empty: enough"
        />
        <TextField place={['space', 'height']} label="Room for the star, high" hint="empty: enough" />
        <Select
          id="choose-rank"
          label="In which order"
          value={wish.rank ?? 'ease'}
          choices={RANKS.map((value) => ({ value, words: RANK_TEXTS[value] }))}
          onChoose={(rank) => type('rank', rank)}
        />
      </div>
      <p class="files">
        <button
          type="button"
          disabled={job.plan === undefined || problems.length > 0 || doing !== ''}
          onClick={() => look(wish)}
        >
          Look for stars
        </button>
        <span role="status">{doing}</span>
      </p>
      {unfound.length > 0 && (
        <p role="alert" class="problem">
          {unfound.map((text) => capital(text.replace('--compare: ', ''))).join(' ')}
        </p>
      )}
      {answered && (
        <ChosenList
          chosen={answered.chosen}
          isCurrent={isCurrent}
          isLooking={doing !== ''}
          isTwoCurrent={isTwoCurrent}
          wish={wish}
          comesIntoSight={comparedHere}
          onCompare={({ one = '', other = '' }) => {
            setComparedHere(true)
            const { [ONE]: _, [OTHER]: __, ...rest } = wish
            const next = { ...rest, ...(one ? { [ONE]: one } : {}), ...(other ? { [OTHER]: other } : {}) }
            if ((one && other) || answered.wish.compare) look(next)
            else onWish(next)
          }}
          onMore={() => look({ ...wish, most: String(answered.chosen.listed.length + LISTED) })}
        >
          {KINDS.map((kind) => (
            <AskedFile
              key={kind}
              kind={kind}
              of={answered.chosen.compared ? 'the two compared' : 'these stars'}
              disabled={!isCurrent || !isTwoCurrent}
              asked={{ ask: 'choice-file', given: answered.given, wish: answered.wish, kind }}
            />
          ))}
        </ChosenList>
      )}
    </Part>
  )
}

/** As the worker is asked: two are compared when both are named. */
const writtenWish = ({
  [ONE]: one,
  [OTHER]: other,
  [LOOKED]: _,
  ...wish
}: Readonly<Record<string, string>>): WrittenWish => ({
  ...wish,
  ...(one && other ? { compare: [one, other] } : {}),
})

/** Which two are compared apart. */
const isSameWish = (one: WrittenWish, other: WrittenWish): boolean =>
  (['points', 'quantity', 'most', 'rank'] as const).every((key) => one[key] === other[key])
