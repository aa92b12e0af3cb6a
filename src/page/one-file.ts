import { createHash } from 'node:crypto'
import { gzipSync } from 'node:zlib'
import { build, type Plugin } from 'vite'
import { bundledFiles } from './bundled-files.js'

/**
 * Puts scripts, styles and the worker's code into the page itself, and a Content-Security-Policy that lets nothing
 * else run and nothing be fetched. The worker lies there compressed, as text that is no script until it is used.
 */
export const oneFile = (worker: string): Plugin => ({
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
    const script = texts.script.replaceAll('</script', '<\\/script')
    const policy = [
      "default-src 'none'",
      `script-src ${hashOf(script)} blob:`,
      'worker-src blob:',
      `style-src ${hashOf(texts.style)}`,
      "base-uri 'none'",
      "form-action 'none'",
    ].join('; ')
    const head = `<meta http-equiv="Content-Security-Policy" content="${policy}" />\n    <style>${texts.style}</style>`
    const packed = `<script type="text/plain" id="worker-code">${await packedWorker(worker)}</script>`
    page.source = String(page.source)
      .replace(/<script[^>]*><\/script>|<link rel="stylesheet"[^>]*>/g, '')
      .replace('</title>', () => `</title>\n    ${head}`)
      .replace('</body>', () => `  ${packed}\n    <script type="module">${script}</script>\n  </body>`)
  },
})

const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`

/** The worker and everything it uses in one script, compressed. */
const packedWorker = async (entry: string): Promise<string> => {
  const result = await build({
    configFile: false,
    // pdfkit asks where it stands, to look for fonts beside it; it is given its font instead.
    define: { 'import.meta.url': '"file:///"' },
    logLevel: 'warn',
    plugins: [bundledFiles],
    build: {
      write: false,
      target: 'es2022',
      lib: { entry, formats: ['iife'], name: 'worker', fileName: 'worker' },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  })
  const outputs = Array.isArray(result) ? result : [result]
  const [chunk] = outputs.flatMap((each) => ('output' in each ? each.output : []))
  if (chunk?.type !== 'chunk') throw new Error('there is no worker')
  return gzipSync(chunk.code, { level: 9 }).toString('base64')
}
