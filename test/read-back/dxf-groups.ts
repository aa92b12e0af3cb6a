/** One group of a DXF file: a code line and a value line. */
export interface Group {
  readonly code: number
  readonly value: string
}

/** The groups of an ASCII DXF file; refuses what is not whole. Source: AutoCAD DXF reference, "Group code format". */
export const dxfGroups = (text: string): Group[] => {
  const lines = text.split('\r\n')
  if (lines.pop() !== '' || lines.length % 2 !== 0)
    throw new Error('the file does not end with a whole group')
  return Array.from({ length: lines.length / 2 }, (_, index) => {
    const [code = '', value = ''] = lines.slice(2 * index, 2 * index + 2)
    if (!/^ {0,2}\d{1,3}$/.test(code)) throw new Error(`line ${2 * index + 1} is no group code: ${code}`)
    return { code: Number(code), value }
  })
}

/** Real numbers: groups 10 to 59 (AutoCAD DXF reference, "Group code value types"). */
export const isReal = ({ code }: Group): boolean => code >= 10 && code <= 59

/** The value that follows a header variable's name. */
export const headerValues = (groups: readonly Group[], name: string): string[] => {
  const start = groups.findIndex(({ code, value }) => code === 9 && value === name)
  if (start < 0) return []
  const rest = groups.slice(start + 1)
  const end = rest.findIndex(({ code }) => code === 9 || code === 0)
  return rest.slice(0, end).map(({ value }) => value)
}

/** Everything from a group 0 up to the next: an entity, a table's entry, a section's begin or end. */
export interface DxfRecord {
  readonly type: string
  readonly groups: readonly Group[]
}

export const dxfRecords = (groups: readonly Group[]): DxfRecord[] => {
  const starts = groups.flatMap(({ code }, index) => (code === 0 ? [index] : []))
  return starts.map((start, index) => ({
    type: groups[start]?.value ?? '',
    groups: groups.slice(start + 1, starts[index + 1]),
  }))
}

export const valuesOf = ({ groups }: DxfRecord, wanted: number): string[] =>
  groups.filter(({ code }) => code === wanted).map(({ value }) => value)
