import { createHash } from 'node:crypto'
import type { Plugin } from 'vite'
import { packedParts, type WorkerFiles } from './packed-parts.js'

/**
 * Puts scripts, styles and the worker's parts into the page itself, and a Content-Security-Policy that lets nothing
 * else run and nothing be fetched. The parts lie there compressed, as text that is no script until it is used, behind
 * the page's own script: it runs as soon as it is read, and draws while they are read.
 */
export const oneFile = (worker: WorkerFiles): Plugin => ({
  name: 'one-file',
  enforce: 'post',
  async generateBundle(_, bundle) {
    const texts = { script: '', style: '' }
    for (const [name, part] of Object.entries(bundle)) {
      if (part.type === 'chunk') texts.script += part.code
      else if (name.endsWith('.css')) texts.style += String(part.source)
      else continue
      delete bundle[name]
    }
    const page = Object.values(bundle).find(({ fileName }) => fileName.endsWith('.html'))
    if (page?.type !== 'asset') throw new Error('there is no page')
    // An inline script ends at the first closing tag, wherever it stands.
    const script = `(()=>{"use strict";${inAscii(texts.script).replaceAll('</script', '<\\/script')}})()`
    const policy = [
      "default-src 'none'",
      `script-src ${hashOf(script)} blob:`,
      'worker-src blob:',
      `style-src ${hashOf(texts.style)}`,
      "base-uri 'none'",
      "form-action 'none'",
    ].join('; ')
    const head = `<meta http-equiv="Content-Security-Policy" content="${policy}" />\n    <style>${texts.style}</style>`
    const packed = (await packedParts(worker)).map(
      ({ name, needs, text }) =>
        `<script type="text/plain" id="part-${name}" data-needs="${needs.join(' ')}">${text}</script>`,
    )
    page.source = String(page.source)
      .replace(/<script[^>]*><\/script>|<link rel="stylesheet"[^>]*>/g, '')
      .replace('</title>', () => `</title>\n    ${head}`)
      .replace('</body>', () => `  <script>${script}</script>\n    ${packed.join('\n    ')}\n  </body>`)
  },
})

/** One sign beyond Latin-1 would have the browser keep two bytes for each sign of the page, and read it more slowly. */
const inAscii = (script: string): string => {
  const escaped = script.match(/\\[^\0-\x7f]/)
  if (escaped) throw new Error(`the script escapes ${escaped[0]}, which cannot be escaped once more`)
  return script.replaceAll(/[^\0-\x7f]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`
