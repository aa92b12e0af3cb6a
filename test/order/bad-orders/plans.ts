import type { BadOrder } from './bad-order.js'
import type { BadFlags } from './flags.js'

/** Orders that read well but whose stars cannot be made; they are told by the plan. */
export const PLANS: readonly BadOrder[] = [
  [
    'slenderest on a saw that reaches too little',
    ['shop: { saw: { limit: 20 } }', 'stars: [{ points: 3, slenderest: true, board-width: 70 }]'],
    [
      'stars[0].slenderest, line 2: given true. A saw that stops at 20° cuts no 3-point star. Give a tip angle, and the plan will name the fence wedge for it.',
    ],
  ],
  [
    'a chamfer through the board',
    'shop: { boards: [{ width: 95, length: 2400, thickness: 19 }] }\nstars: [{ points: 5, tip-angle: 45, board-width: 90, chamfer: 20 }]',
    ["stars[0].chamfer, line 2: given 20.0 mm. Allowed: less than the board's thickness, 19.0 mm."],
  ],
  [
    'a chamfer a little deeper than the board, which a rounded figure would not tell',
    'units: in\nshop: { boards: [{ width: 4, length: 96, thickness: 5/32 }] }\nstars: [{ points: 5, tip-angle: 45, board-width: 3 1/2, chamfer: 0.16 }]',
    ["stars[0].chamfer, line 3: given 0.16 in. Allowed: less than the board's thickness, 5/32 in."],
  ],
  [
    'a chamfer wider than the arm',
    'stars: [{ points: 5, tip-angle: 30, tip-edge: 60, chamfer: 45 }]',
    [
      'stars[0].chamfer, line 1: given 45.0 mm. Chamfers from both sides would meet: this star allows less than 20.5 mm.',
    ],
  ],
  [
    'a backing inset past the centre',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, backing: { inset: 80 } }]',
    [
      'stars[0].backing.inset, line 1: given 80.0 mm. Nothing would be left of the star. Allowed here: up to 49.9 mm.',
    ],
  ],
  [
    'a polygon inset past the centre',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, backing: { shape: polygon, inset: 80 } }]',
    [
      'stars[0].backing.inset, line 1: given 80.0 mm. Nothing would be left of the polygon. Allowed here: up to 47.1 mm.',
    ],
  ],
  [
    'a disc inset past the centre',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, backing: { shape: disc, inset: 80 } }]',
    [
      'stars[0].backing.inset, line 1: given 80.0 mm. Nothing would be left of the disc. Allowed here: up to 59.4 mm.',
    ],
  ],
  [
    'a star too small for its backing',
    'stars: [{ points: 5, tip-angle: 20, radius: 30, backing: { shape: disc, inset: 3 } }]',
    [
      'stars[0].backing.inset, line 1: given 3.0 mm. Nothing would be left of the disc. Allowed here: up to 2.2 mm.',
    ],
  ],
  [
    'a star larger than a barn',
    'stars: [{ points: 5, tip-angle: 1, board-width: 1000 }]',
    [
      'stars[0].board-width, line 1: given 1000.0 mm. With a tip angle of 1° that makes a piece 110293.5 mm long; allowed: up to 20000.0 mm. Give a smaller size or another shape.',
    ],
  ],
  [
    'a blank longer than a barn',
    'stars: [{ points: 24, tip-angle: 0.5, board-width: 400 }]',
    [
      'stars[0].board-width, line 1: given 400.0 mm. With a tip angle of 0.5° that makes a piece 94711.9 mm long; allowed: up to 20000.0 mm. Give a smaller size or another shape.',
    ],
  ],
  [
    'a tip like a needle',
    'stars: [{ points: 5, tip-angle: 1, tip-edge: 100 }]',
    [
      'stars[0].tip-edge, line 1: given 100.0 mm. With 5 points and a tip angle of 1° that makes an edge of only 1.5 mm; allowed: from 5.0 mm. Give a larger size or another shape.',
    ],
  ],
  [
    "a star for a doll's house, in inches",
    ['units: in', 'stars: [{ points: 24, tip-angle: 100, across: 1/2 }]'],
    [
      'stars[0].across, line 2: given 1/2 in. With 24 points and a tip angle of 100° that makes an edge of only 1/32 in; allowed: from 7/32 in. Give a larger size or another shape.',
    ],
  ],
  [
    'two stars that cannot be',
    [
      'stars:',
      '  - { name: Jetty, points: 5, tip-angle: 1, board-width: 1000 }',
      '  - { name: Mill, points: 5, tip-angle: 45, board-width: 70, backing: { inset: 80 } }',
    ],
    [
      'stars[0].board-width, line 2: given 1000.0 mm. With a tip angle of 1° that makes a piece 110293.5 mm long; allowed: up to 20000.0 mm. Give a smaller size or another shape.',
      'stars[1].backing.inset, line 3: given 80.0 mm. Nothing would be left of the star. Allowed here: up to 49.9 mm.',
    ],
  ],
]

/** The same from flags: the flag is named, whether there is a file or not. */
export const PLANS_OF_FLAGS: readonly BadFlags[] = [
  [
    'slenderest on a saw that reaches too little',
    { flags: { points: '3', slenderest: true, 'board-width': '70', 'saw-limit': '20' } },
    [
      '--slenderest: given true. A saw that stops at 20° cuts no 3-point star. Give a tip angle, and the plan will name the fence wedge for it.',
    ],
  ],
  [
    'a chamfer wider than the arm',
    { flags: { points: '5', 'tip-angle': '30', 'tip-edge': '60', chamfer: '45' } },
    ['--chamfer: given 45.0 mm. Chamfers from both sides would meet: this star allows less than 20.5 mm.'],
  ],
  [
    'a backing inset past the centre, over an order',
    { text: 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]', flags: { inset: '80' } },
    ['--inset: given 80.0 mm. Nothing would be left of the star. Allowed here: up to 49.9 mm.'],
  ],
  [
    'a star larger than a barn, over an order',
    { text: 'stars: [{ points: 5, tip-angle: 1, across: 300 }]', flags: { 'board-width': '1000' } },
    [
      '--board-width: given 1000.0 mm. With a tip angle of 1° that makes a piece 110293.5 mm long; allowed: up to 20000.0 mm. Give a smaller size or another shape.',
    ],
  ],
]
