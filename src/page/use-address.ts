import { useLayoutEffect, useRef } from 'preact/hooks'
import { followAddress } from './draft.js'

/**
 * Browsers take no more than 100 to 200 addresses in half a minute, and a pull has more: a few are written at once, then
 * one in so many milliseconds, and the last one always.
 */
const AT_ONCE = 20
const APART = 400

/** Keeps the page's address, before the page is painted: nothing is lost on reload, however soon it comes. */
export const useAddress = (address: string): void => {
  const credit = useRef({ left: AT_ONCE, since: 0 })
  useLayoutEffect(() => {
    const { left, since } = credit.current
    const now = performance.now()
    const grown = Math.min(AT_ONCE, left + (now - since) / APART)
    const write = (): void => {
      credit.current = { left: Math.max(0, grown - 1), since: performance.now() }
      const { hash } = location
      history.replaceState(null, '', address)
      followAddress(hash)
    }
    if (grown >= 1) {
      write()
      return
    }
    const timer = setTimeout(write, (1 - grown) * APART)
    return () => clearTimeout(timer)
  }, [address])
}
