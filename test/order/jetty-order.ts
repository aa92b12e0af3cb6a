import { JIG_STOCK } from './jig-stock.js'
import { USUAL_WALL, USUAL_WOOD, usualClimate } from './usual-season.js'

/** One order written in different ways, and what it comes to. */
export const JETTY_BLOCK = `
# for the stall by the boat sheds
title: Winter fair by the lake
units: mm
nearest: 1/16
shop:
  saw:
    limit: 50°
    kerf: 2,4
    reads-to: 0.25
    detents: [0, 15, "22,5", 45 deg]
    crosscut: 30 cm
    repeats-to: 0.08°
    true-to: 0,3
  stop:
    repeats-to: 0.2 mm
  accepted-gap: 0.4
  boards:
    - name: Shed door
      width: 70
      thickness: 19
      length: 2.4 m
      price: 6.80
      count: 12
      defects:
        - from: 400
          to: 46 cm
  panels:
    - length: 1500
      width: 750 mm
      thickness: 4
      price: 24
      edge: 15
  cutter:
    kind: laser
    kerf: 0.2
    bit: 1/8 in
    dxf: r2000
  paper:
    size: a3
    margin: 8
    overlap: 12
  end-allowance: 20
  sound: blank
  rip-kerf: 3
  panel-seed: 42
space:
  across: 90 cm
  height: 600
stars:
  - name: Jetty
    quantity: 6
    points: 5
    tip-angle: 45
    board-width: 70
    chamfer: 3
    thickness: 19
    backing:
      shape: polygon
      inset: 1/2 in
      thickness: 4
    hardware: 1.20
  - name: Straight line
    regular: 5 / 2
    across: 300
`

export const JETTY_FLOW = `
title: Winter fair by the lake
units: mm
nearest: 1/16
shop:
  saw: { limit: 50, kerf: 2.4 mm, reads-to: 0.25, detents: [0, 15, 22.5, 45], crosscut: 300, repeats-to: 0.08, true-to: 0.3 }
  stop: { repeats-to: 0.2 }
  accepted-gap: 0.4
  boards: [{ name: Shed door, width: 7 cm, thickness: 19, length: 2400, price: 6.8, count: 12, defects: [{ from: 400, to: 460 }] }]
  panels: [{ length: 1.5 m, width: 750, thickness: 4, price: 24, edge: 15 }]
  cutter: { kind: laser, kerf: 0.2, bit: 3.175, dxf: r2000 }
  paper: { size: A3, margin: 8, overlap: 12 }
  end-allowance: 2 cm
  sound: blank
  rip-kerf: 0.3 cm
  panel-seed: 42
space: { across: 900, height: 600 mm }
stars:
  - { name: Jetty, quantity: "6", points: "5", tip-angle: 45°, board-width: 70 mm, chamfer: 3, thickness: 19,
      backing: { shape: polygon, inset: 12.7, thickness: 4 }, hardware: "1.2" }
  - { name: " Straight line ", regular: 5/2, across: 300 }
`

/** In mm it stands in an order as it does when it is read. */
const SHED_DOOR = {
  name: 'Shed door',
  width: 70,
  thickness: 19,
  length: 2400,
  price: 6.8,
  count: 12,
  defects: [{ from: 400, to: 460 }],
}

export const JETTY_JSON = {
  title: 'Winter fair by the lake',
  units: 'mm',
  nearest: '1/16',
  shop: {
    saw: {
      limit: 50,
      kerf: 2.4,
      'reads-to': 0.25,
      detents: [0, 15, 22.5, 45],
      crosscut: 300,
      'repeats-to': 0.08,
      'true-to': 0.3,
    },
    stop: { 'repeats-to': 0.2 },
    'accepted-gap': 0.4,
    boards: [SHED_DOOR],
    panels: [{ length: 1500, width: 750, thickness: 4, price: 24, edge: 15 }],
    cutter: { kind: 'laser', kerf: 0.2, bit: 3.175, dxf: 'r2000' },
    paper: { size: 'A3', margin: 8, overlap: 12 },
    'end-allowance': 20,
    sound: 'blank',
    'rip-kerf': 3,
    'panel-seed': 42,
  },
  space: { across: 900, height: 600 },
  stars: [
    {
      name: 'Jetty',
      quantity: 6,
      points: 5,
      'tip-angle': 45,
      'board-width': 70,
      chamfer: 3,
      thickness: 19,
      backing: { shape: 'polygon', inset: 12.7, thickness: 4 },
      hardware: 1.2,
    },
    { name: 'Straight line', regular: '5/2', across: 300 },
  ],
}

export const JETTY_ORDER = {
  title: 'Winter fair by the lake',
  lengths: { units: 'mm', nearest: 16 },
  shop: {
    saw: {
      limit: 50,
      kerf: 2.4,
      readsTo: 0.25,
      detents: [0, 15, 22.5, 45],
      crosscut: 300,
      repeatsTo: 0.08,
      trueTo: 0.3,
    },
    stop: { repeatsTo: 0.2 },
    acceptedGap: 0.4,
    boards: [{ ...SHED_DOOR, wood: USUAL_WOOD }],
    panels: [{ length: 1500, width: 750, thickness: 4, price: 24, edge: 15, gap: 4 }],
    cutter: { kind: 'laser', kerf: 0.2, bit: 3.175, dxf: 'r2000' },
    paper: { sheet: { size: 'A3' }, margin: 8, overlap: 12 },
    endAllowance: 20,
    panelSeed: 42,
    jigStock: JIG_STOCK,
    sound: 'blank',
    ripKerf: 3,
    wood: USUAL_WOOD,
  },
  climate: usualClimate('mm'),
  jigs: { names: ['blank-stop', 'arm-cradle', 'angle-gauge'], asked: false },
  space: { across: 900, height: 600 },
  stars: [
    {
      name: 'Jetty',
      fileName: 'jetty',
      quantity: 6,
      points: 5,
      shape: { by: 'tip-angle', tipAngle: 45 },
      size: { by: 'board-width', length: 70 },
      chamfer: 3,
      thickness: 19,
      backing: { shape: 'polygon', inset: 12.7, thickness: 4 },
      hardware: 1.2,
      wall: USUAL_WALL,
    },
    {
      name: 'Straight line',
      fileName: 'straight-line',
      quantity: 1,
      points: 5,
      shape: { by: 'regular', step: 2 },
      size: { by: 'across', length: 300 },
      wall: USUAL_WALL,
    },
  ],
  assumed: ['stars without a backing are carried by their glued joints alone (backing)'],
  overridden: [],
}
