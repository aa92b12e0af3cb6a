/** Line breaks and tabs: where a text breaks, words stay apart. */
const BREAKS = /[\t\n\v\f\r\u0085\u2028\u2029]+/g

/**
 * What no text may hold: control characters (C0, DEL, C1), which end a line or a file in one format or another;
 * marks that turn the direction of reading, so that a number reads as written; halves of surrogate pairs and the
 * noncharacters, which XML 1.0 (section 2.2) refuses.
 */
const UNWANTED =
  /[\p{Cc}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/gu

/** The text on one line, without anything that a reader could take for more than text. */
export const oneLine = (text: string): string => text.replace(BREAKS, ' ').replace(UNWANTED, '').trim()
