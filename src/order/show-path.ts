import { showGiven } from './problem.js'
import type { Path } from './read-yaml.js'

/** A place in the order as it is told: `stars[0].tip-angle`. */
export const showPath = (path: Path): string => {
  const shown = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${plainKey(step)}`)).join('')
  return shown === '' ? 'order' : shown.replace(/^\./, '')
}

const plainKey = (key: string): string => (/^[a-z$][a-z-]{0,40}$/i.test(key) ? key : showGiven(key))
