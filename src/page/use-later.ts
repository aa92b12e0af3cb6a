import { useEffect, useState } from 'preact/hooks'

/**
 * What the value was, until the page has been painted with the new one everywhere else: for drawings that take longer
 * than the star that is being pulled. An effect runs after the next painting, or soon where nothing is painted.
 */
export const useLater = <Value>(value: Value): Value => {
  const [shown, setShown] = useState(value)
  useEffect(() => setShown(value), [value])
  return shown
}

/** False until the page has been painted once. */
export const usePainted = (): boolean => {
  const [painted, setPainted] = useState(false)
  useEffect(() => {
    const frame = requestAnimationFrame(() => setTimeout(() => setPainted(true)))
    return () => cancelAnimationFrame(frame)
  }, [])
  return painted
}
