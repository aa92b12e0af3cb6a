import type { Units } from '../units/read-length.js'
import { useBench } from './bench.js'
import { Select } from './select.js'

const UNITS = [
  { value: 'mm', words: 'millimetres' },
  { value: 'in', words: 'inches' },
] as const

/** What lengths are shown in, and bare ones read in. */
export const UnitsField = ({ onUnits }: { readonly onUnits: (units: Units) => void }) => (
  <Select
    id="units"
    label="Lengths in"
    value={useBench().plan.order.lengths.units}
    choices={UNITS}
    onChoose={onUnits}
  />
)
