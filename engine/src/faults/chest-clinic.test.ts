/**
 * The chest clinic of S. L. Lauritzen, D. J. Spiegelhalter, J. R. Stat. Soc. B 50 (1988) 157, in full. Its tables as printed;
 * posteriors by writing out all 256 combinations (done elsewhere, ten digits).
 *
 * Tuberculosis and lung cancer bring "either" by an OR without leak: that is what `diagnose` works out. The rest is no noisy-OR
 * (causes have parents, dyspnoea has a full table), so it is conditioned on: with visit, smoking and bronchitis fixed, what is
 * left are two independent causes and their OR (cut-set conditioning, J. Pearl 1988, 4.4.3).
 */
import { describe, expect, it } from 'vitest'
import { diagnose } from './diagnose.ts'

type Thing = 'visit' | 'tuberculosis' | 'smoking' | 'lung' | 'bronchitis' | 'either' | 'x-ray' | 'dyspnoea'
type Seen = Readonly<Partial<Record<Thing, boolean>>>

const chance = {
  visit: 0.01,
  tuberculosis: (visit: boolean) => (visit ? 0.05 : 0.01),
  smoking: 0.5,
  lung: (smoking: boolean) => (smoking ? 0.1 : 0.01),
  bronchitis: (smoking: boolean) => (smoking ? 0.6 : 0.3),
  xRay: (either: boolean) => (either ? 0.98 : 0.05),
  dyspnoea: (bronchitis: boolean, either: boolean) => (either ? (bronchitis ? 0.9 : 0.7) : bronchitis ? 0.8 : 0.1),
}
const both = [false, true]
const of = (there: boolean, p: number) => (there ? p : 1 - p)

/** P(either) and both causes given it or its absence, by the OR of two causes. */
function orOf(visit: boolean, smoking: boolean, either: boolean) {
  const [tuberculosis, lung] = [chance.tuberculosis(visit), chance.lung(smoking)]
  const network = {
    signs: [{ id: 'either', leak: 0 }],
    causes: [
      { id: 'tuberculosis', prior: tuberculosis, links: { either: 1 } },
      { id: 'lung', prior: lung, links: { either: 1 } },
    ],
    tests: [],
  }
  const asked = (present: string[], absent: string[]) =>
    diagnose(network, { kind: 'any', present, absent }).posteriors as Record<'tuberculosis' | 'lung', number>
  const there = asked(['either'], [])
  // P(tuberculosis) = P(tuberculosis | either)·P(either), as without either there is none.
  const reached = tuberculosis / there.tuberculosis
  return { chance: of(either, reached), posteriors: either ? there : asked([], ['either']) }
}

/** Posteriors of everything, and the probability of what was seen. */
function clinic(seen: Seen): Record<Thing, number> & { evidence: number } {
  const sums = { visit: 0, tuberculosis: 0, smoking: 0, lung: 0, bronchitis: 0, either: 0, 'x-ray': 0, dyspnoea: 0 }
  let evidence = 0
  const fits = (thing: Thing, is: boolean) => (seen[thing] ?? is) === is
  for (const visit of both.filter((is) => fits('visit', is))) {
    for (const smoking of both.filter((is) => fits('smoking', is))) {
      for (const bronchitis of both.filter((is) => fits('bronchitis', is))) {
        for (const either of both.filter((is) => fits('either', is))) {
          const or = orOf(visit, smoking, either)
          const rest = of(visit, chance.visit) * of(smoking, chance.smoking)
          const shown = [chance.xRay(either), chance.dyspnoea(bronchitis, either)] as const
          const xRay = seen['x-ray'] === undefined ? 1 : of(seen['x-ray'], shown[0])
          const breath = seen.dyspnoea === undefined ? 1 : of(seen.dyspnoea, shown[1])
          const weight = rest * of(bronchitis, chance.bronchitis(smoking)) * or.chance * xRay * breath
          evidence += weight
          sums.visit += weight * Number(visit)
          sums.smoking += weight * Number(smoking)
          sums.bronchitis += weight * Number(bronchitis)
          sums.either += weight * Number(either)
          sums.tuberculosis += weight * or.posteriors.tuberculosis
          sums.lung += weight * or.posteriors.lung
          sums['x-ray'] += weight * (seen['x-ray'] === undefined ? shown[0] : Number(seen['x-ray']))
          sums.dyspnoea += weight * (seen.dyspnoea === undefined ? shown[1] : Number(seen.dyspnoea))
        }
      }
    }
  }
  const posteriors = Object.fromEntries(Object.entries(sums).map(([thing, sum]) => [thing, sum / evidence]))
  // Of the same names as the sums.
  return { ...(posteriors as Record<Thing, number>), evidence }
}

const rows: [string, Seen, Partial<Record<Thing, number>>][] = [
  [
    'nothing',
    {},
    { tuberculosis: 0.0104, lung: 0.055, bronchitis: 0.45, either: 0.064828, 'x-ray': 0.11029004, dyspnoea: 0.4359706 },
  ],
  [
    'visit and dyspnoea',
    { visit: true, dyspnoea: true },
    {
      tuberculosis: 0.087750965,
      lung: 0.0995251451,
      bronchitis: 0.8114020716,
      either: 0.1822998528,
      'x-ray': 0.2195388631,
      smoking: 0.6259198578,
    },
  ],
  ['dyspnoea', { dyspnoea: true }, { tuberculosis: 0.0188453075, lung: 0.1027592228, bronchitis: 0.8339673363 }],
  [
    'visit, dyspnoea and a shadow on the X-ray',
    { visit: true, dyspnoea: true, 'x-ray': true },
    { tuberculosis: 0.39171172, lung: 0.4442705078, bronchitis: 0.628821776, either: 0.8137687024 },
  ],
  [
    'visit and dyspnoea, no shadow',
    { visit: true, dyspnoea: true, 'x-ray': false },
    { tuberculosis: 0.0022486953, lung: 0.002550419, bronchitis: 0.862760773, either: 0.0046715933 },
  ],
  ['visit, no smoking', { visit: true, smoking: false }, { dyspnoea: 0.336775, 'x-ray': 0.105335 }],
  ['a shadow', { 'x-ray': true }, { tuberculosis: 0.0924108832, lung: 0.4887114013, bronchitis: 0.506326156 }],
  [
    'smoking, dyspnoea and a shadow',
    { smoking: true, dyspnoea: true, 'x-ray': true },
    { tuberculosis: 0.0752662576, lung: 0.7237140153, bronchitis: 0.713705508 },
  ],
]

describe('chest clinic', () => {
  it.each(rows)('%s', (_name, seen, printed) => {
    const posteriors = clinic(seen)
    for (const [thing, value] of Object.entries(printed)) {
      // The keys of the row are things.
      expect(Math.abs(posteriors[thing as Thing] - value), thing).toBeLessThanOrEqual(5.1e-11)
    }
  })
  it('visit and dyspnoea together: 0.004501375', () => {
    expect(clinic({ visit: true, dyspnoea: true }).evidence).toBeCloseTo(0.004501375, 11)
  })
  it('either without both causes is ruled out by the table: refused', () => {
    const network = {
      signs: [{ id: 'either', leak: 0 }],
      causes: [
        { id: 'tuberculosis', prior: 0, links: { either: 1 } },
        { id: 'lung', prior: 0, links: { either: 1 } },
      ],
      tests: [],
    }
    expect(() => diagnose(network, { kind: 'any', present: ['either'], absent: [] })).toThrow(
      expect.objectContaining({ errors: [expect.objectContaining({ code: 'no-answer' })] }),
    )
  })
})
