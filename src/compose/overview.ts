import { escaped } from '../drawing/markup.js'
import type { Drawing } from '../drawing/model.js'
import { blankIsArm } from '../geometry/kite.js'
import type { Plan, StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import { showLength, showSetting } from '../units/show.js'
import { PRINT_CAUTION, SAW_CAUTION } from './cautions.js'
import { settingText, TOO_SMALL } from './cut-steps.js'
import { sizeText } from './size-text.js'

/** A drawing and where its files lie, as far as the overview shows it. */
export interface ShownDrawing {
  readonly star: string
  readonly drawing: Drawing
  /** Below the output folder, without the ending. */
  readonly path: string
  /** Sheets of paper its PDF takes. */
  readonly sheets: number
}

/** What each kind of drawing is for, in the order of work. */
const PURPOSE: Readonly<Record<string, string>> = {
  'arm-pattern': 'Print it, lay the trial arm on it, cut by it.',
  'star-mat': 'Print it, tape it, lay the arms on it for the dry fit and the glue-up.',
  backing: 'Cut only the layer CUT-OUTSIDE; NOTE and GUIDE are to read. Or print it and saw by hand.',
  'blank-stop':
    'Stands on the fence and sets the length of the blanks. Its spacer is lifted out before the cut.',
  'arm-cradle': 'Holds the arm for both joint cuts. CUT-INSIDE first, then CUT-OUTSIDE; MARK is lettering.',
  'first-cut-wedge': 'Fence wedge for cut 1, which the saw does not reach by itself.',
  'joint-cut-wedge': 'Fence wedge for cuts 2 and 3, which the saw does not reach by itself.',
  'trial-window': 'A good arm drops through GO and stays out of NO GO.',
  'glue-up-frame': 'Its wedges push the joints closed while the glue sets.',
  'angle-gauge': 'Tip, side, centre and valley angle on one plate, to check the arms by.',
}

/**
 * A page that shows every drawing of the order and leads to its files; it needs nothing but the files beside it.
 *
 * @param planText the cut plan in words
 * @param also how many sheets all patterns together take, whether there is a cutting list, each panel, and which jigs
 *   have no drawing and why
 */
export const overview = (
  plan: Plan,
  drawings: readonly ShownDrawing[],
  planText: string,
  {
    sheets,
    boards,
    panels,
    leftOut,
  }: {
    readonly sheets: number
    readonly boards: boolean
    readonly panels: readonly Pick<ShownDrawing, 'drawing' | 'path'>[]
    readonly leftOut: readonly string[]
  },
): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(plan.order.title)}</title>
<style>${STYLE}</style>
</head>
<body>
<h1>${escaped(plan.order.title)}</h1>
<p>${escaped(PRINT_CAUTION)}</p>
<p class="caution">${escaped(SAW_CAUTION)}</p>
<ul>
<li><a href="print-check.pdf">print-check.pdf</a>: once for each printer, to find out whether it prints true to scale.</li>
<li><a href="all-patterns.pdf">all-patterns.pdf</a>: every pattern to print, in the order of work, ${sheets === 1 ? '1 sheet' : `${sheets} sheets`}.</li>
<li><a href="shop-card.pdf">shop-card.pdf</a>: one page a star to hang by the saw, and one with its jigs put together.</li>
<li><a href="cut-plan.txt">cut-plan.txt</a>: the cut plan as text, also below.</li>
<li>${boards ? BOARDS_CHOSEN : BOARDS_OPEN}</li>
${panels.length === 0 ? '' : `<li>${panelLinks(panels)}</li>\n`}</ul>
${leftOut.map((text) => `<p>${escaped(text)}</p>\n`).join('')}${plan.stars.map((star) => starSection(star, plan, drawings)).join('\n')}
<section>
<h2>Cut plan</h2>
<pre>${escaped(planText)}</pre>
</section>
</body>
</html>
`

const BOARDS_CHOSEN =
  '<a href="cutting-list.pdf">cutting-list.pdf</a>: the cheapest boards for the whole order, every cut at its distance (also as <a href="cutting-list.txt">text</a> with the price of a star, and as <a href="cutting-list.svg">SVG</a>).'

const BOARDS_OPEN =
  'The boards to buy: <code>starwright stock</code> with this order finds the cheapest, the cutting list, and the price of a star.'

/** The layout as pages, and each panel for the cutter. */
const panelLinks = (panels: readonly Pick<ShownDrawing, 'drawing' | 'path'>[]): string => {
  const links = panels.map(
    ({ drawing, path }) =>
      `${escaped(drawing.title)}: <a href="${encodeURI(path)}.svg">SVG</a> · <a href="${encodeURI(path)}.dxf">DXF</a>`,
  )
  return `<a href="panels.pdf">panels.pdf</a>: how the backings lie on panels, how many to buy. For the cutter, ${links.join('; ')}.`
}

const starSection = (star: StarPlan, plan: Plan, drawings: readonly ShownDrawing[]): string => {
  const { name, quantity, note } = star.order
  const { lengths } = plan.order
  const own = drawings.filter((shown) => shown.star === name)
  return `<section>
<h2>${escaped(name)}</h2>${note === undefined ? '' : `\n<p>${escaped(note)}</p>`}
<p>${quantity === 1 ? '1 star' : `${quantity} stars`} of ${star.star.points} points, ${escaped(showLength(star.star.across, lengths))} across.
${settings(star, plan)}</p>
${star.warnings.map(({ text }) => `<p class="caution">${escaped(text)}</p>`).join('\n')}
<div class="drawings">
${own.map((shown) => figure(shown, plan)).join('\n')}
</div>
</section>`
}

const settings = (star: StarPlan, { order: { lengths } }: Plan): string => {
  if (tooSmallForSaw(star)) return TOO_SMALL
  const first = `First cut <b>${settingText(star.firstCut)}</b>`
  return blankIsArm(star.star)
    ? `${first}, <b>${escaped(showSetting(star.blank.side, lengths))}</b> from cut to cut.`
    : `${first}, joint cuts <b>${settingText(star.jointCut)}</b>, stop <b>${escaped(showSetting(star.stop, lengths))}</b>.`
}

const figure = ({ drawing, path, sheets }: ShownDrawing, { order }: Plan): string => {
  const link = (ending: string, says: string) => `<a href="${encodeURI(path)}.${ending}">${says}</a>`
  return `<figure>
<a href="${encodeURI(path)}.svg"><img src="${encodeURI(path)}.svg" alt="${escaped(drawing.title)}"></a>
<figcaption><b>${escaped(drawing.kind.replaceAll('-', ' '))}</b>, ${escaped(sizeText(drawing.trueSize, order.lengths))}<br>
${escaped(PURPOSE[drawing.kind] ?? '')}<br>
${link('pdf', `PDF, ${sheets === 1 ? '1 sheet' : `${sheets} sheets`}`)} · ${link('svg', 'SVG')} · ${link('dxf', 'DXF')}</figcaption>
</figure>`
}

const STYLE = `
body { font: 1.05rem/1.5 system-ui, sans-serif; max-width: 72rem; margin: 2rem auto; padding: 0 1rem; color: #222; background: #fff }
h1, h2 { line-height: 1.2 }
section { border-top: 2px solid #222; margin-top: 2.5rem }
.drawings { display: grid; grid-template-columns: repeat(auto-fit, minmax(18rem, 1fr)); gap: 1.5rem }
figure { margin: 0 }
img { width: 100%; height: 20rem; object-fit: contain }
.caution { border-left: 6px solid #d55e00; padding-left: .8rem }
pre { overflow-x: auto; font-size: .85rem }
a { color: #0072b2 }
`
