import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Plugin } from 'vite'

const { resolve } = createRequire(import.meta.url)

/** Drawings and fonts as the build bundles them: an SVG as its text, a TTF as its bytes. */
export const bundledFiles: Plugin = {
  name: 'bundled-files',
  enforce: 'pre',
  resolveId: (id) => (id.endsWith('.ttf') && !id.startsWith('/') ? resolve(id) : undefined),
  load: (id) => {
    if (id.endsWith('.svg')) return `export default ${JSON.stringify(readFileSync(id, 'utf8'))}`
    if (!id.endsWith('.ttf')) return undefined
    const packed = readFileSync(id).toString('base64')
    return `export default Uint8Array.from(atob('${packed}'), (sign) => sign.charCodeAt(0))`
  },
}
