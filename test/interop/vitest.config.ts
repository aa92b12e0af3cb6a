import { defineConfig } from 'vitest/config'

/** Apart from `npm test`: these checks need programs from Debian; `test/interop/run` installs them. */
export default defineConfig({
  test: { include: ['test/interop/**/*.interop.ts'], testTimeout: 120_000, hookTimeout: 120_000 },
})
