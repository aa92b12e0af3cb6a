/** How the arms are tinted on the page, light and dark by turns, to judge the star; the order does not know it. */
export interface WoodTone {
  readonly name: string
  readonly light: string
  readonly dark: string
}

/** Seen on planed and oiled pieces; from memory, for the eye only. */
export const WOOD_TONES: readonly WoodTone[] = [
  { name: 'paper', light: 'none', dark: 'none' },
  { name: 'spruce', light: '#ecd9b0', dark: '#e2c996' },
  { name: 'larch', light: '#d9a66c', dark: '#c98f55' },
  { name: 'oak', light: '#c8a26b', dark: '#b68f58' },
  { name: 'cherry', light: '#c07a4e', dark: '#ad6840' },
  { name: 'walnut', light: '#7d5a40', dark: '#6a4a33' },
  { name: 'weathered grey', light: '#b9b6ae', dark: '#a5a29a' },
]
