import type { Drawing } from '../drawing/model.js'
import type { Mm } from '../units/brand.js'
import { fixed, type LengthStyle, showNumber } from '../units/show.js'

type TrueSize = Drawing['trueSize']

/** `142.0 × 131.4 mm`, and for an order in inches `(5 19/32 × 5 3/16 in)` after it: importers read millimetres. */
export const sizeText = ({ across, height }: TrueSize, lengths: LengthStyle): string => {
  const metric = `${mmText(across)} × ${mmText(height)} mm`
  return lengths.units === 'mm'
    ? metric
    : `${metric} (${showNumber(across, lengths)} × ${showNumber(height, lengths)} in)`
}

/** `142.0x131.4mm`, for file names. */
export const sizeInName = ({ across, height }: TrueSize): string => `${mmText(across)}x${mmText(height)}mm`

const mmText = (length: Mm): string => fixed(length, 1)
