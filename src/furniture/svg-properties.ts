import type { ArtFill, ArtStroke, ArtText } from '../drawing/artwork.js'
import { readColour } from './svg-colour.js'
import { readNumbers, readPixels } from './svg-numbers.js'
import type { Refuse } from './svg-refusal.js'
import type { SvgElement } from './svg-tree.js'

/** How an element is drawn; it takes from the element around it what it does not say itself. */
export interface Properties {
  /** `#rrggbb`; undefined for none. */
  readonly fill: string | undefined
  readonly fillRule: ArtFill['rule']
  readonly stroke: string | undefined
  /** In units of the element, like everything below. */
  readonly strokeWidth: number
  readonly dashes: readonly number[]
  readonly join: ArtStroke['join']
  readonly cap: ArtStroke['cap']
  /** SVG leaves both to the viewer, so text must name them. */
  readonly fontSize: number | undefined
  readonly fontNamed: boolean
  readonly anchor: ArtText['anchor']
  readonly keepsSpaces: boolean
}

/** What SVG takes where nothing is said (SVG 2, chapter 13). */
export const INITIAL: Properties = {
  fill: '#000000',
  fillRule: 'nonzero',
  stroke: undefined,
  strokeWidth: 1,
  dashes: [],
  join: 'miter',
  cap: 'butt',
  fontSize: undefined,
  fontNamed: false,
  anchor: 'start',
  keepsSpaces: false,
}

interface Property {
  readonly allowed: string
  readonly read: (value: string, inStyle: boolean) => Partial<Properties> | undefined
  /** What is taken where the value is refused, so that one mistake is told once. */
  readonly instead?: Partial<Properties>
}

const COLOUR_ALLOWED = 'Allowed: none, #rgb, #rrggbb or one of the 17 basic colour names, such as black.'

/** One of a few words. */
const words = <Word extends string>(
  allowed: readonly Word[],
  taken: (word: Word) => Partial<Properties>,
): Property => ({
  allowed: `Allowed: ${allowed.join(', ').replace(/, (?=[^,]*$)/, ' or ')}.`,
  read: (value) => {
    const word = allowed.find((each) => each === value)
    return word && taken(word)
  },
})

/** Properties that may be named, but only with the value that changes nothing. */
const only = (...values: readonly string[]): Property => words(values, () => ({}))

/** A line narrower than that is lost in print, and none at all would be a hairline in a PDF. */
export const NARROWEST = 0.02
export const SHORTEST_DASH = 0.05

const DRAWING: ReadonlyMap<string, Property> = new Map<string, Property>([
  ['fill', { allowed: COLOUR_ALLOWED, read: (value) => colourOf(value, (fill) => ({ fill })) }],
  ['fill-rule', words(['nonzero', 'evenodd'], (fillRule) => ({ fillRule }))],
  ['stroke', { allowed: COLOUR_ALLOWED, read: (value) => colourOf(value, (stroke) => ({ stroke })) }],
  [
    'stroke-width',
    {
      allowed: `Allowed: ${NARROWEST} or more, without a unit: 1 is 1 mm.`,
      read: (value) => {
        const strokeWidth = readPixels(value)
        return strokeWidth !== undefined && strokeWidth >= NARROWEST ? { strokeWidth } : undefined
      },
    },
  ],
  [
    'stroke-dasharray',
    {
      allowed: `Allowed: none, or up to 8 lengths of ${SHORTEST_DASH} or more, without units.`,
      read: (value) => {
        if (value === 'none') return { dashes: [] }
        const dashes = readNumbers(value)
        if (!dashes || dashes.length > 8 || dashes.some((dash) => dash < SHORTEST_DASH)) return undefined
        return { dashes: dashes.length % 2 === 0 ? dashes : [...dashes, ...dashes] }
      },
    },
  ],
  ['stroke-linejoin', words(['miter', 'round', 'bevel'], (join) => ({ join }))],
  ['stroke-linecap', words(['butt', 'round'], (cap) => ({ cap }))],
  [
    'font-size',
    {
      allowed: 'Allowed: a number above 0, in mm; in style with px after it, which is the same here.',
      read: (value, inStyle) => {
        const fontSize = inStyle && !value.endsWith('px') ? undefined : readPixels(value)
        return fontSize !== undefined && fontSize > 0 ? { fontSize } : undefined
      },
      instead: { fontSize: 1 },
    },
  ],
  [
    'font-family',
    {
      allowed: 'Allowed: sans-serif, Helvetica, Arial: the lettering is Helvetica.',
      read: (value) =>
        value.split(',').every((name) => /^(['"]?)(?:sans-serif|Helvetica|Arial)\1$/i.test(name.trim()))
          ? { fontNamed: true }
          : undefined,
      instead: { fontNamed: true },
    },
  ],
  ['text-anchor', words(['start', 'middle', 'end'], (anchor) => ({ anchor }))],
])

/** Properties that editors write out, and that may hold only what changes nothing. */
const UNCHANGING: ReadonlyMap<string, Property> = new Map<string, Property>([
  ['stroke-miterlimit', only('4')],
  ['stroke-dashoffset', only('0')],
  ['stroke-opacity', only('1')],
  ['fill-opacity', only('1')],
  ['opacity', only('1')],
  ['visibility', only('visible')],
  ['display', only('inline')],
  ['paint-order', only('normal')],
  ['font-weight', only('normal', '400')],
  ['font-style', only('normal')],
  ['font-variant', only('normal')],
  ['font-stretch', only('normal')],
  ['letter-spacing', only('normal', '0', '0px')],
  ['word-spacing', only('normal', '0', '0px')],
  ['text-decoration', only('none')],
])

const SPACE = words(['default', 'preserve'], (kept) => ({ keepsSpaces: kept === 'preserve' }))

const propertyOf = (name: string): Property | undefined => DRAWING.get(name) ?? UNCHANGING.get(name)

/** The properties that change how something is drawn. */
export const PROPERTY_NAMES: readonly string[] = [...DRAWING.keys()]

/** May it stand as an attribute? Each of them may stand in `style` too, but for the one of XML. */
export const isProperty = (name: string): boolean => name === 'xml:space' || propertyOf(name) !== undefined

const colourOf = (
  value: string,
  taken: (colour: string | undefined) => Partial<Properties>,
): Partial<Properties> | undefined => {
  if (value === 'none') return taken(undefined)
  const colour = readColour(value)
  return colour === undefined ? undefined : taken(colour)
}

/** The element's own properties over those of the element around it; `style` over attributes, as in SVG. */
export const readProperties = (element: SvgElement, around: Properties, refuse: Refuse): Properties => {
  const own = [...element.attributes]
    .filter(([name]) => isProperty(name))
    .map(([name, value]) => [name, value.trim(), false] as const)
  const styled = declarations(element, refuse).map(([name, value]) => [name, value, true] as const)
  const read = [...own, ...styled].map(([name, value, inStyle]) => {
    const property = propertyOf(name) ?? SPACE
    const taken = property.read(value, inStyle)
    if (!taken) refuse(element, [name, value], property.allowed)
    return taken ?? property.instead
  })
  return Object.assign({}, around, ...read)
}

/** `fill: none; stroke: black` as pairs. An editor's own properties begin with a dash and draw nothing. */
const declarations = (element: SvgElement, refuse: Refuse): (readonly [name: string, value: string])[] =>
  (element.attributes.get('style') ?? '')
    .split(';')
    .map((declaration) => declaration.trim())
    .filter((declaration) => declaration !== '' && !/^-[a-z]+-[\w-]+\s*:/.test(declaration))
    .flatMap((declaration) => {
      const [, name = '', value = ''] = /^([a-z-]+)\s*:\s*(\S.*)$/.exec(declaration) ?? []
      if (propertyOf(name)) return [[name, value] as const]
      refuse(element, ['style', declaration], `Allowed in style: ${PROPERTY_NAMES.join(', ')}.`)
      return []
    })
