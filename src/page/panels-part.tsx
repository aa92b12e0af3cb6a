import { isBacked, takesPanels } from '../panels/panel-plan.js'
import { useBench } from './bench.js'
import { FileButtons } from './file-buttons.js'
import { FiledFigure } from './filed-figure.js'
import type { Work } from './use-worker.js'
import type { LaidPanels } from './work.js'
import { WorkedOut } from './worked-out.js'

/** All backings of the order on its panels: what to buy, and where each plate lies. */
export const PanelsPart = ({
  work,
  stop,
  lay,
}: {
  readonly work: Work
  readonly stop: () => void
  readonly lay: () => void
}) => {
  const { plan } = useBench()
  const panels = work.laid?.order.panels
  if (!plan.stars.some(isBacked)) return null
  return (
    <>
      <h3>The backings on panels</h3>
      {panels || takesPanels(plan) ? (
        <WorkedOut what="Backings on panels" work={work} stop={stop} has={panels !== undefined}>
          {(panels || work.stopped) && (
            <>
              {panels && <Laid panels={panels} />}
              {work.doing === undefined && (work.stopped || panels?.stopped) && (
                <button type="button" onClick={lay}>
                  {work.stopped ? 'Work the panels out' : 'Search to the end'}
                </button>
              )}
            </>
          )}
        </WorkedOut>
      ) : (
        <p>Add a panel you can buy, and the backings of all stars are laid out on it.</p>
      )}
    </>
  )
}

const Laid = ({ panels }: { readonly panels: LaidPanels }) => (
  <>
    {panels.words.map((text) => (
      <p key={text} class="told">
        {text}
      </p>
    ))}
    {panels.drawings.map(({ title, holds, drawn, files }) => (
      <FiledFigure key={title} kind="panel" of={title} title={`${title}: ${holds}`} svg={drawn} files={files}>
        <strong>{title}</strong>: {holds}
      </FiledFigure>
    ))}
    <p class="files unprinted">
      How they all lie: <FileButtons paths={panels.files} of="all panels" />
    </p>
  </>
)
