import * as v from 'valibot'
import { keysAllowed } from './unknown-keys.js'

/** A group of known keys; unknown ones are reported by `unknown-keys.ts`, all of them and with a suggestion. */
export function group<const Entries extends v.ObjectEntries>(entries: Entries) {
  return v.strictObject(entries, keysAllowed(Object.keys(entries)))
}
