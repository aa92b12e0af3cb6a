import { dryFitCard } from '../compose/dry-fit-card.js'
import type { DryFit } from '../fit/dry-fit.js'
import { fitAsWritten } from '../fit/fit-as-written.js'
import type { WrittenMeasurements } from '../fit/read-measurements.js'
import type { FileContent } from '../make-files.js'
import type { Order } from '../order/order.js'
import { type OrderInput, parseOrder } from '../order/parse.js'
import { done, type Outcome, problemsOf, refused, showGiven } from '../order/problem.js'
import { withBias } from '../order/save-bias.js'
import { planOrder, type StarPlan } from '../plan/plan.js'
import { fileKind } from './file-kind.js'
import type { Typed } from './order-flags.js'
import { orderInput } from './order-input.js'
import { STANDARD_INPUT } from './standard-input.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** `starwright dryfit`: what one dry-fitted star tells, and what to do at the saw. */
export const dryfit = async (typed: Typed): Promise<number> => {
  const repeated = ONCE.filter((name) => Array.isArray(typed[name]))
  if (repeated.length > 0) {
    return tellProblems(
      repeated.map((name) => ({
        place: `--${name}`,
        given: 'more than one value',
        advice: 'Give the flag once.',
      })),
    )
  }
  const input = await orderInput(typed)
  const order = input.ok ? parseOrder(input.value) : input
  if (!input.ok || !order.ok) return tellProblems([input, order].flatMap(problemsOf).slice(0, 60))
  const fit = fitOf(typed, order.value)
  const saved = fit.ok ? biasedText(typed, input.value, fit.value) : done(undefined)
  const drawn = fit.ok ? await drawingOf(typed, fit.value, order.value) : done(undefined)
  if (!fit.ok || !saved.ok || !drawn.ok) return tellProblems([fit, saved, drawn].flatMap(problemsOf))

  if (drawn.value !== undefined) {
    const { writeDrawing } = await import('./files.js')
    const written = await writeDrawing(String(typed.to), drawn.value, typed.replace === true)
    if (!written.ok) return tellProblems(written.problems)
  }
  if (saved.value !== undefined) {
    const { changeOrder } = await import('./files.js')
    const changed = await changeOrder(String(typed.ORDER), input.value.text ?? '', saved.value)
    if (!changed.ok) return tellProblems(changed.problems)
  }
  if (typed.json === true)
    process.stdout.write((await import('../compose/dry-fit-json.js')).dryFitJson(fit.value))
  else {
    say(dryFitCard(fit.value, order.value))
    if (drawn.value !== undefined) say(`Drawn: ${typed.to}\n`)
    if (saved.value !== undefined) say(`Saved in ${typed.ORDER}: the plan now turns the saw by it.\n`)
  }
  return EXIT.done
}

const ONCE = [
  'gap',
  'opens-at',
  'will-not-drop-in-by',
  'angles-by',
  'lengths-by',
  'cut-at',
  'clean-up',
  'to',
] as const

const fitOf = (typed: Typed, order: Order): Outcome<DryFit> => {
  const star = oneStar(order)
  if (!star.ok) return star
  const terms = { cutAt: text(typed['cut-at']), cleanUp: text(typed['clean-up']) }
  return fitAsWritten(star.value, writtenOf(typed), terms, order)
}

const oneStar = (order: Order): Outcome<StarPlan> => {
  const names = order.stars.map(({ name }) => showGiven(name))
  if (names.length > 1) {
    return refused([
      {
        place: '--star',
        given: 'nothing',
        advice: `The order has ${names.length} stars: say which one was dry-fitted, ${names.join(', ')}.`,
      },
    ])
  }
  const plan = planOrder(order)
  if (!plan.ok) return plan
  const [star] = plan.value.stars
  if (!star) throw new Error('an order has a star')
  return done(star)
}

const text = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined)

/** Repeated flags are measurements of several arms. */
const texts = (value: unknown): readonly string[] =>
  (Array.isArray(value) ? value : [value]).filter((each) => typeof each === 'string')

const writtenOf = (typed: Typed): WrittenMeasurements => ({
  gap: text(typed.gap),
  opensAt: text(typed['opens-at']),
  willNotDropInBy: text(typed['will-not-drop-in-by']),
  tip: texts(typed['measured-tip']),
  side: texts(typed['measured-side']),
  centre: texts(typed['measured-centre']),
  tipEdge: texts(typed['measured-tip-edge']),
  across: texts(typed['measured-across']),
  anglesBy: text(typed['angles-by']),
  lengthsBy: text(typed['lengths-by']),
})

/** The order's text with the bias in it, where --save asks for it. */
const biasedText = (typed: Typed, input: OrderInput, fit: DryFit): Outcome<string | undefined> => {
  if (typed.save !== true) return done(undefined)
  const file = text(typed.ORDER)
  if (file === undefined || file === STANDARD_INPUT || input.text === undefined) {
    const given = file === undefined ? 'an order from flags' : 'an order from standard input'
    return refused([
      { place: '--save', given, advice: 'Name an order file to keep the bias in, or leave --save out.' },
    ])
  }
  if (fit.verdict === 'unknown') {
    const advice = 'Nothing measured tells the bias. Measure the gap at the last joint.'
    return refused([{ place: '--save', given: 'no bias', advice }])
  }
  if (fit.verdict === 'unsure') {
    const advice =
      'What was measured is not told apart from a ring that closes. Measure the gap more finely, then save.'
    return refused([{ place: '--save', given: 'a bias that may be none', advice }])
  }
  const { learned, uncertainty } = fit.setting
  return withBias(input.text, { miter: learned, uncertainty })
}

const drawingOf = async (
  { to }: Typed,
  fit: DryFit,
  order: Order,
): Promise<Outcome<FileContent | undefined>> => {
  if (typeof to !== 'string') return done(undefined)
  const kind = fileKind(to, ['.svg', '.pdf'])
  if (!kind.ok) return kind
  const { dryFitDrawing } = await import('../compose/dry-fit-drawing.js')
  const drawing = dryFitDrawing(fit, order)
  if (kind.value === '.svg') return done((await import('../write/svg.js')).writeSvg(drawing))
  const { cardBook } = await import('../paper/card-book.js')
  const { pdfChunks } = await import('../write/pdf.js')
  return done(() => pdfChunks({ ...cardBook([drawing], order), title: drawing.title }))
}
