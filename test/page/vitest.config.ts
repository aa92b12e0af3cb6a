import { defineConfig } from 'vitest/config'

/** A busy machine draws slowly; what never comes still fails. */
const PATIENCE = 15_000

export default defineConfig({
  test: {
    include: ['test/page/**/*.page.ts'],
    root: '.',
    testTimeout: 120_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: PATIENCE } },
  },
})
