/** What an order that says nothing of wood and air comes to. */
export const USUAL_WOOD = {
  name: 'softwood',
  from: 'softwood',
  rings: 'flat',
  tangential: 0.0025,
  radial: 0.0025,
}

export const USUAL_WALL = {
  winter: { humidity: 30, temperature: 21 },
  summer: { humidity: 60, temperature: 24 },
}

export const usualClimate = (units: 'mm' | 'in') => ({
  workshop: { humidity: 45, temperature: 18 },
  wall: USUAL_WALL,
  assumed: [
    'the wood is a softwood that moves 0.25 % for 1 % of moisture (EN 1313-1; wood: species)',
    'the boards are flat-sawn, which move most (wood: rings)',
    `the workshop has 45 % humidity at ${units === 'mm' ? '18 °C' : '64 °F'} (climate: workshop)`,
    `on the wall it is 30 % humidity at ${units === 'mm' ? '21 °C' : '70 °F'} in winter, as in a heated room (climate: wall)`,
    `and 60 % humidity at ${units === 'mm' ? '24 °C' : '75 °F'} in summer`,
  ],
})
