import { oneLine } from './one-line.js'

/**
 * Text as both versions hold it, in ASCII: other signs as `\U+XXXX` (AutoCAD DXF reference, group codes), and so the
 * backslash and the caret, which begin an escape themselves. A sign that needs more than four digits becomes `?`.
 * Percent signs that follow each other begin a control code (`%%d` is a degree sign); a space parts them.
 */
export const dxfText = (text: string): string =>
  [...oneLine(text).replace(/%(?=%)/g, '% ')].map(dxfSign).join('')

const dxfSign = (sign: string): string => {
  const code = sign.codePointAt(0) ?? 0
  if (code > 0xffff) return '?'
  return code > 0x7e || sign === '\\' || sign === '^'
    ? `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`
    : sign
}

/** A name of a layer or line type: letters, digits, `_`, `$` and `-`, at most 31, as R12 allows. */
export const dxfName = (name: string): string => name.replace(/[^A-Za-z0-9_$-]/g, '_').slice(0, 31)
