/** What is wrong, the lines of the order, and everything the maker is told about it. */
export type BadOrder = readonly [what: string, lines: string | readonly string[], told: readonly string[]]

/** A star with nothing wrong with it. */
export const A_STAR = 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]'

// What recurs in what the maker is told, word for word.

export const lengthAllowed = (least: number, most: number, like = '70, 70.5 mm or 2 3/4 in'): string =>
  `Allowed: a length from ${least} mm to ${most} mm, written like ${like}.`
export const SIZE_ALLOWED = lengthAllowed(5, 20000)
export const KERF_ALLOWED = `${lengthAllowed(0.1, 10, '2.4, 2.4 mm or 3/32 in')} Measure the slot of a test cut.`
/** Lengths for which 70 mm would be no example. */
export const SMALL = '12, 12.5 mm or 1/2 in'
export const inchesAllowed = (least: number, most: number, like = '2 3/4, 2 3/4 in or 70 mm'): string =>
  `Allowed: a length from ${least} in to ${most} in, written like ${like}.`
/** For a bare number that is out of range, but not in the other unit. */
export const inchesMeant = (written: number): string =>
  `Read as millimetres. If inches were meant, write ${written} in, or units: in for the whole order.`
export const mmMeant = (written: number): string =>
  `Read as inches. If millimetres were meant, write ${written} mm, or units: mm for the whole order.`
export const TIP_ANGLE_ALLOWED =
  'Allowed: an angle of more than 0 and up to 179 degrees, written like 45, 22.5 or 31,5°.'
export const LIMIT_ALLOWED =
  'Allowed: an angle from 2 to 75 degrees, written like 45, 22.5 or 31,5°. Read it off the saw: most stop between 45 and 60.'
export const DETENT_ALLOWED = 'Allowed: an angle from 0 to 75 degrees, written like 45, 22.5 or 31,5°.'
export const BIAS_ALLOWED =
  'Allowed: an angle from -5 to 5 degrees, written like -0.2 or 0,15°. Below zero the cuts come out shallower than the scale says.'
export const DETENTS_RISE =
  'Allowed: angles from small to large, each once. In a list write a decimal point, not a comma.'
export const REGULAR_ALLOWED =
  'Allowed: n/k with 5 to 24 points and k from 2 to less than half of n, such as 5/2 or 8/3.'
export const SHAPES =
  'Allowed: one of points with tip-angle, regular (such as 5/2), or points with slenderest: true.'
export const SIZES = 'Allowed: exactly one of board-width, across, height, radius, tip-edge.'
export const TEXT_ALLOWED =
  "Allowed: 1 to 60 characters on one line: Latin, Greek, Cyrillic, Armenian or Georgian letters, digits, spaces and - _ . , : ' ( ) + & # ! ½ ° × ⌀ and the like."
export const NOTE_ALLOWED =
  "Allowed: 1 to 200 characters on one line: Latin, Greek, Cyrillic, Armenian or Georgian letters, digits, spaces and - _ . , : ; ' ( ) + & # ! ? % / = ½ ° × ⌀ and the like."
export const PAPERS = 'Allowed: A4, A3, A2, A1, A0, Letter, Legal, Tabloid, ANSI-C, ANSI-D, ANSI-E or single.'
export const UNITS_ALLOWED = 'Allowed: mm or in.'
export const ORDER_KEYS = 'title, date, creator, units, nearest, shop, climate, space, jigs, stars.'
export const STAR_KEYS =
  'name, note, quantity, points, tip-angle, regular, slenderest, board-width, across, height, radius, tip-edge, chamfer, thickness, backing, wall, hardware.'
export const SHOP_KEYS =
  'saw, stop, accepted-gap, boards, panels, panel-seed, cutter, jig-stock, paper, end-allowance, wood, glue, stain, finish, sound, rip-kerf.'
export const BOARD_KEYS = 'name, width, thickness, length, price, count, defects, wood.'
export const SAW_KEYS = 'limit, kerf, reads-to, detents, crosscut, bias, repeats-to, true-to.'
export const STARS_ALLOWED =
  'Allowed: a list of one star or more, such as stars: [{ points: 5, tip-angle: 45, board-width: 70 mm }].'
export const NOT_YAML = 'given text that is not YAML or JSON.'
// The parser's complaints in plain words.
export const COLUMNS_OR_COLON =
  'Lines that belong together must begin in the same column, a key needs a colon and a space after it, and a text with a colon in it needs quotes.'
export const COLUMNS_OR_BRACKETS =
  'Lines that belong together must begin in the same column, and brackets must close.'
export const SIGN_MISSING =
  'Something is missing here: a closing quote or bracket, a comma, or the colon after a key; or the line begins in the wrong column.'
export const NO_TAGS = 'Take the tag (! or !!) out: an order needs none.'
export const QUOTE_IT = 'A value cannot begin with this sign: put quotes around the value.'
export const NO_DIRECTIVES =
  'given a line that begins with %. Orders are YAML 1.2 without directives. Take the line out.'
export const TOO_DEEP = 'order file: given lists within lists. Allowed: 20 levels. An order needs six.'
/** What follows the refusal of a character. */
export const IN_FILES = 'cannot be lettered: it can have a meaning of its own in files.'
export const NOT_SHOWN = 'cannot be lettered: it does not show.'
export const NOT_IN_FONT = 'cannot be lettered: the font of the lettering does not have it.'
export const RIGHT_TO_LEFT = 'cannot be lettered: its script runs from right to left.'
export const JOINED =
  'cannot be lettered: its script joins or stacks its signs, and they are set one by one here.'
