import DxfParser from 'dxf-parser'

// The parser loops for ever on some malformed files, which no test timeout can stop; so it runs in its own process.
process.on('message', ({ number, text }) => {
  try {
    process.send({ number, parsed: new DxfParser().parseSync(text) })
  } catch (error) {
    process.send({ number, failed: String(error) })
  }
})
