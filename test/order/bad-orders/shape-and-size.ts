import { type BadOrder, REGULAR_ALLOWED, SHAPES, SIZES, TIP_ANGLE_ALLOWED } from './bad-order.js'

/** Stars whose shape or size is missing, doubled or impossible. */
export const SHAPE_AND_SIZE: readonly BadOrder[] = [
  ['no shape', 'stars: [{ points: 5, board-width: 70 }]', [`stars[0], line 1: given no shape. ${SHAPES}`]],
  [
    'no shape and no size',
    'stars: [{ name: Jetty }]',
    [`stars[0], line 1: given no shape. ${SHAPES}`, `stars[0], line 1: given no size. ${SIZES}`],
  ],
  [
    'two shapes',
    'stars: [{ points: 5, tip-angle: 45, regular: 5/2, board-width: 70 }]',
    [`stars[0], line 1: given tip-angle and regular. ${SHAPES}`],
  ],
  [
    'three shapes',
    'stars: [{ points: 5, tip-angle: 45, regular: 5/2, slenderest: true, board-width: 70 }]',
    [`stars[0], line 1: given tip-angle and regular and slenderest. ${SHAPES}`],
  ],
  ['no size', 'stars: [{ points: 5, tip-angle: 45 }]', [`stars[0], line 1: given no size. ${SIZES}`]],
  [
    'two sizes',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, across: 300 }]',
    [`stars[0], line 1: given board-width and across. ${SIZES} The others follow from it.`],
  ],
  [
    'three sizes',
    'stars: [{ points: 5, tip-angle: 45, height: 300, radius: 160, tip-edge: 120 }]',
    [`stars[0], line 1: given height and radius and tip-edge. ${SIZES} The others follow from it.`],
  ],
  [
    'tip angle without points',
    'stars: [{ tip-angle: 45, board-width: 70 }]',
    [
      'stars[0], line 1: given tip-angle without points. Say how many points the star has: points, from 3 to 24.',
    ],
  ],
  [
    'slenderest without points',
    'stars: [{ slenderest: true, board-width: 70 }]',
    [
      'stars[0], line 1: given slenderest without points. Say how many points the star has: points, from 3 to 24.',
    ],
  ],
  [
    'slenderest: false, which gives no shape',
    'stars: [{ points: 5, slenderest: false, board-width: 70 }]',
    [
      'stars[0].slenderest, line 1: given false. Allowed: true, or leave the key out.',
      `stars[0], line 1: given no shape. ${SHAPES}`,
    ],
  ],
  [
    'slenderest: false beside a tip angle, which is shape enough',
    'stars: [{ points: 5, slenderest: false, tip-angle: 45, board-width: 70 }]',
    ['stars[0].slenderest, line 1: given false. Allowed: true, or leave the key out.'],
  ],
  [
    'slenderest: yes, which YAML 1.2 takes for a word',
    'stars: [{ points: 5, slenderest: yes, board-width: 70 }]',
    ['stars[0].slenderest, line 1: given "yes". Allowed: true, or leave the key out.'],
  ],
  [
    'tip angle as large as the points allow',
    'stars: [{ points: 5, tip-angle: 108, board-width: 70 }]',
    [
      'stars[0].tip-angle, line 1: given 108. A 5-point star needs less than 108°: tip angle and centre angle (72°) together stay below 180°, or there is no valley. Give a smaller tip angle or more points.',
    ],
  ],
  [
    'tip angle too big for three points',
    'stars: [{ points: 3, tip-angle: 60°, board-width: 70 }]',
    [
      'stars[0].tip-angle, line 1: given "60°". A 3-point star needs less than 60°: tip angle and centre angle (120°) together stay below 180°, or there is no valley. Give a smaller tip angle or more points.',
    ],
  ],
  [
    'tip angle too big for seven points',
    'stars: [{ points: 7, tip-angle: 128.6, board-width: 70 }]',
    [
      'stars[0].tip-angle, line 1: given 128.6. A 7-point star needs less than 128.57°: tip angle and centre angle (51.43°) together stay below 180°, or there is no valley. Give a smaller tip angle or more points.',
    ],
  ],
  [
    'tip angle too big for the most points',
    'stars: [{ points: 24, tip-angle: 165, board-width: 70 }]',
    [
      'stars[0].tip-angle, line 1: given 165. A 24-point star needs less than 165°: tip angle and centre angle (15°) together stay below 180°, or there is no valley. Give a smaller tip angle.',
    ],
  ],
  [
    'tip angle of a straight line',
    'stars: [{ points: 5, tip-angle: 180, board-width: 70 }]',
    [`stars[0].tip-angle, line 1: given 180. ${TIP_ANGLE_ALLOWED}`],
  ],
  [
    'tip angle 0',
    'stars: [{ points: 5, tip-angle: 0, board-width: 70 }]',
    [`stars[0].tip-angle, line 1: given 0. ${TIP_ANGLE_ALLOWED}`],
  ],
  [
    'tip angle -45',
    'stars: [{ points: 5, tip-angle: -45, board-width: 70 }]',
    [`stars[0].tip-angle, line 1: given -45. An angle has no sign. ${TIP_ANGLE_ALLOWED}`],
  ],
  [
    'tip angle in radians',
    'stars: [{ points: 5, tip-angle: 0.785 rad, board-width: 70 }]',
    [`stars[0].tip-angle, line 1: given "0.785 rad". It is not an angle in degrees. ${TIP_ANGLE_ALLOWED}`],
  ],
  [
    'tip angle in minutes',
    'stars: [{ points: 5, tip-angle: "45° 30\'", board-width: 70 }]',
    [`stars[0].tip-angle, line 1: given "45° 30'". It is not an angle in degrees. ${TIP_ANGLE_ALLOWED}`],
  ],
  [
    'two points',
    'stars: [{ points: 2, tip-angle: 45, board-width: 70 }]',
    ['stars[0].points, line 1: given 2. Allowed: a whole number from 3 to 24.'],
  ],
  [
    'twenty-five points',
    'stars: [{ points: 25, tip-angle: 45, board-width: 70 }]',
    ['stars[0].points, line 1: given 25. Allowed: a whole number from 3 to 24.'],
  ],
  [
    'five and a half points',
    'stars: [{ points: 5.5, tip-angle: 45, board-width: 70 }]',
    ['stars[0].points, line 1: given 5.5. Allowed: a whole number from 3 to 24.'],
  ],
  [
    'points in a word',
    'stars: [{ points: five, tip-angle: 45, board-width: 70 }]',
    ['stars[0].points, line 1: given "five". Allowed: a whole number from 3 to 24.'],
  ],
  [
    'points left empty',
    ['stars:', '  - points:', '    tip-angle: 45', '    board-width: 70'],
    ['stars[0].points, line 2: given an empty value. Allowed: a whole number from 3 to 24.'],
  ],
  [
    'regular 5/1, a pentagon',
    'stars: [{ regular: 5/1, board-width: 70 }]',
    [`stars[0].regular, line 1: given "5/1". ${REGULAR_ALLOWED}`],
  ],
  [
    'regular 6/3, which has no tips',
    'stars: [{ regular: 6/3, board-width: 70 }]',
    [`stars[0].regular, line 1: given "6/3". ${REGULAR_ALLOWED}`],
  ],
  [
    'regular 4/2, a bundle of lines',
    'stars: [{ regular: 4/2, board-width: 70 }]',
    [`stars[0].regular, line 1: given "4/2". ${REGULAR_ALLOWED}`],
  ],
  [
    'regular 25/2',
    'stars: [{ regular: 25/2, board-width: 70 }]',
    [`stars[0].regular, line 1: given "25/2". ${REGULAR_ALLOWED}`],
  ],
  [
    'regular 5/2/1',
    'stars: [{ regular: 5/2/1, board-width: 70 }]',
    [`stars[0].regular, line 1: given "5/2/1". ${REGULAR_ALLOWED}`],
  ],
  [
    'regular 2.5',
    'stars: [{ regular: 2.5, board-width: 70 }]',
    [`stars[0].regular, line 1: given 2.5. ${REGULAR_ALLOWED}`],
  ],
  [
    'regular with points',
    'stars: [{ regular: 5/2, points: 5, board-width: 70 }]',
    ['stars[0].points, line 1: given 5 beside regular. regular says the points already. Take points out.'],
  ],
  [
    'chamfer as thick as the arm',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, thickness: 19, chamfer: 19 mm }]',
    ['stars[0].chamfer, line 1: given "19 mm". Allowed: less than the arm\'s thickness, 19.'],
  ],
]
