import { createHash } from 'node:crypto'

/**
 * Lists what was written and its SHA-256, in the form `sha256sum --check` reads, under the order's title. It tells our
 * own unchanged files from the maker's, and one order's folder from another's.
 */
export const CHECKSUMS = 'checksums.sha256'

export interface Sum {
  readonly path: string
  readonly sum: string
}

export interface Checksums {
  readonly title: string
  readonly sums: readonly Sum[]
}

export const sumOf = (content: Uint8Array): string => createHash('sha256').update(content).digest('hex')

/** The first row says whose list it is; `sha256sum` passes over it. */
const HEADING = '# starwright: '

/** The paths an order's files can have; whatever else a list names was not ours. */
const OUR_PATH =
  /^(?:index\.html|cut-plan\.txt|cutting-list\.(?:txt|svg|pdf)|(?:all-patterns|shop-card|print-check|panels)\.pdf|panels\/panel-[0-9]+(?:-to-[0-9]+)?-[0-9.]+x[0-9.]+mm\.(?:svg|dxf)|([a-z0-9-]+)\/\1-[a-z-]+-[0-9.]+x[0-9.]+mm\.(?:svg|dxf|pdf))$/

/** What a list says; one without our heading is not ours. */
export const readChecksumList = (list: string): Checksums | 'not ours' => {
  const [first = '', ...rows] = list.split('\n')
  if (!first.startsWith(HEADING)) return 'not ours'
  const sums = rows.flatMap((row) => {
    const [, sum = '', path = ''] = /^([0-9a-f]{64}) {2}(\S+)$/.exec(row) ?? []
    return OUR_PATH.test(path) ? [{ path, sum }] : []
  })
  return { title: first.slice(HEADING.length), sums }
}

export const checksumList = ({ title, sums }: Checksums): string =>
  [...new Set([`${HEADING}${title}\n`, ...sums.map(({ path, sum }) => `${sum}  ${path}\n`)])].join('')
