/** What a layer is for; each shape of a drawing lies on one of them. */
export type LayerName = 'CUT-INSIDE' | 'CUT-OUTSIDE' | 'MARK' | 'PATTERN' | 'DIM' | 'NOTE' | 'GUIDE'

/** Line types after ISO 128-2: wide and narrow continuous, dashed, long-dashed dotted, long-dashed double-dotted. */
export type PenName = 'wide' | 'narrow' | 'dashed' | 'chain' | 'double-chain'

export interface Pen {
  /** mm, of the series in ISO 128-2. */
  readonly width: number
  /** Dash and gap lengths by turns, in mm; empty when continuous. */
  readonly dashes: readonly number[]
}

export interface Layer {
  readonly name: LayerName
  readonly title: string
  readonly colour: string
  /** A near one of the 255 numbered colours of DXF. */
  readonly dxfColour: number
  readonly pen: PenName
}

/** Wide to narrow is 2 : 1 (ISO 128-2). */
export const PENS: Readonly<Record<PenName, Pen>> = {
  wide: { width: 0.5, dashes: [] },
  narrow: { width: 0.25, dashes: [] },
  dashed: { width: 0.25, dashes: [3, 1.5] },
  chain: { width: 0.25, dashes: [6, 1.25, 0.25, 1.25] },
  'double-chain': { width: 0.25, dashes: [6, 1.25, 0.25, 1.25, 0.25, 1.25] },
}

/**
 * The layers in cutting order: inside cuts come before the outline that would free the part. Colours are those of
 * the Okabe-Ito palette, which colour-blind people tell apart; pens differ too, for black-and-white print.
 */
export const LAYERS: readonly Layer[] = [
  { name: 'MARK', title: 'Shallow lines and lettering', colour: '#009E73', dxfColour: 122, pen: 'narrow' },
  {
    name: 'CUT-INSIDE',
    title: 'Cut first: holes and openings',
    colour: '#CC79A7',
    dxfColour: 241,
    pen: 'wide',
  },
  { name: 'CUT-OUTSIDE', title: 'Cut last: outlines', colour: '#D55E00', dxfColour: 30, pen: 'wide' },
  { name: 'PATTERN', title: 'Outlines to read, on paper', colour: '#000000', dxfColour: 7, pen: 'wide' },
  { name: 'DIM', title: 'Dimensions', colour: '#0072B2', dxfColour: 142, pen: 'narrow' },
  { name: 'NOTE', title: 'Notes', colour: '#000000', dxfColour: 7, pen: 'narrow' },
  {
    name: 'GUIDE',
    title: 'Never cut: board, waste, centre lines',
    colour: '#56B4E9',
    dxfColour: 151,
    pen: 'narrow',
  },
]

export const layerOf = (name: LayerName): Layer => {
  const layer = LAYERS.find((each) => each.name === name)
  if (!layer) throw new RangeError(`no layer is called ${name}`)
  return layer
}

/** The pen of a shape: its own, or its layer's. */
export const penOf = ({ layer, pen }: { readonly layer: LayerName; readonly pen?: PenName }): Pen =>
  PENS[pen ?? layerOf(layer).pen]
