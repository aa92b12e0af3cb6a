import { spawn } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { resolve } from 'node:path'
import { platform } from 'node:process'
import { writeDrawing } from './files.js'
import type { Typed } from './order-flags.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** Where the build leaves the page, beside the command line. */
const PAGE = new URL('../page/star.html', import.meta.url)

/** What opens a file in the person's own browser. */
const OPENERS: Readonly<Record<string, readonly [string, ...string[]]>> = {
  darwin: ['open'],
  win32: ['cmd', '/c', 'start', ''],
}

/** `starwright page`: the page for the workshop, one file to open in a browser. */
export const page = async (typed: Typed): Promise<number> => {
  const file = String(typed.to ?? 'star.html')
  const written = await writeDrawing(file, await readFile(PAGE, 'utf8'), typed.replace === true)
  if (!written.ok) return tellProblems(written.problems)
  if (typed.open === true) {
    const [program, ...words] = OPENERS[platform] ?? ['xdg-open']
    const opener = spawn(program, [...words, resolve(file)], { detached: true, stdio: 'ignore' })
    opener.on('error', () => say(`No program was found that opens it: open ${file} in a browser.\n`))
    opener.unref()
  }
  if (typed.quiet !== true) say(`${file}: open it in a browser. It needs no network, and sends nothing.\n`)
  return EXIT.done
}
