/** Common practice, no published source; the hand distance is half as much again as AS/NZS 62841.3.9:2020 asks for. */
export const JIG_STOCK = {
  thickness: 12,
  side: 'right',
  screw: 4,
  pilot: 2.5,
  bolt: 6.5,
  clampAcross: 25,
  clampAlong: 30,
  clampSlot: 6,
  hands: 150,
  register: 80,
  tolerance: 0.3,
  clearance: 10,
  fit: 0.1,
}
