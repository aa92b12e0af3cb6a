#!/usr/bin/env node
import { loadRun } from './load-run.js'

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // The reader of a pipe has gone, as in `starwright plan | head`: nothing is left to tell.
  if (error.code !== 'EPIPE') throw error
  process.exit(0)
})
loadRun()
  .run(process.argv.slice(2))
  .then((code) => {
    process.exitCode = code
  })
