import { describe, expect, it } from 'vitest'
import { starwright } from './starwright.js'

const ORDER = 'shared/examples/winter-fair.yaml'
const flat = (text: string): string => text.replaceAll(/\s+/g, ' ')

describe('season', () => {
  const { code, out, err } = starwright(['season', ORDER])

  it('tells moisture, angles and gap for workshop, winter and summer, on 84 columns', () => {
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(84)
    expect(out).toContain('Boathouse: 6 stars, 5 points, 30 arms\n----')
    // Wood Handbook, Table 4-2: 70 °F and 30 % make 6.2 %. Table 13-5 (from memory): western larch, C_T 0.00323.
    expect(out).toMatch(/winter {4}30 %, 21 °C {2}6\.2 %/)
    expect(flat(out)).toContain(
      'western larch, flat-sawn: 0.323 % across the grain for 1 % of moisture (not checked in a handbook: look it up)',
    )
  })

  it('warns where the coefficients do not hold', () => {
    expect(flat(out)).toContain(
      '! The coefficients hold from 6 to 14 % of moisture only. They do not hold in winter (18.5 %)',
    )
  })

  it('says what it takes for granted, and nothing that the order says', () => {
    expect(out).not.toContain('Taken for granted')
    const bare = starwright('season --points 5 --tip-angle 45 --board-width 70mm'.split(' ')).out
    expect(flat(bare)).toContain(
      'Taken for granted, as the order does not say: - the wood is a softwood that moves 0.25 % for 1 % of moisture (EN 1313-1; wood: species)',
    )
  })

  it('takes species, rings and humidity from flags', () => {
    const words = 'season --points 5 --tip-angle 45 --board-width 70mm --rings quarter --winter-humidity 20'
    const shown = starwright([...words.split(' '), '--species', 'white oak']).out
    expect(shown).toContain('white oak, quarter-sawn: 0.18 % across the grain')
    expect(shown).toMatch(/winter {4}20 %, 21 °C {2}4\.5 %/)
  })

  it('refuses with exit code 2, each mistake at its place', () => {
    const words = 'season --points 5 --tip-angle 45 --board-width 70mm --winter-humidity 120 --rings around'
    const refused = starwright(words.split(' '))
    expect(refused).toMatchObject({ code: 2, out: '' })
    expect(refused.err).toContain('--winter-humidity: given "120". Allowed: a humidity from 5 to 95 %.')
    expect(refused.err).toContain('--rings: given "around". Allowed: flat or quarter.')
  })
})

/** The public contract of `season --json`: names and kinds of value. */
describe('season --json', () => {
  const { code, out } = starwright(['season', ORDER, '--json'])
  const { title, stars, assumed } = JSON.parse(out)

  it('keeps its contract', () => {
    expect(code).toBe(0)
    expect(title).toBe('Winter fair by the lake')
    expect(assumed).toEqual([])
    expect(stars.map(({ name }: { name: string }) => name)).toEqual(['Boathouse', 'Bakery window', 'Chapel'])
    for (const star of stars) {
      expect(Object.keys(star)).toEqual([
        ...['name', 'wood', 'coefficient', 'workshop', 'winter', 'summer'],
        ...['meanMoisture', 'worstGap', 'axisLayout', 'advice'],
      ])
      expect(Object.keys(star.wood)).toEqual(['name', 'from', 'rings', 'tangential', 'radial', 'seen'])
      expect(Object.keys(star.workshop)).toEqual(['air', 'moisture', 'coefficientsHold'])
      for (const season of [star.winter, star.summer]) {
        expect(Object.keys(season)).toEqual(['air', 'moisture', 'coefficientsHold', 'change', 'edge', 'axis'])
        for (const moved of [season.edge, season.axis]) {
          expect(Object.keys(moved)).toEqual([
            ...['tipAngle', 'centreAngle', 'sideAngles', 'jointEdges', 'tipEdges'],
            ...['closure', 'gap', 'step'],
          ])
        }
      }
      for (const advice of star.advice) expect(Object.keys(advice)).toEqual(['code', 'text'])
    }
  })

  it('is consistent: the change is the coefficient times the change of moisture, the closure what the angles leave', () => {
    for (const { coefficient, workshop, winter, summer, name } of stars) {
      const points = { Boathouse: 5, 'Bakery window': 6, Chapel: 8 }[name as 'Chapel']
      for (const season of [winter, summer]) {
        expect(season.change).toBeCloseTo(coefficient * (season.moisture - workshop.moisture), 12)
        expect(season.edge.closure).toBeCloseTo(360 - points * season.edge.centreAngle, 9)
      }
    }
  })
})

describe('plan tells what is glued, coated and hung', () => {
  const { out } = starwright(['plan', ORDER, '--star', 'Boathouse'])
  const [star] = JSON.parse(starwright(['plan', ORDER, '--star', 'Boathouse', '--json']).out).stars

  it('as rows of the card', () => {
    expect(flat(out)).toMatch(/Glue joints 322\.\d mm long in all/)
    expect(flat(out)).toContain('of finish for 2 coats')
    expect(flat(out)).toMatch(/Weight 0\.\d+ kg a star: arms 0\.\d+ kg of western larch, backing/)
  })

  it('as numbers, reckoned here again from the table of specific gravities and the kites', () => {
    // Five kites of 143.6 x 75.8 mm / 2, 19 mm thick, of larch (0.52 x 1120 kg/m³), less a 3 mm chamfer on ten edges.
    const solid = 5 * (star.radius * star.kiteWidth * 0.5) * 19 * 0.52 * 1120 * 1e-9
    const chamfer = 10 * star.tipEdge * 4.5 * 0.52 * 1120 * 1e-9
    expect(star.weight.arms).toBeLessThan(solid)
    expect(star.weight.arms).toBeGreaterThan(solid - chamfer)
    expect(star.weight.whole.mass).toBeCloseTo(star.weight.arms + star.weight.plate, 12)
    expect(star.weight.whole.hanger).toBeCloseTo(4 * star.weight.whole.mass, 12)
    expect(star.body.glue.joints).toBeCloseTo(5 * star.jointEdge, 9)
  })

  it('and says nothing of a weight that nobody can know', () => {
    const bare = starwright('plan --points 5 --tip-angle 45 --board-width 70mm'.split(' ')).out
    expect(bare).not.toMatch(/^ {2}(?:Glue|Coat|Weight) /m)
    const thick = starwright(
      'plan --points 5 --tip-angle 45 --board-width 70mm --thickness 19mm'.split(' '),
    ).out
    expect(thick).toMatch(/^ {2}Glue /m)
    expect(thick).not.toMatch(/^ {2}Weight /m)
  })
})
