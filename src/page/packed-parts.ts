import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { gzipAsync } from '@gfx/zopfli'
import { build, type Plugin } from 'vite'
import { bundledFiles } from './bundled-files.js'
import { FIRST_PART, WORKER_PART } from './part-names.js'

/** A piece of the worker, compressed, that is unpacked when it is first used. */
export interface PackedPart {
  readonly name: string
  /** Parts whose addresses its code names. */
  readonly needs: readonly string[]
  readonly text: string
}

/** A piece before it is compressed. */
type LoosePart = Omit<PackedPart, 'text'> & { readonly content: string | Uint8Array }

/** Where the worker's code begins: what unpacks it, and what it does. */
export interface WorkerFiles {
  readonly start: string
  readonly worker: string
}

/** Wherever one part names another, however the bundler quotes it. */
const ON_USE = /\bimport\(\s*["'`]\.\/([\w.-]+)["'`]\s*\)/g
const AT_ONCE = /(\bfrom\s*|\bimport\s*)["'`]\.\/([\w.-]+)["'`]/g

/**
 * The worker and everything it uses: one part that lays out, and one for each thing the library imports on use, as the
 * code and the font for PDF. What one part imports from another at once is named `part:NAME` until both have addresses.
 */
export const packedParts = async ({ start, worker }: WorkerFiles): Promise<PackedPart[]> => {
  const fonts = new Map<string, string>()
  const plugins = [withoutWoff2, fontParts(fonts), bundledFiles]
  const code = [
    ...(await codeParts(start, FIRST_PART, 'iife', plugins)),
    ...(await codeParts(worker, WORKER_PART, 'es', plugins)),
  ]
  const parts: readonly LoosePart[] = [
    ...code,
    ...[...fonts].map(([name, path]) => ({ name, needs: [], content: readFileSync(path) })),
  ]
  return Promise.all(parts.map(async ({ content, ...part }) => ({ ...part, text: await packed(content) })))
}

const codeParts = async (
  entry: string,
  name: string,
  format: 'iife' | 'es',
  plugins: Plugin[],
): Promise<LoosePart[]> => {
  const result = await build({
    configFile: false,
    // pdfkit asks where it stands, to look for fonts beside it; it is given its font instead.
    define: { 'import.meta.url': '"file:///"' },
    logLevel: 'warn',
    plugins,
    build: {
      write: false,
      target: 'es2022',
      lib: { entry, formats: [format], name: 'worker', fileName: () => name },
      // A library's white space would stay: a bundler was to take it out later.
      rolldownOptions: { output: { chunkFileNames: '[name].js', minify: true } },
    },
  })
  const outputs = (Array.isArray(result) ? result : [result]).flatMap((each) =>
    'output' in each ? each.output : [],
  )
  return outputs.map((output) => {
    if (output.type !== 'chunk') throw new Error(`${output.fileName} is no part of the worker`)
    return codePart(output.fileName, output.code)
  })
}

const codePart = (name: string, code: string): LoosePart => {
  const needs = [...code.matchAll(AT_ONCE)].map(([, , part = '']) => part)
  const placed = code
    .replaceAll(ON_USE, (_, part: string) => `self.part(${JSON.stringify(part)})`)
    .replaceAll(AT_ONCE, (_, before: string, part: string) => `${before}"part:${part}"`)
  return { name, needs: [...new Set(needs)], content: placed }
}

/** A font as its bytes, which compress far better than their text; it is unpacked when a PDF needs it. */
const fontParts = (fonts: Map<string, string>): Plugin => ({
  name: 'font-parts',
  enforce: 'pre',
  load: (id) => {
    if (!id.endsWith('.ttf')) return undefined
    fonts.set(basename(id), id)
    return `export default await self.partBytes(${JSON.stringify(basename(id))})`
  },
})

/** fontkit unpacks WOFF2 fonts by a dictionary of 80 kB, and the one font we have is none. */
const withoutWoff2: Plugin = {
  name: 'without-woff2',
  enforce: 'pre',
  resolveId: (id) => (id === 'brotli/decompress.js' ? NO_WOFF2 : undefined),
  load: (id) =>
    id === NO_WOFF2 ? "export default () => { throw new Error('fonts are not read from WOFF2') }" : undefined,
}

const NO_WOFF2 = '\0no-woff2'

const packed = async (content: string | Uint8Array): Promise<string> =>
  Buffer.from(await gzipAsync(content, { numiterations: ROUNDS })).toString('base64')

/** Of the search for the shortest; three times as many spare another 64 bytes. */
const ROUNDS = 5
