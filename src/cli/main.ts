#!/usr/bin/env node
import { run } from './run.js'

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // The reader of a pipe has gone, as in `starwright plan | head`: nothing is left to tell.
  if (error.code !== 'EPIPE') throw error
  process.exit(0)
})
process.exitCode = await run(process.argv.slice(2))
