import { PRINT_CAUTION } from '../compose/cautions.js'
import { PAPER_NAMES } from '../tables/paper.js'
import { useBench } from './bench.js'
import { DrawnSvg } from './drawn.js'
import { ChoiceField, TextField } from './field.js'
import type { Work } from './use-worker.js'
import type { Ask } from './work.js'

const ENDINGS = ['pdf', 'svg', 'dxf']

const CUTTERS = [
  { value: 'laser', words: 'laser' },
  { value: 'router', words: 'router' },
  { value: 'hand', words: 'hand saw' },
]

/** The paper, every drawing on its pages, and the files to save. */
export const PaperPart = ({
  work,
  ask,
  stop,
  lay,
  saveOrder,
}: {
  readonly work: Work
  readonly ask: (message: Ask) => void
  readonly stop: () => void
  readonly lay: () => void
  readonly saveOrder: () => void
}) => {
  const { document, job } = useBench()
  const laid = work.laid?.order
  // Files of an order that has been changed since are not offered.
  const outdated = work.laid?.text !== job.text
  const onRoll = document.hasIn(['shop', 'paper', 'roll'])
  return (
    <section aria-labelledby="paper-heading" class="part">
      <h2 id="paper-heading">The paper and the files</h2>
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
        <TextField place={['shop', 'paper', 'roll']} label="Roll, its width" hint="instead of sheets" />
        <TextField
          place={['shop', 'paper', 'printed', 'across']}
          label="Print check, across"
          hint="what you measured of 150 mm, or of 6 in"
        />
        <TextField place={['shop', 'paper', 'printed', 'along']} label="Print check, along" />
        <ChoiceField place={['shop', 'cutter', 'kind']} label="The backing is cut by" choices={CUTTERS} />
      </div>
      <p class="caution">{PRINT_CAUTION}</p>
      <p role="status" aria-live="polite" class="doing">
        {work.doing !== undefined && (
          <>
            <span>Laying out: {work.doing}</span>{' '}
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
        {laid && `${laid.sheets} sheets to print in all.`}
      </p>
      {laid?.drawings.map(({ title, sheets, map, files }) => (
        <figure key={title} class="laid">
          <DrawnSvg title={`${title}: its pages`} svg={map} />
          <figcaption>
            <strong>{title}</strong>, {sheets} {sheets === 1 ? 'sheet' : 'sheets'}
            <span class="files">
              {ENDINGS.flatMap((ending) => files.filter((path) => path.endsWith(`.${ending}`))).map(
                (path) => (
                  <button
                    key={path}
                    type="button"
                    disabled={outdated}
                    onClick={() => ask({ ask: 'file', path })}
                  >
                    Save {path.split('.').at(-1)?.toUpperCase()}
                    <span class="unseen"> of {title}</span>
                  </button>
                ),
              )}
            </span>
          </figcaption>
        </figure>
      ))}
      {laid && (
        <p class="files">
          {laid.files.map((path) => (
            <button key={path} type="button" disabled={outdated} onClick={() => ask({ ask: 'file', path })}>
              Save {path}
            </button>
          ))}
          <button type="button" class="first" disabled={outdated} onClick={() => ask({ ask: 'archive' })}>
            Save everything in one archive
          </button>
        </p>
      )}
      <p class="files">
        <button type="button" onClick={saveOrder}>
          Save the order
        </button>
      </p>
    </section>
  )
}
