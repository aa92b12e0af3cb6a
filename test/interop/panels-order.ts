/** Panels with openings, nail marks, rounded corners and tabs, cut by a router. */
export const PANELS_ORDER = `
title: Quay lanterns
shop:
  panels: [{ length: 1220, width: 610, thickness: 4, edge: 12, gap: 9 }]
  cutter: { kind: router, bit: 3, tabs: 3 }
stars:
  - { name: Quay, quantity: 6, points: 5, tip-angle: 45, across: 320, thickness: 19, backing: { shape: star, inset: 12, thickness: 4, hanging: { kind: keyhole, wall: 4 }, fixing: { kind: nails, length: 15 } } }
  - { name: Mole, quantity: 5, points: 8, tip-angle: 50, across: 300, backing: { shape: disc, inset: 8, thickness: 4, hanging: { kind: cord, wall: 4 } } }
  - { name: Buoy, quantity: 4, points: 7, tip-angle: 40, across: 260, backing: { shape: star, inset: 10, thickness: 4, corner-radius: 6 } }
`
