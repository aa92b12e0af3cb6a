import type { ComponentChildren } from 'preact'
import { useMemo } from 'preact/hooks'
import { BenchContext, useBench } from './bench.js'
import { useLater } from './use-later.js'

/** Parts that follow when the star they tell of has been painted, while it is pulled; else they change with it. */
export const Following = ({
  pulled,
  children,
}: {
  readonly pulled: boolean
  readonly children: ComponentChildren
}) => {
  const bench = useBench()
  const now = useMemo(() => ({ bench, children }), [bench, children])
  const later = useLater(now)
  const shown = pulled ? later : now
  return <BenchContext.Provider value={shown.bench}>{shown.children}</BenchContext.Provider>
}
