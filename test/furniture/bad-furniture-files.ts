import { type BadDrawing, HEAD, XMLNS } from './bad-furniture.js'

const ENTITIES = 'Allowed: &amp; &lt; &gt; &quot; &apos; and numbers such as &#233;, each with its semicolon.'
const SVG_AROUND = 'Allowed: <svg xmlns="http://www.w3.org/2000/svg" ...> around the whole drawing.'

/** What a register mark holds from line 2 on and is no XML that is read. */
export const BAD_XML: readonly BadDrawing[] = [
  ['<path d="M1 1h2\u0007v1z"/>', ['mark.svg, line 2: given text that is not XML. Disallowed character.']],
  [
    '<path d="M1 1h2v1z" d="M1 1"/>',
    ['mark.svg, line 2: given text that is not XML. Duplicate attribute: d.'],
  ],
  ['<path d=M1/>', ['mark.svg, line 2: given text that is not XML. Unquoted attribute value.']],
  ['<path>', ['mark.svg, line 3: given text that is not XML. Unexpected close tag.']],
  ['&nbsp;', [`mark.svg, line 2: given an entity. ${ENTITIES}`]],
  ['&a', ['mark.svg, line 3: given text that is not XML. Unclosed tag: svg.']],
  ['<path d="M1 1h2v1z" fill="&#0;"/>', [`mark.svg, line 2: given an entity. ${ENTITIES}`]],
  [
    '<![CDATA[a]]>',
    ['mark.svg, line 2: given a CDATA section. Write the text itself, with &lt; for < and &amp; for &.'],
  ],
  ['<?php a ?>', ['mark.svg, line 2: given a processing instruction (<?...?>). Take it out.']],
  [
    '<path foo:bar="1" d="M1 1h2v1z"/>',
    ['mark.svg, line 2: given text that is not XML. Unbound namespace prefix: "foo".'],
  ],
  [
    '<path __proto__="1" d="M1 1h2v1z"/>',
    ['mark.svg, line 2: given the name "__proto__". Allowed: names that begin with a letter.'],
  ],
]

/** Whole files. */
export const BAD_FILES: readonly BadDrawing[] = [
  ['', ['mark.svg, line 1: given text that is not XML. Document must contain a root element.']],
  ['hello', ['mark.svg, line 1: given text that is not XML. Text data outside of root node.']],
  ['<svg/>', [`mark.svg, line 1: given <svg>. ${SVG_AROUND}`]],
  ['<html/>', [`mark.svg, line 1: given <html>. ${SVG_AROUND}`]],
  [
    `<svg ${XMLNS}/>`,
    [
      'mark.svg, line 1: given <svg width="">. Allowed: up to 8mm, such as width="8mm".',
      'mark.svg, line 1: given <svg height="">. Allowed: up to 8mm, such as height="8mm".',
    ],
  ],
  [
    `<svg ${XMLNS} width="9mm" height="8mm" viewBox="0 0 9 8"/>`,
    ['mark.svg, line 1: given <svg width="9mm">. Allowed: up to 8mm, such as width="8mm".'],
  ],
  [
    `<svg ${XMLNS} width="8" height="8mm" viewBox="0 0 8 8"/>`,
    ['mark.svg, line 1: given <svg width="8">. Allowed: up to 8mm, such as width="8mm".'],
  ],
  [
    `<svg ${XMLNS} width="8mm" height="8mm" viewBox="0 0 80 80"/>`,
    ['mark.svg, line 1: given <svg viewBox="0 0 80 80">. Allowed: viewBox="0 0 8 8", so that 1 is 1 mm.'],
  ],
  [
    `<svg ${XMLNS} width="8mm" height="8mm"/>`,
    ['mark.svg, line 1: given <svg viewBox="">. Allowed: viewBox="0 0 8 8", so that 1 is 1 mm.'],
  ],
  [
    `<!DOCTYPE svg [<!ENTITY a "b">]>${HEAD}\n<path d="M1 1"/>\n</svg>`,
    ['mark.svg, line 1: given a document type (<!DOCTYPE>). Take it out: a drawing needs none.'],
  ],
  [
    `<?xml version="1.1"?>${HEAD}\n\n</svg>`,
    ['mark.svg, line 1: given another version of XML. Allowed: version="1.0".'],
  ],
  [
    `<?xml version="1.0" encoding="latin1"?>${HEAD}\n\n</svg>`,
    ['mark.svg, line 1: given another encoding. Save the file as UTF-8.'],
  ],
  [
    `${HEAD}\n\n</svg>${HEAD}\n\n</svg>`,
    ['mark.svg, line 3: given text that is not XML. Documents may contain only one root.'],
  ],
]
