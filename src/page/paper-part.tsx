import { PRINT_CAUTION } from '../compose/cautions.js'
import type { FurnitureTexts } from '../furniture/furniture-names.js'
import { DEFAULTS } from '../order/defaults.js'
import type { Order } from '../order/order.js'
import { PAPER_NAMES } from '../tables/paper.js'
import { useBench } from './bench.js'
import { CutterFields } from './cutter-fields.js'
import { ChoiceField, ifEmpty, TextField } from './field.js'
import { FiledFigure } from './filed-figure.js'
import { JigFields } from './jig-fields.js'
import { type FieldWords, MoreFields } from './more-fields.js'
import { OwnFurniture } from './own-furniture.js'
import { Part } from './part.js'
import type { Work } from './use-worker.js'
import { WorkedOut } from './worked-out.js'

/** The paper, every drawing on its pages, and the files to save. */
export const PaperPart = ({
  work,
  saveAll,
  stop,
  lay,
  saveOrder,
  furniture,
  onFurniture,
}: {
  readonly work: Work
  readonly saveAll: () => void
  readonly stop: () => void
  readonly lay: () => void
  readonly saveOrder: () => void
  readonly furniture: FurnitureTexts
  readonly onFurniture: (furniture: FurnitureTexts) => void
}) => {
  const { document, beside, plan, save } = useBench()
  const laid = work.laid?.order
  const onRoll = document.hasIn(['shop', 'paper', 'roll'])
  return (
    <Part name="paper">
      <div class="fields">
        {!onRoll && (
          <ChoiceField
            place={['shop', 'paper', 'size']}
            label="Sheets"
            choices={[...PAPER_NAMES, 'single'].map((value) => ({
              value,
              words: value === 'single' ? "one page of the drawing's own size" : value,
            }))}
          />
        )}
        <TextField
          place={['shop', 'paper', 'roll']}
          label="Roll, its width"
          hint="instead of sheets"
          instead={[['shop', 'paper', 'size']]}
        />
        <TextField
          place={['shop', 'paper', 'printed', 'across']}
          label="Print check, across"
          hint="what you measured of 150 mm, or of 6 in"
        />
        <TextField place={['shop', 'paper', 'printed', 'along']} label="Print check, along" />
      </div>
      <MoreFields name="More about the paper" fields={moreOfPaper(plan.order, onRoll)} />
      <CutterFields />
      <JigFields />
      <OwnFurniture furniture={furniture} onFurniture={onFurniture} />
      <p class="caution">{PRINT_CAUTION}</p>
      <p role="status" aria-live="polite" class="doing">
        {work.doing !== undefined && (
          <>
            <span>{work.doing}</span>{' '}
            <button type="button" onClick={stop}>
              Stop
            </button>
          </>
        )}
        {work.stopped && (
          <button type="button" onClick={lay}>
            Lay the pages out
          </button>
        )}
        {work.refused.map((text) => (
          <span key={text} class="problem">
            {text}
          </span>
        ))}
        {laid && beside === 'current' && `${sheetsTold(laid.sheets)} to print in all.`}
      </p>
      <WorkedOut what="Drawings on their pages">
        {laid && (
          <>
            {laid.drawings.map(({ title, sheets, notesOnly, map, files }) => (
              <FiledFigure
                key={title}
                kind="laid"
                of={title}
                title={`${title}: its pages`}
                svg={map}
                files={files}
              >
                <strong>{title}</strong>, {sheetsTold(sheets, notesOnly)}
              </FiledFigure>
            ))}
            {laid.leftOut.map((text) => (
              <p key={text}>{text}</p>
            ))}
            <p class="files">
              {laid.files.map((path) => (
                <button key={path} type="button" disabled={!save} onClick={() => save?.(path)}>
                  Save {path}
                </button>
              ))}
              <button type="button" class="first" disabled={!save} onClick={saveAll}>
                Save everything in one archive
              </button>
            </p>
          </>
        )}
      </WorkedOut>
      <p class="files">
        <button type="button" onClick={saveOrder}>
          Save the order
        </button>
      </p>
    </Part>
  )
}

/** `2 sheets, one of them for notes alone`. */
const sheetsTold = (sheets: number, notesOnly = 0): string => {
  const all = sheets === 1 ? '1 sheet' : `${sheets} sheets`
  if (notesOnly === 0) return all
  return `${all}, ${notesOnly === 1 ? 'one' : notesOnly} of them for notes alone`
}

const moreOfPaper = ({ lengths }: Order, onRoll: boolean): readonly FieldWords[] => [
  {
    place: ['shop', 'paper', 'margin'],
    label: 'Margin that the printer leaves white',
    hint: ifEmpty(DEFAULTS.margin, lengths),
  },
  {
    place: ['shop', 'paper', 'overlap'],
    label: 'Overlap of two pages',
    hint: `for tape and marks; ${ifEmpty(DEFAULTS.overlap, lengths)}`,
  },
  ...(onRoll
    ? [
        {
          place: ['shop', 'paper', 'longest'],
          label: 'Longest piece off the roll',
          hint: ifEmpty(DEFAULTS.longest, lengths),
        },
      ]
    : []),
]
