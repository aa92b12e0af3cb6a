import type { ComponentChildren } from 'preact'
import { DrawnSvg } from './drawn.js'
import { FileButtons } from './file-buttons.js'

/** A drawing with words and the buttons that save its files. */
export const FiledFigure = ({
  kind,
  of,
  title,
  svg,
  files,
  children,
}: {
  readonly kind: 'laid' | 'panel'
  /** What the files are of, for whoever hears the page. */
  readonly of: string
  /** What the picture shows, likewise. */
  readonly title: string
  readonly svg: string
  readonly files: readonly string[]
  /** The words under the picture. */
  readonly children: ComponentChildren
}) => (
  <figure class={kind}>
    <DrawnSvg title={title} svg={svg} />
    <figcaption>
      {children}
      <span class="files">
        <FileButtons paths={files} of={of} />
      </span>
    </figcaption>
  </figure>
)
