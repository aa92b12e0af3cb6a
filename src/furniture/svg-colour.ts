/** The basic colour keywords of CSS 2.1, 4.3.6. */
const NAMED: ReadonlyMap<string, string> = new Map([
  ['black', '#000000'],
  ['silver', '#c0c0c0'],
  ['gray', '#808080'],
  ['white', '#ffffff'],
  ['maroon', '#800000'],
  ['red', '#ff0000'],
  ['purple', '#800080'],
  ['fuchsia', '#ff00ff'],
  ['green', '#008000'],
  ['lime', '#00ff00'],
  ['olive', '#808000'],
  ['yellow', '#ffff00'],
  ['navy', '#000080'],
  ['blue', '#0000ff'],
  ['teal', '#008080'],
  ['aqua', '#00ffff'],
  ['orange', '#ffa500'],
])

/** `#rrggbb`; undefined when it is none of `#rgb`, `#rrggbb` and the basic names. */
export const readColour = (written: string): string | undefined => {
  const text = written.toLowerCase()
  if (/^#[\da-f]{6}$/.test(text)) return text
  if (/^#[\da-f]{3}$/.test(text)) return text.replace(/[\da-f]/g, '$&$&')
  return NAMED.get(text)
}
