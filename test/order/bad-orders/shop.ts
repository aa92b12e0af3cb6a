import {
  A_STAR,
  type BadOrder,
  BIAS_ALLOWED,
  BOARD_KEYS,
  DETENT_ALLOWED,
  DETENTS_RISE,
  IN_FILES,
  inchesAllowed,
  inchesMeant,
  KERF_ALLOWED,
  LIMIT_ALLOWED,
  lengthAllowed,
  mmMeant,
  PAPERS,
  SIZE_ALLOWED,
  SMALL,
  TEXT_ALLOWED,
} from './bad-order.js'

/** Saws, boards, panels, cutters and paper that cannot be meant. */
export const SHOP: readonly BadOrder[] = [
  [
    'limits told in inches in an inch order',
    ['units: in', 'shop: { boards: [{ width: 50, length: 8 ft }] }', A_STAR],
    [`shop.boards[0].width, line 2: given 50. ${mmMeant(50)} ${inchesAllowed(0.197, 39.3)}`],
  ],
  [
    'a negative kerf',
    ['shop: { saw: { kerf: -2.4 } }', A_STAR],
    [`shop.saw.kerf, line 1: given -2.4. A length has no sign. ${KERF_ALLOWED}`],
  ],
  ['no kerf', ['shop: { saw: { kerf: 0 } }', A_STAR], [`shop.saw.kerf, line 1: given 0. ${KERF_ALLOWED}`]],
  [
    'a saw limit past the stops',
    ['shop: { saw: { limit: 90 } }', A_STAR],
    [`shop.saw.limit, line 1: given 90. ${LIMIT_ALLOWED}`],
  ],
  [
    'a saw limit of nothing',
    ['shop: { saw: { limit: 0 } }', A_STAR],
    [`shop.saw.limit, line 1: given 0. ${LIMIT_ALLOWED}`],
  ],
  [
    'a scale of nothing',
    ['shop: { saw: { reads-to: 0 } }', A_STAR],
    [
      'shop.saw.reads-to, line 1: given 0. Allowed: an angle from 0.01 to 5 degrees, written like 45, 22.5 or 31,5°. Look at the scale: lines every half degree are 0.5.',
    ],
  ],
  [
    'detents in one value',
    ['shop: { saw: { detents: 22.5 } }', A_STAR],
    ['shop.saw.detents, line 1: given 22.5. Allowed: a list of angles, such as [0, 15, 22.5, 31.6, 45].'],
  ],
  [
    'a bad detent among good ones',
    ['shop: { saw: { detents: [0, 22.5, left, 80] } }', A_STAR],
    [
      `shop.saw.detents[2], line 1: given "left". It is not an angle in degrees. ${DETENT_ALLOWED}`,
      `shop.saw.detents[3], line 1: given 80. ${DETENT_ALLOWED}`,
    ],
  ],
  [
    'detents with a decimal comma, which YAML takes for two',
    ['shop: { saw: { detents: [15, 22,5, 30] } }', A_STAR],
    [`shop.saw.detents[2], line 1: given 5 after 22. ${DETENTS_RISE}`],
  ],
  [
    'detents that fall',
    ['shop:', '  saw:', '    detents:', '      - 45°', '      - 22.5°', A_STAR],
    [`shop.saw.detents[1], line 5: given "22.5°" after "45°". ${DETENTS_RISE}`],
  ],
  [
    'a detent twice',
    ['shop: { saw: { detents: [0, 15, 15, 30] } }', A_STAR],
    [`shop.saw.detents[2], line 1: given 15 after 15. ${DETENTS_RISE}`],
  ],
  [
    'a bias of a saw that is out of order',
    ['shop: { saw: { bias: { miter: -5.5 } } }', A_STAR],
    [`shop.saw.bias.miter, line 1: given -5.5. ${BIAS_ALLOWED}`],
  ],
  [
    'a bias with two signs, and a sureness below nothing',
    ['shop: { saw: { bias: { miter: "--0.2", uncertainty: -0.1 } } }', A_STAR],
    [
      `shop.saw.bias.miter, line 1: given "--0.2". ${BIAS_ALLOWED}`,
      'shop.saw.bias.uncertainty, line 1: given -0.1. An angle has no sign. Allowed: an angle from 0 to 5 degrees, written like 45, 22.5 or 31,5°.',
    ],
  ],
  [
    'a bias without its angle',
    ['shop: { saw: { bias: { uncertainty: 0.1 } } }', A_STAR],
    [`shop.saw.bias, line 1: given no miter. Add miter (--saw-bias). Allowed here: miter, uncertainty.`],
  ],
  [
    'a bias that is a number',
    ['shop: { saw: { bias: -0.2 } }', A_STAR],
    ['shop.saw.bias, line 1: given -0.2. Allowed here: miter, uncertainty.'],
  ],
  [
    'a crosscut shorter than a rule',
    ['shop: { saw: { crosscut: 12 } }', A_STAR],
    [
      `shop.saw.crosscut, line 1: given 12. ${inchesMeant(12)} ${lengthAllowed(20, 2000)} The saw's manual names it.`,
    ],
  ],
  [
    'a saw that cannot be kept still',
    ['shop: { saw: { repeats-to: 3 } }', A_STAR],
    [
      'shop.saw.repeats-to, line 1: given 3. Allowed: an angle from 0 to 2 degrees, written like 45, 22.5 or 31,5°. Cut five offcuts at one setting and measure them: half of the whole range will do.',
    ],
  ],
  [
    'a stop told in degrees',
    ['shop: { stop: { repeats-to: 0.1° } }', A_STAR],
    [
      `shop.stop.repeats-to, line 1: given "0.1°". It is not a length. ${lengthAllowed(0, 5, '2.4, 2.4 mm or 3/32 in')} Cut five pieces against it and measure them: half of the whole range will do.`,
    ],
  ],
  [
    'a gap of nothing, and one below nothing',
    ['shop: { accepted-gap: 0 }', A_STAR],
    [`shop.accepted-gap, line 1: given 0. ${lengthAllowed(0.01, 20, SMALL)}`],
  ],
  [
    'a wall smaller than nothing',
    ['space: { across: -600, height: 1e9 }', A_STAR],
    [
      `space.across, line 1: given -600. A length has no sign. ${SIZE_ALLOWED}`,
      `space.height, line 1: given "1e9". It is not a length. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'a board without width and length',
    ['shop: { boards: [{ thickness: 19 }] }', A_STAR],
    [
      `shop.boards[0], line 1: given no width. Add width. Allowed here: ${BOARD_KEYS}`,
      `shop.boards[0], line 1: given no length. Add length. Allowed here: ${BOARD_KEYS}`,
    ],
  ],
  [
    'a board measured in miles',
    ['shop: { boards: [{ width: 70, length: 2 miles }] }', A_STAR],
    [`shop.boards[0].length, line 1: given "2 miles". It is not a length. ${lengthAllowed(50, 20000)}`],
  ],
  [
    'a board as thick as a beam',
    ['shop: { boards: [{ width: 70, length: 2400, thickness: 500 }] }', A_STAR],
    [`shop.boards[0].thickness, line 1: given 500. ${lengthAllowed(0.5, 200)}`],
  ],
  [
    'a negative price',
    ['shop: { boards: [{ width: 70, length: 2400, price: -6.80 }] }', A_STAR],
    ['shop.boards[0].price, line 1: given -6.8. Allowed: a number from 0 to 1000000.'],
  ],
  [
    'a price with its currency',
    ['shop: { boards: [{ width: 70, length: 2400, price: 6.80 EUR }] }', A_STAR],
    ['shop.boards[0].price, line 1: given "6.80 EUR". Allowed: a number from 0 to 1000000.'],
  ],
  [
    'no boards of a kind',
    ['shop: { boards: [{ width: 70, length: 2400, count: 0 }] }', A_STAR],
    ['shop.boards[0].count, line 1: given 0. Allowed: a whole number from 1 to 10000.'],
  ],
  [
    'a board with markup for a name',
    ['shop: { boards: [{ name: "<b>door</b>", width: 70, length: 2400 }] }', A_STAR],
    [
      `shop.boards[0].name, line 1: given "<b>door</b>". The character < (U+003C) ${IN_FILES} ${TEXT_ALLOWED}`,
    ],
  ],
  [
    'a board without length',
    ['shop: { boards: [{ width: 70, length: 0 }] }', A_STAR],
    [`shop.boards[0].length, line 1: given 0. ${lengthAllowed(50, 20000)}`],
  ],
  [
    'sound wood of another part',
    ['shop: { sound: board }', A_STAR],
    ['shop.sound, line 1: given "board". Allowed: arm or blank.'],
  ],
  [
    'seeds that are no whole numbers',
    ['shop: { panel-seed: -1 }', A_STAR],
    ['shop.panel-seed, line 1: given -1. Allowed: a whole number from 0 to 999999999.'],
  ],
  [
    'a rip kerf of nothing',
    ['shop: { rip-kerf: 0 }', A_STAR],
    [
      `shop.rip-kerf, line 1: given 0. ${KERF_ALLOWED.replace(' cut.', ' cut,')} or leave it out: then each board gives one strip.`,
    ],
  ],
  [
    'hardware with its currency',
    ['stars: [{ regular: 5/2, across: 300, hardware: 2 EUR }]'],
    ['stars[0].hardware, line 1: given "2 EUR". Allowed: a number from 0 to 1000000.'],
  ],
  [
    'half a board',
    ['shop: { boards: [{ width: 70, length: 2400, count: 1.5 }] }', A_STAR],
    ['shop.boards[0].count, line 1: given 1.5. Allowed: a whole number from 1 to 10000.'],
  ],
  [
    'more boards than a rack holds',
    [`shop: { boards: [${'{ width: 70, length: 2400 }, '.repeat(101)}] }`, A_STAR],
    ['shop.boards, line 1: given 101 entries. Allowed: up to 100 entries.'],
  ],
  [
    'a defect that ends before it begins',
    ['shop: { boards: [{ width: 70, length: 2400, defects: [{ from: 460, to: 400 }] }] }', A_STAR],
    [
      'shop.boards[0].defects[0], line 1: given from 460 to 400. Allowed: from less than to, both measured from the same end.',
    ],
  ],
  [
    'a defect past the end of the board',
    [
      'shop: { boards: [{ width: 70, length: 2400 mm, defects: [{ from: 400, to: 460 }, { from: 2390, to: 2410 }] }] }',
      A_STAR,
    ],
    [
      'shop.boards[0].defects[1], line 1: given from 2390 to 2410. Allowed: up to the board\'s length, "2400 mm". Measure again.',
    ],
  ],
  [
    'a defect without its end',
    ['shop: { boards: [{ width: 70, length: 2400, defects: [{ from: 460 }] }] }', A_STAR],
    ['shop.boards[0].defects[0], line 1: given no to. Add to. Allowed here: from, to.'],
  ],
  [
    'defects in one value',
    ['shop: { boards: [{ width: 70, length: 2400, defects: 460 }] }', A_STAR],
    ['shop.boards[0].defects, line 1: given 460. Allowed: a list such as [{ from: 400 mm, to: 460 mm }].'],
  ],
  [
    'a panel that is all edge',
    ['shop: { panels: [{ length: 600, width: 400, edge: 200 }] }', A_STAR],
    [
      'shop.panels[0].edge, line 1: given 200. Allowed: less than half of the panel, or nothing is left of it.',
    ],
  ],
  [
    'an unknown paper size',
    ['shop: { paper: { size: quarto } }', A_STAR],
    [`shop.paper.size, line 1: given "quarto". ${PAPERS}`],
  ],
  [
    'a paper smaller than A4',
    ['shop: { paper: { size: A6 } }', A_STAR],
    [`shop.paper.size, line 1: given "A6". ${PAPERS}`],
  ],
  [
    'a paper size with a word behind it',
    ['shop: { paper: { size: A4 portrait } }', A_STAR],
    [`shop.paper.size, line 1: given "A4 portrait". Did you mean A4? ${PAPERS}`],
  ],
  [
    'a paper size misspelt',
    ['shop: { paper: { size: Leter } }', A_STAR],
    [`shop.paper.size, line 1: given "Leter". Did you mean Letter? ${PAPERS}`],
  ],
  [
    'a paper size and a roll',
    ['shop: { paper: { size: A4, roll: 610 } }', A_STAR],
    ['shop.paper.roll, line 1: given size and roll. Allowed: one of them. Take out the other.'],
  ],
  [
    'a roll no printer takes',
    ['shop: { paper: { roll: 100 } }', A_STAR],
    [`shop.paper.roll, line 1: given 100. ${lengthAllowed(200, 2000, '610, 61 cm or 24 in')}`],
  ],
  [
    'a margin too large',
    ['shop: { paper: { margin: 40 } }', A_STAR],
    [`shop.paper.margin, line 1: given 40. ${lengthAllowed(3, 25, SMALL)} Most printers need 5 mm or more.`],
  ],
  [
    'an overlap too small for tape',
    ['shop: { paper: { overlap: 1 } }', A_STAR],
    [`shop.paper.overlap, line 1: given 1. ${inchesMeant(1)} ${lengthAllowed(5, 30, SMALL)}`],
  ],
  [
    'hands nearer to the blade than the standard for miter saws allows',
    ['shop: { jig-stock: { hands: 80 mm } }', A_STAR],
    [
      'shop.jig-stock.hands, line 1: given "80 mm". Allowed: a length from 100 mm to 500 mm, written like 150, 15 cm or 6 in. The standard for miter saws, AS/NZS 62841.3.9:2020, asks for 100 mm or more.',
    ],
  ],
  [
    'what jigs are set out by, all of it out of bounds, and a bed without a length',
    [
      'shop: { jig-stock: { tolerance: 0, clearance: 2 mm, fit: 3 mm, register: 10 mm }, cutter: { bed: { width: 300 } } }',
      A_STAR,
    ],
    [
      'shop.cutter.bed, line 1: given no length. Add length. Allowed here: width, length.',
      'shop.jig-stock.register, line 1: given "10 mm". Allowed: a length from 40 mm to 1000 mm, written like 70, 70.5 mm or 2 3/4 in. On a shorter length a grain of dust turns the wood by more than the saw does.',
      'shop.jig-stock.tolerance, line 1: given 0. Allowed: a length from 0.05 mm to 5 mm, written like 2.4, 2.4 mm or 3/32 in.',
      'shop.jig-stock.clearance, line 1: given "2 mm". Allowed: a length from 6 mm to 40 mm, written like 12, 12.5 mm or 1/2 in.',
      'shop.jig-stock.fit, line 1: given "3 mm". Allowed: a length from 0 mm to 1 mm, written like 70, 70.5 mm or 2 3/4 in.',
    ],
  ],
  [
    'a jig nobody knows, and a side that is none',
    ['jigs: [arm-cradel]', 'shop: { jig-stock: { side: up } }', A_STAR],
    [
      'jigs[0], line 1: given "arm-cradel". Did you mean arm-cradle? Allowed: blank-stop, first-cut-wedge, arm-cradle, joint-cut-wedge, angle-gauge, trial-window or glue-up-frame.',
      'shop.jig-stock.side, line 2: given "up". Allowed: right or left.',
    ],
  ],
  [
    'an unknown cutter',
    ['shop: { cutter: { kind: lazer } }', A_STAR],
    ['shop.cutter.kind, line 1: given "lazer". Did you mean laser? Allowed: laser, router or hand.'],
  ],
  [
    'an unknown DXF version',
    ['shop: { cutter: { dxf: binary } }', A_STAR],
    ['shop.cutter.dxf, line 1: given "binary". Allowed: r12 or r2000.'],
  ],
  [
    'a DXF version between ours',
    ['shop: { cutter: { dxf: r14 } }', A_STAR],
    ['shop.cutter.dxf, line 1: given "r14". Allowed: r12 or r2000.'],
  ],
  [
    'a DXF version in capitals',
    ['shop: { cutter: { dxf: R12 } }', A_STAR],
    ['shop.cutter.dxf, line 1: given "R12". Did you mean r12? Allowed: r12 or r2000.'],
  ],
  [
    'a router bit of nothing',
    ['shop: { cutter: { kind: router, bit: 0 } }', A_STAR],
    [`shop.cutter.bit, line 1: given 0. ${lengthAllowed(0.1, 50, SMALL)}`],
  ],
]
