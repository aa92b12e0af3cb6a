import { defineConfig } from 'vitest/config'
import { bundledFiles } from '../src/page/bundled-files.js'

export default defineConfig({
  plugins: [bundledFiles],
  test: { include: ['test/**/*.test.ts'], root: '.', testTimeout: 120_000, hookTimeout: 120_000 },
})
