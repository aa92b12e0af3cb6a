import { seeded } from './seeded.js'

/** An order of up to three stars and nine arms, and boards of up to three kinds, some with defects and counts. */
export const smallOrder = (seed: number, ripKerf?: number): string => {
  const { whole, one } = seeded(seed)
  const stars = Array.from({ length: whole(1, 3) }, (_, index) => ({
    name: `Star ${index + 1}`,
    points: one([3, 3, 4, 5]),
    'tip-angle': one([30, 36, 45, 50, 58]),
    'board-width': one([48, 60, 66, 66, 70]),
  }))
  const board = () => {
    const length = whole(300, 1100)
    const defects = Array.from({ length: one([0, 0, 1, 2]) }, () => {
      const from = whole(0, length - 60)
      return { from, to: from + one([1, 3, 20, 60]) }
    })
    return {
      width: ripKerf === undefined ? one([60, 70, 70, 95]) : one([70, 120, 135, 140, 150]),
      length,
      price: one([0, 2, 3.5, 4.2, 5, 7.75]),
      ...(whole(0, 2) === 0 ? { count: whole(1, 4) } : {}),
      defects,
    }
  }
  const boards = Array.from({ length: whole(1, 3) }, board)
  return JSON.stringify({
    shop: {
      saw: { limit: 75, kerf: one([2.4, 3.2]) },
      boards,
      'end-allowance': one([0, 0, 15]),
      sound: one(['arm', 'arm', 'blank']),
      ...(ripKerf === undefined ? {} : { 'rip-kerf': ripKerf }),
    },
    stars,
  })
}
