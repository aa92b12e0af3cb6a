const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** Text as it stands in SVG and HTML, between tags or in double quotes. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign)
