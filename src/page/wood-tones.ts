/** How the arms are tinted on the page, light and dark by turns, to judge the star. */
export interface WoodTone {
  readonly name: string
  readonly light: string
  readonly dark: string
}

/** Heartwood of the species in the table as planed and oiled; from memory, for the eye only. Boards differ more. */
const TONES: readonly (readonly [name: string, light: string, dark: string])[] = [
  ['paper', 'none', 'none'],
  ['American basswood', '#efe0bf', '#e4d2a9'],
  ['American beech', '#dcb48d', '#cfa279'],
  ['black cherry', '#b9774f', '#a76640'],
  ['black walnut', '#7d5a40', '#6a4a33'],
  ['coast Douglas-fir', '#d9a06f', '#c98d5b'],
  ['eastern white pine', '#eed9ae', '#e3c996'],
  ['interior north Douglas-fir', '#dba678', '#cb9463'],
  ['loblolly pine', '#e4c189', '#d4ac70'],
  ['lodgepole pine', '#ead3a6', '#dcc08d'],
  ['northern white-cedar', '#dcc49a', '#cdb283'],
  ['old-growth redwood', '#a4583f', '#924a34'],
  ['ponderosa pine', '#ecd5a6', '#dfc38f'],
  ['quaking aspen', '#efe6d0', '#e3d8bd'],
  ['red alder', '#cf9f77', '#bf8e66'],
  ['red maple', '#dfc3a0', '#d1b28c'],
  ['red oak', '#cfa37c', '#be9069'],
  ['Sitka spruce', '#ecd9b0', '#e0c998'],
  ['sugar maple', '#e9d5b3', '#dcc49e'],
  ['sugar pine', '#eddcb8', '#e1cca2'],
  ['western larch', '#d3995f', '#c2874e'],
  ['western redcedar', '#b27a55', '#9f6846'],
  ['white ash', '#e3cfa9', '#d5bd92'],
  ['white fir', '#efe2c6', '#e4d4b2'],
  ['white oak', '#c8a878', '#b79664'],
  ['yellow birch', '#e0bf93', '#d2ad7e'],
  ['yellow-poplar', '#d5d0a2', '#c3be8c'],
  ['weathered grey', '#b9b6ae', '#a5a29a'],
]

export const WOOD_TONES: readonly WoodTone[] = TONES.map(([name, light, dark]) => ({ name, light, dark }))

/** Of this species; plain paper for a wood that the table does not have. */
export const toneOf = (name: string | undefined): WoodTone | undefined =>
  WOOD_TONES.find((tone) => tone.name === name) ?? WOOD_TONES[0]
