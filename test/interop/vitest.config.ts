import { defineConfig } from 'vitest/config'
import { bundledFiles } from '../../src/page/bundled-files.js'

/** Apart from `npm test`: these checks need programs from Debian; `test/interop/run` installs them. */
export default defineConfig({
  plugins: [bundledFiles],
  test: { include: ['test/interop/**/*.interop.ts'], testTimeout: 120_000, hookTimeout: 120_000 },
})
