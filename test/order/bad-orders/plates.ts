import type { BadOrder } from './bad-order.js'

const star = (backing: string, more = ''): string =>
  `stars: [{ points: 5, tip-angle: 45, board-width: 70, ${more}backing: { ${backing} } }]`

/** Backings, what cuts them and panels that cannot be meant. */
export const PLATES: readonly BadOrder[] = [
  [
    'tabs for a laser',
    ['shop: { cutter: { kind: laser, tabs: 3, tab: 5 } }', star('inset: 9')],
    [
      'shop.cutter.tabs, line 1: given 3 without kind: router. Tabs hold a plate against a bit. Allowed: with kind: router. Take them out.',
    ],
  ],
  [
    'the length of tabs that there are none of',
    ['shop: { cutter: { kind: router, tab: 5 } }', star('inset: 9')],
    [
      'shop.cutter.tab, line 1: given 5 without tabs. Say how many to leave on each plate: tabs: 3. Or take it out.',
    ],
  ],
  [
    'tabs that the bit would cut on its way round the neighbour, or along the rim',
    [
      'shop: { cutter: { kind: router, bit: 3, tabs: 3 }, panels: [{ length: 900, width: 600, gap: 4, edge: 5 }] }',
      star('inset: 9'),
    ],
    [
      'shop.panels[0].gap, line 1: given 4. Allowed with tabs: from 9.0 mm, for the bit runs along every plate and wood must stay between for the tabs to hold to. Or take tabs out.',
      'shop.panels[0].edge, line 1: given 5. Allowed with tabs: from 6.0 mm, for the bit runs along every plate and wood must stay between for the tabs to hold to. Or take tabs out.',
    ],
  ],
  [
    'half a seed',
    ['shop: { panel-seed: 1.5 }', star('inset: 9')],
    ['shop.panel-seed, line 1: given 1.5. Allowed: a whole number from 0 to 999999999.'],
  ],
  [
    'a seed that no number can hold',
    ['shop: { panel-seed: 1e400 }', star('inset: 9')],
    ['shop.panel-seed, line 1: given "1e400". Allowed: a whole number from 0 to 999999999.'],
  ],
  [
    'a seed in words',
    ['shop: { panel-seed: "1<script>" }', star('inset: 9')],
    ['shop.panel-seed, line 1: given "1<script>". Allowed: a whole number from 0 to 999999999.'],
  ],
  [
    'a gap the bit fills',
    [
      'shop: { cutter: { kind: router, bit: 4 }, panels: [{ length: 900, width: 600, gap: 4 }] }',
      star('inset: 9'),
    ],
    ['shop.panels[0].gap, line 1: given 4. Allowed: from 4.1 mm, for the bit runs there.'],
  ],
  [
    'a gap the beam fills, a panel that is all edge, a radius on a disc, and a slot for a cord',
    [
      'shop: { cutter: { kind: laser, kerf: 0.4 }, panels: [{ length: 900, width: 60, gap: 0.3, edge: 30 }] }',
      star('shape: disc, corner-radius: 5, hanging: { kind: cord, slot: 4 }'),
    ],
    [
      'shop.panels[0].edge, line 1: given 30. Allowed: less than half of the panel, or nothing is left of it.',
      'shop.panels[0].gap, line 1: given 0.3. Allowed: from 0.5 mm, for the beam runs there.',
      'stars[0].backing.corner-radius, line 2: given 5 beside shape "disc". It rounds a backing of shape star. Take one of them out.',
      'stars[0].backing.hanging.slot, line 2: given 4 for "cord". It is for a keyhole. Take it out.',
    ],
  ],
  [
    'a keyhole that holds nothing',
    star('hanging: { kind: keyhole, slot: 9, apart: 40 }'),
    [
      'stars[0].backing.hanging.apart, line 1: given 40 for "keyhole". It is for cord and screws. Take it out.',
      "stars[0].backing.hanging.slot, line 1: given 9. Allowed: a slot narrower than the hole, or it does not hold the screw's head.",
    ],
  ],
  [
    'a keyhole whose screw never leaves the round end',
    star('hanging: { kind: keyhole, rise: 2 }'),
    [
      'stars[0].backing.hanging.rise, line 1: given 2. The screw would stay in the round end, and the star come off it. Allowed: a rise from 6.8 mm.',
    ],
  ],
  [
    'a round end as large as the usual rise',
    star('hanging: { kind: keyhole, hole: 20 }'),
    [
      'stars[0].backing.hanging.hole, line 1: given 20 without rise. The screw would stay in the round end, and the star come off it. Allowed: a rise from 12.3 mm.',
    ],
  ],
  [
    'hanging and fixing without their kinds, and a hole of nothing',
    star('hanging: { hole: 0 }, fixing: { length: -3 }'),
    [
      'stars[0].backing.hanging, line 1: given no kind. Add kind (--hanging). Allowed here: kind, hole, apart, slot, rise, wall.',
      'stars[0].backing.hanging.hole, line 1: given 0. Allowed: a length from 1 mm to 40 mm, written like 12, 12.5 mm or 1/2 in.',
      'stars[0].backing.fixing, line 1: given no kind. Add kind (--fixing). Allowed here: kind, length, clear.',
      'stars[0].backing.fixing.length, line 1: given -3. A length has no sign. Allowed: a length from 3 mm to 200 mm, written like 70, 70.5 mm or 2 3/4 in.',
    ],
  ],
]

/** Backings that read well but find no room on their star; told by the plan. */
export const PLATE_PLANS: readonly BadOrder[] = [
  [
    'an inset that the chamfer makes too large',
    star('inset: 48', 'chamfer: 3, '),
    [
      'stars[0].backing.inset, line 1: given 48.0 mm. Nothing would be left of the star. Allowed here: up to 46.9 mm, behind the chamfer of 3.0 mm.',
    ],
  ],
  [
    'a radius that leaves no edges',
    star('inset: 9, corner-radius: 60'),
    [
      "stars[0].backing.corner-radius, line 1: given 60.0 mm. Nothing straight would be left of the plate's edges. Allowed here: up to 32.0 mm, or a smaller inset.",
    ],
  ],
  [
    'a cover that the inset does not leave',
    star('inset: 9, covers: 60'),
    [
      'stars[0].backing.covers, line 1: given 60.0 mm. With this inset the backing covers 53.8 mm of each joint. Allowed: up to 53.8 mm, or an inset of up to 3.7 mm, or another shape.',
    ],
  ],
  [
    'a cover that no star backing has',
    star('shape: polygon, inset: 9, covers: 64'),
    [
      'stars[0].backing.covers, line 1: given 64.0 mm. With this inset the backing covers 53.3 mm of each joint. Allowed: up to 53.3 mm, or an inset of up to 0.3 mm, or another shape.',
    ],
  ],
  [
    'the smallest plate, too small to be one',
    star('shape: auto, inset: 9, covers: 3'),
    ['stars[0].backing.covers, line 1: given 3.0 mm. That is no plate. Allowed: from 5.0 mm.'],
  ],
  [
    'the smallest plate, too large',
    star('shape: auto, inset: 9, covers: 60'),
    [
      'stars[0].backing.covers, line 1: given 60.0 mm. With this inset the backing covers 55.4 mm of each joint. Allowed: up to 55.4 mm, or an inset of up to 4.4 mm.',
    ],
  ],
  [
    'a bit whose roundness would show',
    ['shop: { cutter: { kind: router, bit: 12 } }', star('inset: 4')],
    [
      "stars[0].backing.inset, line 2: given 4.0 mm. The bit leaves its roundness in the plate's valleys, and there it would show. Allowed with this bit: from 6.0 mm.",
    ],
  ],
  [
    'holes too large for the upper arm',
    star('inset: 9, hanging: { kind: cord, hole: 40 }'),
    [
      'stars[0].backing.hanging, line 1: given cord, 40.0 mm. The plate has no room for it in the upper arm, 6.0 mm from edges and joints. Allowed here: holes of up to 20.4 mm; or another kind, a smaller wall, a smaller inset, or none.',
    ],
  ],
  [
    'holes too far apart',
    star('inset: 9, hanging: { kind: cord, apart: 90 }'),
    [
      'stars[0].backing.hanging.apart, line 1: given 90.0 mm. The upper arm is too narrow for that. Allowed here: up to 44.0 mm.',
    ],
  ],
  [
    'holes that run into each other',
    star('inset: 9, hanging: { kind: screws, apart: 6 }'),
    [
      'stars[0].backing.hanging.apart, line 1: given 6.0 mm. Too little wood would be left between the holes. Allowed here: from 9.5 mm.',
    ],
  ],
  [
    'nails that find no room',
    star('inset: 9, fixing: { kind: nails, clear: 40 }'),
    [
      'stars[0].backing.fixing, line 1: given 40.0 mm clear. Two nails in an arm find no room so far from edges, joints and holes. Allowed here: clear of up to 19.0 mm; or a smaller inset.',
    ],
  ],
  // Its joints are 70 mm / sin 45° × sin 22.5° / sin 36° = 64.45 mm long; 12 mm inside the valleys that leaves 52.45 mm.
  [
    'holes too large for a plate that goes by what it covers',
    star('shape: auto, covers: 30, hanging: { kind: cord, hole: 40 }'),
    [
      'stars[0].backing.hanging, line 1: given cord, 40.0 mm. The plate has no room for it in the upper arm, 6.0 mm from edges and joints. Allowed here: holes of up to 1.9 mm; or another kind, a smaller wall, a longer covers (up to 52.4 mm), shape: star, or none.',
    ],
  ],
  [
    'nails too near for a plate that goes by what it covers',
    star('shape: auto, covers: 40, fixing: { kind: nails, clear: 20 }'),
    [
      'stars[0].backing.fixing, line 1: given 20.0 mm clear. Two nails in an arm find no room so far from edges, joints and holes. Allowed here: clear of up to 7.9 mm; or a longer covers (up to 52.4 mm) or shape: star.',
    ],
  ],
  [
    'the same where it covers all that the inset leaves',
    star('shape: auto, inset: 12, covers: 52.4, fixing: { kind: nails, clear: 30 }'),
    [
      'stars[0].backing.fixing, line 1: given 30.0 mm clear. Two nails in an arm find no room so far from edges, joints and holes. Allowed here: clear of up to 10.3 mm; or a longer covers with a smaller inset or shape: star.',
    ],
  ],
  [
    'nails that come through',
    star('inset: 9, thickness: 4, fixing: { kind: nails, length: 30 }', 'thickness: 19, '),
    [
      'stars[0].backing.fixing.length, line 1: given 30.0 mm. The nails would come through or lift the wood of the face: the plate is 4.0 mm thick, the arm 19.0 mm. Allowed: from 9.0 mm to 21.0 mm.',
    ],
  ],
  [
    'nails that find no room and would come through',
    star('inset: 9, thickness: 4, fixing: { kind: nails, clear: 40, length: 30 }', 'thickness: 19, '),
    [
      'stars[0].backing.fixing, line 1: given 40.0 mm clear. Two nails in an arm find no room so far from edges, joints and holes. Allowed here: clear of up to 19.0 mm; or a smaller inset.',
      'stars[0].backing.fixing.length, line 1: given 30.0 mm. The nails would come through or lift the wood of the face: the plate is 4.0 mm thick, the arm 19.0 mm. Allowed: from 9.0 mm to 21.0 mm.',
    ],
  ],
  [
    'the same where only the panel tells how thick the backing is, and nothing is left of it',
    [
      'shop: { panels: [{ length: 900, width: 600, thickness: 4 }] }',
      star('inset: 60, fixing: { kind: nails, length: 30 }', 'thickness: 19, '),
    ],
    [
      'stars[0].backing.inset, line 2: given 60.0 mm. Nothing would be left of the star. Allowed here: up to 49.9 mm.',
      'stars[0].backing.fixing.length, line 2: given 30.0 mm. The nails would come through or lift the wood of the face: the plate is 4.0 mm thick, the arm 19.0 mm. Allowed: from 9.0 mm to 21.0 mm.',
    ],
  ],
  [
    'screws that do not reach the arm',
    star('inset: 9, thickness: 4, fixing: { kind: screws, length: 5 }', 'thickness: 19, '),
    [
      'stars[0].backing.fixing.length, line 1: given 5.0 mm. The screws would hardly reach into the arm. Allowed: from 9.0 mm to 21.0 mm.',
    ],
  ],
  [
    'a slot the bit does not get into',
    [
      'shop: { cutter: { kind: router, bit: 6 } }',
      star('inset: 9, hanging: { kind: keyhole, hole: 9, slot: 4.5 }'),
    ],
    [
      'shop.cutter.bit: given 6.0 mm. It does not get into the narrowest place of the backing of "Star". Allowed there: a bit of up to 4.4 mm. Use a smaller one, or saw it by hand from its PDF: cutter: { kind: hand }.',
    ],
  ],
]
