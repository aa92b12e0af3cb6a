import * as v from 'valibot'
import { keysAllowed } from './unknown-keys.js'

/** A group of known keys; unknown ones are reported by `unknown-keys.ts`, all of them and with a suggestion. */
export function group<const Entries extends v.ObjectEntries>(entries: Entries) {
  return v.strictObject(entries, keysAllowed(Object.keys(entries)))
}

/** A list of such entries that may be left out. */
export function listOf<const Entry extends v.GenericSchema>(entry: Entry, most: number, says: string) {
  return v.optional(
    v.pipe(
      v.array(entry, 'Allowed: a list, each entry begun with a dash.'),
      v.maxLength(most, `Allowed: up to ${most} entries.`),
      v.description(says),
    ),
  )
}
