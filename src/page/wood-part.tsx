import { boardLines, countText } from '../compose/card-words.js'
import { thickText } from '../compose/thickness-words.js'
import { DEFAULTS } from '../order/defaults.js'
import { countAt, type OrderPlace } from '../order/edit-text.js'
import type { Order } from '../order/order.js'
import { usualEdge, usualGap } from '../order/to-plate.js'
import type { StarPlan } from '../plan/plan.js'
import { showLength } from '../units/show.js'
import { useBench } from './bench.js'
import { DrawnSvg } from './drawn.js'
import { ifEmpty } from './field.js'
import { FileButtons } from './file-buttons.js'
import { type FieldWords, MoreFields } from './more-fields.js'
import { PanelsPart } from './panels-part.js'
import { Part } from './part.js'
import { Rows } from './rows.js'
import type { Work } from './use-worker.js'
import { ownWoodFields, speciesFields } from './wood-fields.js'
import { WorkedOut } from './worked-out.js'

const BOARD_COLUMNS = [
  { key: 'name', label: 'Name', hint: 'as chalked on its end', words: true },
  { key: 'width', label: 'True width' },
  { key: 'thickness', label: 'Thickness' },
  { key: 'length', label: 'Length' },
  { key: 'price', label: 'Price' },
  { key: 'count', label: 'How many there are', hint: 'empty: as many as needed' },
]
const DEFECT_COLUMNS = [
  { key: 'from', label: 'From' },
  { key: 'to', label: 'To' },
]
const PANEL_COLUMNS = [
  { key: 'length', label: 'Length' },
  { key: 'width', label: 'Width' },
  { key: 'thickness', label: 'Thickness' },
  { key: 'price', label: 'Price' },
]

const AS_OTHERS = { species: 'as the other boards', rings: 'as in the other boards' }

const MORE_OF_BOARDS: readonly FieldWords[] = [
  {
    place: ['shop', 'end-allowance'],
    label: 'Bad end of each board',
    hint: 'cut off before the first arm; empty: none',
  },
  {
    place: ['shop', 'sound'],
    label: 'Free of defects must be',
    choices: [
      { value: 'arm', words: 'the arm; its waste may hold a knot' },
      { value: 'blank', words: 'the whole blank' },
    ],
  },
  {
    place: ['shop', 'rip-kerf'],
    label: 'Kerf of the blade that rips wide boards',
    hint: 'empty: a board gives one strip',
  },
]

const MORE_OF_PANELS: readonly FieldWords[] = [
  {
    place: ['shop', 'panel-seed'],
    label: 'Another try at laying them',
    hint: `any whole number; the same lays them alike every time; empty: ${DEFAULTS.panelSeed}`,
  },
]

const moreOfPanel = (place: OrderPlace, { lengths, shop }: Order): readonly FieldWords[] => [
  {
    place: [...place, 'edge'],
    label: 'Kept free all round',
    hint: ifEmpty(usualEdge(shop.cutter), lengths),
  },
  {
    place: [...place, 'gap'],
    label: 'Between two plates',
    hint: ifEmpty(usualGap(shop.cutter), lengths),
  },
  { place: [...place, 'density'], label: 'Density', hint: 'such as 680 kg/m³; for the weight that hangs' },
]

/** Boards and panels, and what of them this star takes. */
export const WoodPart = ({
  star,
  work,
  stop,
  lay,
}: {
  readonly star: StarPlan
  readonly work: Work
  readonly stop: () => void
  readonly lay: () => void
}) => {
  const { plan, document } = useBench()
  const { order } = plan
  const metric = order.lengths.units === 'mm'
  const { boards } = work.laid?.order ?? {}
  const boardless = order.shop.boards.length === 0
  return (
    <Part name="wood">
      <p class="live" aria-live="polite">
        {countText(star)}. {boardLines(star, order).join('. ')}.
        {star.thickness !== undefined && ` Arms ${showLength(star.thickness, order.lengths)} thick.`}
        {star.backing &&
          ` Backing ${showLength(star.backing.across, order.lengths)} × ${showLength(star.backing.height, order.lengths)}${thickText(star.plateThickness, order.lengths)}, ${star.order.quantity} to cut.`}
      </p>
      <Rows
        place={['shop', 'boards']}
        columns={BOARD_COLUMNS}
        name="Board"
        count={countAt(document, ['shop', 'boards'])}
        fresh={
          metric
            ? { width: 95, thickness: 19, length: 2400 }
            : { width: '3 1/2', thickness: '3/4', length: '8 ft' }
        }
        more={(place) => (
          <MoreFields
            name="Defects and wood of this board"
            fields={[
              ...speciesFields(document, [...place, 'wood'], AS_OTHERS),
              ...ownWoodFields([...place, 'wood']),
            ]}
          >
            <p class="hint">
              A defect: knot, split or nail hole that no arm may touch, measured from the end that is marked
              as the board's first.
            </p>
            <Rows
              place={[...place, 'defects']}
              columns={DEFECT_COLUMNS}
              name="Defect"
              of={` of board ${Number(place.at(-1)) + 1}`}
              count={countAt(document, [...place, 'defects'])}
              fresh={metric ? { from: 0, to: 50 } : { from: 0, to: 2 }}
            />
          </MoreFields>
        )}
      />
      <MoreFields name="More about the boards" fields={MORE_OF_BOARDS} />
      <Rows
        place={['shop', 'panels']}
        columns={PANEL_COLUMNS}
        name="Panel"
        count={countAt(document, ['shop', 'panels'])}
        fresh={
          metric
            ? { length: 1500, width: 1500, thickness: 4 }
            : { length: '4 ft', width: '2 ft', thickness: '1/4' }
        }
        more={(place) => <MoreFields name="More about this panel" fields={moreOfPanel(place, order)} />}
      />
      <MoreFields name="More about the panels" fields={MORE_OF_PANELS} />
      {(boards || !boardless) && (
        <>
          <h3>The cheapest of these boards for all stars</h3>
          <WorkedOut what="Boards to take">
            {boards && (
              <>
                <p>{boards.words.join(' ')}</p>
                {boards.sheet !== undefined && (
                  <DrawnSvg title="Cutting list: every board with its marks" svg={boards.sheet} wide />
                )}
                {boards.files.length > 0 && (
                  <p class="files">
                    <FileButtons paths={boards.files} of="the cutting list" />
                  </p>
                )}
              </>
            )}
          </WorkedOut>
        </>
      )}
      <PanelsPart work={work} stop={stop} lay={lay} />
    </Part>
  )
}
