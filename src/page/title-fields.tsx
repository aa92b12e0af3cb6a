import { DEFAULTS } from '../order/defaults.js'
import { useBench } from './bench.js'
import { type FieldWords, MoreFields } from './more-fields.js'

const TITLE_BLOCK: readonly FieldWords[] = [
  { place: ['date'], label: 'Date of issue', hint: 'such as 2026-11-28; on every page' },
  { place: ['creator'], label: 'Drawn by', hint: 'on every page', words: true },
]

const NEAREST: FieldWords = {
  place: ['nearest'],
  label: 'Fractions to the nearest',
  choices: [DEFAULTS.nearest, '1/8', '1/16', '1/64'].map((value) => ({ value, words: `${value} in` })),
}

/** What the title block of every page says, and how fine the fractions on it are. */
export const TitleFields = () => {
  const { units } = useBench().plan.order.lengths
  return (
    <MoreFields name="For the title block" fields={[...TITLE_BLOCK, ...(units === 'in' ? [NEAREST] : [])]} />
  )
}
