import { shapeExtents } from '../drawing/bounds.js'
import { notedDrawing } from '../drawing/drawing.js'
import type { Shape } from '../drawing/model.js'
import { mm } from '../units/convert.js'
import { writeSvg } from '../write/svg.js'

/** Shapes as the library draws them, as wide as the page allows, on white as on paper. */
export const Drawn = ({
  title,
  shapes,
  wide = false,
}: {
  readonly title: string
  readonly shapes: readonly Shape[]
  /** Too wide for a phone: it is moved sideways there rather than made unreadable. */
  readonly wide?: boolean
}) => {
  const { min, max } = shapeExtents(shapes)
  const drawing = notedDrawing({
    kind: 'page',
    title,
    trueSize: { across: mm(max.x - min.x), height: mm(max.y - min.y) },
    figure: shapes,
    asides: [],
    pieces: [],
  })
  return <DrawnSvg title={title} svg={writeSvg(drawing)} wide={wide} />
}

/** An SVG text of write/svg.ts, which escapes every name. */
export const DrawnSvg = ({
  title,
  svg,
  wide = false,
}: {
  readonly title: string
  readonly svg: string
  readonly wide?: boolean
}) => {
  const drawn = (
    <div
      class="drawn"
      role="img"
      aria-label={title}
      dangerouslySetInnerHTML={{ __html: svg.slice(svg.indexOf('<svg')) }}
    />
  )
  return wide ? (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what moves sideways must be reached by keys (WCAG 2.1.1)
    <section class="sideways" tabIndex={0} aria-label={`${title}, moves sideways`}>
      {drawn}
    </section>
  ) : (
    drawn
  )
}
