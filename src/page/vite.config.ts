import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'
import { bundledFiles } from './bundled-files.js'
import { oneFile } from './one-file.js'

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

/** Builds the page: one HTML file that holds everything. */
export default defineConfig({
  root: here('.'),
  logLevel: 'warn',
  plugins: [bundledFiles, oneFile({ start: here('worker-start.ts'), worker: here('worker.ts') })],
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    outDir: here('../../dist/page'),
    emptyOutDir: true,
    target: 'es2022',
    cssCodeSplit: false,
    modulePreload: false,
    // Most of the time goes into packing the worker's parts, as it should.
    rolldownOptions: { input: here('star.html'), checks: { pluginTimings: false } },
  },
})
