import { boardLines, countText } from '../compose/card-words.js'
import { countAt } from '../order/edit-text.js'
import type { StarPlan } from '../plan/plan.js'
import { showLength } from '../units/show.js'
import { useBench } from './bench.js'
import { DrawnSvg } from './drawn.js'
import { FileButtons } from './file-buttons.js'
import { PanelsPart } from './panels-part.js'
import { Rows } from './rows.js'
import type { Work } from './use-worker.js'
import { WorkedOut } from './worked-out.js'

const BOARD_COLUMNS = [
  { key: 'width', label: 'True width' },
  { key: 'thickness', label: 'Thickness' },
  { key: 'length', label: 'Length' },
  { key: 'price', label: 'Price' },
  { key: 'count', label: 'How many there are' },
]
const PANEL_COLUMNS = [
  { key: 'length', label: 'Length' },
  { key: 'width', label: 'Width' },
  { key: 'thickness', label: 'Thickness' },
  { key: 'price', label: 'Price' },
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
    <section aria-labelledby="wood-heading" class="part">
      <h2 id="wood-heading">The boards and the panel</h2>
      <p class="live" aria-live="polite">
        {countText(star)}. {boardLines(star, order).join('. ')}.
        {star.backing &&
          ` Backing ${showLength(star.backing.across, order.lengths)} × ${showLength(star.backing.height, order.lengths)}, ${star.order.quantity} to cut.`}
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
      />
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
      />
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
    </section>
  )
}
