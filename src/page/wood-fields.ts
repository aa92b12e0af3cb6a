import type { OrderDocument, OrderPlace } from '../order/edit-text.js'
import { SPECIES } from '../tables/species.js'
import type { FieldWords } from './more-fields.js'

const RINGS = [
  { value: 'flat', words: "lie along the board's width" },
  { value: 'quarter', words: 'stand upright' },
]

const MOVES = ['tangential', 'radial']

/**
 * What wood boards are: a species and how its rings lie. Own figures stand instead of a species.
 *
 * @param open what it is called when neither is told; of rings only where they do not then lie flat
 */
export const speciesFields = (
  document: OrderDocument,
  place: OrderPlace,
  open: { readonly species: string; readonly rings?: string },
): readonly FieldWords[] => [
  ...(MOVES.some((key) => document.hasIn([...place, key]))
    ? []
    : [
        {
          place: [...place, 'species'],
          label: 'Species',
          choices: [
            { value: '', words: open.species },
            ...SPECIES.map(({ name }) => ({ value: name, words: name })),
          ],
        },
      ]),
  {
    place: [...place, 'rings'],
    label: "The rings in the board's end",
    choices: [...(open.rings === undefined ? [] : [{ value: '', words: open.rings }]), ...RINGS],
  },
]

/** Figures of a wood that is in no table of ours. */
export const ownWoodFields = (place: OrderPlace): readonly FieldWords[] => [
  ...[
    { key: 'tangential', label: 'Moves along the rings' },
    { key: 'radial', label: 'Moves across the rings' },
  ].map(({ key, label }) => ({
    place: [...place, key],
    label,
    hint: 'for 1 % of moisture, such as 0.25 %; instead of a species',
    instead: [[...place, 'species']],
  })),
  { place: [...place, 'density'], label: 'Density, as weighed', hint: "empty: the species'" },
]
