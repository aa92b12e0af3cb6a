import { execFileSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

/** What ezdxf's `recover` and audit say of a file. */
export interface DxfAudit {
  readonly path: string
  readonly version: string
  /** `$INSUNITS`; 0 where the version has none. */
  readonly unit: number
  readonly errors: readonly string[]
  readonly fixes: readonly string[]
  readonly types: Readonly<Record<string, number>>
  readonly layers: readonly string[]
  readonly texts: readonly string[]
}

const SCRIPT = fileURLToPath(new URL('audit_dxf.py', import.meta.url))

/** Debian's own interpreter, for which Debian's ezdxf is installed. */
export const auditDxf = (paths: readonly string[]): DxfAudit[] =>
  JSON.parse(execFileSync('/usr/bin/python3', [SCRIPT, ...paths], { encoding: 'utf8', maxBuffer: 2 ** 28 }))
