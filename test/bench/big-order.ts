import { seeded } from '../stock/seeded.js'

/**
 * An order of 12 stars and 300 arms, 8 lengths of board to buy and 60 reclaimed boards, each with a width, a length and
 * defects of its own. Invented.
 *
 * @param reclaimedLengths least and most; below 1100 mm boards must be bought too
 */
export const bigOrder = (seed: number, reclaimedLengths: readonly [number, number] = [600, 2200]): string => {
  const { whole, one } = seeded(seed)
  const stars = [
    ...[70, 70, 70, 90, 90, 110].map((width, index) => ({
      name: `Five ${index + 1}`,
      points: 5,
      quantity: [5, 5, 4, 5, 5, 4][index],
      'tip-angle': [45, 45, 40, 45, 50, 45][index],
      'board-width': width,
    })),
    ...[75, 80, 95, 100].map((width, index) => ({
      name: `Six ${index + 1}`,
      points: 6,
      quantity: [5, 5, 5, 5][index],
      'tip-angle': [45, 50, 45, 50][index],
      'board-width': width,
    })),
    { name: 'Eight 1', points: 8, quantity: 3, 'tip-angle': 45, 'board-width': 85 },
    { name: 'Eight 2', points: 4, quantity: 4, 'tip-angle': 50, 'board-width': 65 },
  ]
  const bought = [1200, 1500, 1800, 2100, 2400, 3000, 3600, 4200].map((length) => ({
    width: 115,
    length,
    price: Math.round(length * 0.36 + 60) / 100,
  }))
  const reclaimed = Array.from({ length: 60 }, (_, index) => {
    const length = whole(...reclaimedLengths)
    return {
      name: `R${index + 1}`,
      width: whole(66, 140),
      length,
      price: Math.round(length * 0.12) / 100,
      count: 1,
      defects: Array.from({ length: whole(1, 4) }, () => {
        const from = whole(0, length - 80)
        return { from, to: from + one([5, 20, 40, 80]) }
      }),
    }
  })
  return JSON.stringify({
    title: 'Big order',
    shop: { saw: { limit: 60, kerf: 2.4 }, boards: [...bought, ...reclaimed] },
    stars,
  })
}
