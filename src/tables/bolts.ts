/**
 * Clearance holes of metric bolts in mm, fine series of ISO 273, from memory: a bolt and the narrowest hole that it is
 * put through.
 */
export const CLEARANCE_HOLES: readonly { readonly bolt: string; readonly hole: number }[] = [
  { bolt: 'M2', hole: 2.2 },
  { bolt: 'M2.5', hole: 2.7 },
  { bolt: 'M3', hole: 3.2 },
  { bolt: 'M4', hole: 4.3 },
  { bolt: 'M5', hole: 5.3 },
  { bolt: 'M6', hole: 6.4 },
  { bolt: 'M8', hole: 8.4 },
  { bolt: 'M10', hole: 10.5 },
  { bolt: 'M12', hole: 13 },
  { bolt: 'M14', hole: 15 },
]
