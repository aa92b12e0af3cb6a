import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: { include: ['test/page/**/*.page.ts'], root: '.', testTimeout: 60_000, hookTimeout: 60_000 },
})
