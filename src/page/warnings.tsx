import type { Warning } from '../plan/warnings.js'

/** What a maker must know before cutting; nothing where there is nothing. */
export const Warnings = ({ of: warnings }: { readonly of: readonly Warning[] }) =>
  warnings.length === 0 ? null : (
    <ul class="warnings">
      {warnings.map(({ code, text }) => (
        <li key={code}>{text}</li>
      ))}
    </ul>
  )
