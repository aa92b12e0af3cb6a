/** What a sum of columns must keep to. */
export interface Row {
  readonly lower: number
  readonly upper: number
}

/** A quantity from 0 to `upper`, what one of it costs, and its part in each row. */
export interface Column {
  readonly cost: number
  readonly upper: number
  readonly parts: readonly (readonly [row: number, part: number])[]
}

/** A linear program to which columns are added; each time it is solved on from where it stood. */
export interface GrowingProgram {
  readonly add: (columns: readonly Column[]) => void
  readonly bound: (row: number, bounds: Row) => void
  /** Undefined when it has no answer, or not in this time. */
  readonly solve: (seconds: number) => LinearAnswer | undefined
}

export interface LinearAnswer {
  readonly quantities: readonly number[]
  /** What one more of each row would cost. */
  readonly rowPrices: readonly number[]
}

/** Whole quantities at least cost. */
export interface WholeAnswer {
  readonly quantities: readonly number[]
  /** No whole quantities cost less than this. */
  readonly bound: number
}

export interface Solver {
  readonly growing: <Value>(rows: readonly Row[], use: (program: GrowingProgram) => Value) => Value
  /** @param start quantities known to keep all rows */
  readonly whole: (
    rows: readonly Row[],
    columns: readonly Column[],
    start: readonly number[],
    seconds: number,
  ) => WholeAnswer | undefined
}
