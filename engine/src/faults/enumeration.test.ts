/** Diagnosis against writing out every combination of causes, on networks drawn by seed; and printed tables of others. */
import { describe, expect, it } from 'vitest'
import { seededDraws } from '../numerics/random.ts'
import { diagnose } from './diagnose.ts'
import type { FaultNetwork, Links } from './network.ts'

type Seen = Readonly<Record<string, boolean>>

/** P(finding there | causes there), straight from the definition. */
function chanceOf(network: FaultNetwork, id: string, there: ReadonlySet<string>): number {
  const sign = network.signs.find((one) => one.id === id)
  const test = network.tests.find((one) => one.id === id)
  let not = 1 - (sign?.leak ?? test?.falsePositive ?? 0)
  for (const cause of network.causes) {
    if (there.has(cause.id)) not *= 1 - (sign ? (cause.links[id] ?? 0) : (test?.links[cause.id] ?? 0))
  }
  return 1 - not
}

/** Sums over all 2ⁿ combinations of causes. */
function enumerated(network: FaultNetwork, seen: Seen): { evidence: number; posteriors: Record<string, number> } {
  const { causes } = network
  const sums: Record<string, number> = {}
  let evidence = 0
  for (let subset = 0; subset < 2 ** causes.length; subset += 1) {
    const there = new Set(causes.filter((_, place) => (subset >> place) & 1).map(({ id }) => id))
    let weight = 1
    for (const { id, prior } of causes) weight *= there.has(id) ? prior : 1 - prior
    for (const [id, positive] of Object.entries(seen)) {
      const chance = chanceOf(network, id, there)
      weight *= positive ? chance : 1 - chance
    }
    evidence += weight
    for (const id of there) sums[id] = (sums[id] ?? 0) + weight
  }
  return { evidence, posteriors: Object.fromEntries(causes.map(({ id }) => [id, (sums[id] ?? 0) / evidence])) }
}

const entropy = (posteriors: Record<string, number>) =>
  Object.values(posteriors).reduce(
    (sum, p) => sum - (p > 0 && p < 1 ? p * Math.log2(p) + (1 - p) * Math.log2(1 - p) : 0),
    0,
  )

const draw = seededDraws(20_261_125)
const between = (low: number, high: number) => low + (high - low) * draw()
const names = (letter: string, count: number) => Array.from({ length: count }, (_, place) => `${letter}${place}`)

function randomNetwork(): { network: FaultNetwork; present: string[]; absent: string[] } {
  const causeIds = names('c', 2 + Math.floor(between(0, 8)))
  const signIds = names('s', 1 + Math.floor(between(0, 9)))
  const testIds = names('t', Math.floor(between(0, 4)))
  const linked = (ids: readonly string[]): Links =>
    Object.fromEntries(ids.filter(() => draw() < 0.5).map((id) => [id, draw() < 0.1 ? 1 : between(0.02, 0.98)]))
  const network: FaultNetwork = {
    causes: causeIds.map((id) => ({ id, prior: between(0.001, 0.6), links: linked(signIds) })),
    signs: signIds.map((id) => ({ id, leak: between(0.001, 0.2) })),
    tests: testIds.map((id) => ({
      id,
      minutes: between(1, 20),
      falsePositive: between(0.01, 0.2),
      links: linked(causeIds),
    })),
  }
  const present: string[] = []
  const absent: string[] = []
  for (const id of signIds) {
    const drawn = draw()
    if (drawn < 0.5) present.push(id)
    else if (drawn < 0.7) absent.push(id)
  }
  return { network, present, absent }
}

describe('200 random networks, every combination of causes written out', () => {
  const drawn = Array.from({ length: 200 }, randomNetwork)

  it('posteriors and gains', () => {
    for (const { network, present, absent } of drawn) {
      const seen = Object.fromEntries([...present.map((id) => [id, true]), ...absent.map((id) => [id, false])])
      const { posteriors } = enumerated(network, seen)
      const { ranking } = diagnose(network, { kind: 'any', present, absent })
      expect(ranking).toHaveLength(network.causes.length)
      for (const { fault, prior, posterior, gain } of ranking) {
        const theirs = posteriors[fault] ?? Number.NaN
        expect(Math.abs(posterior - theirs)).toBeLessThanOrEqual(1e-12)
        const odds = (p: number) => p / (1 - p)
        if (theirs < 1 - 1e-9) expect(gain).toBeCloseTo(odds(theirs) / odds(prior), 6)
      }
    }
  })

  it('next tests: expected drop of Σ binary entropy a minute', () => {
    let compared = 0
    for (const { network, present, absent } of drawn) {
      const seen = Object.fromEntries([...present.map((id) => [id, true]), ...absent.map((id) => [id, false])])
      const now = enumerated(network, seen)
      const { nextTests } = diagnose(network, { kind: 'any', present, absent })
      for (const { test, minutes, gainPerMinute } of nextTests) {
        const yes = enumerated(network, { ...seen, [test]: true })
        const no = enumerated(network, { ...seen, [test]: false })
        const chance = yes.evidence / now.evidence
        const after = chance * entropy(yes.posteriors) + (1 - chance) * entropy(no.posteriors)
        expect(gainPerMinute).toBeCloseTo((entropy(now.posteriors) - after) / minutes, 9)
        compared += 1
      }
    }
    expect(compared).toBeGreaterThan(150)
  })
})

it('chances of 0 and 1 are answered with finite numbers or refused', () => {
  const edge = () => [0, 1, 1e-300, draw()][Math.floor(draw() * 4)] ?? 0
  const seen = { answered: 0, refused: 0 }
  for (let round = 0; round < 2000; round += 1) {
    const { network, present, absent } = randomNetwork()
    const edged = (links: Links) => Object.fromEntries(Object.keys(links).map((id) => [id, edge()]))
    const odd: FaultNetwork = {
      signs: network.signs.map((sign) => ({ ...sign, leak: edge() })),
      causes: network.causes.map((cause) => ({ ...cause, prior: edge(), links: edged(cause.links) })),
      tests: network.tests.map((test) => ({ ...test, falsePositive: edge(), links: edged(test.links) })),
    }
    try {
      const { posteriors, ranking, nextTests } = diagnose(odd, { kind: 'any', present, absent })
      for (const posterior of Object.values(posteriors)) expect(posterior >= 0 && posterior <= 1).toBe(true)
      for (const { gain } of ranking) expect(gain === null || Number.isFinite(gain)).toBe(true)
      for (const { gainPerMinute } of nextTests) expect(Number.isFinite(gainPerMinute)).toBe(true)
      seen.answered += 1
    } catch (error) {
      expect(error).toMatchObject({ errors: [{ code: 'no-answer' }] })
      seen.refused += 1
    }
  }
  expect(Math.min(seen.answered, seen.refused)).toBeGreaterThan(50)
})

describe('Russell & Norvig, Artificial Intelligence, noisy-OR of fever (q 0.6 cold, 0.2 flu, 0.1 malaria; no leak)', () => {
  // Table of P(no fever | causes).
  it.each([
    ['', 1],
    ['malaria', 0.1],
    ['flu', 0.2],
    ['flu malaria', 0.02],
    ['cold', 0.6],
    ['cold malaria', 0.06],
    ['cold flu', 0.12],
    ['cold flu malaria', 0.012],
  ])('%s: no fever %f', (there, printed) => {
    // Causes of the row are certain, the others out of the question; one more, as likely as not, always brings fever.
    const has = (id: string) => there.split(' ').includes(id)
    const prior = (id: string) => (has(id) ? 1 : 0)
    const network: FaultNetwork = {
      signs: [{ id: 'fever', leak: 0 }],
      causes: [
        { id: 'cold', prior: prior('cold'), links: { fever: 0.4 } },
        { id: 'flu', prior: prior('flu'), links: { fever: 0.8 } },
        { id: 'malaria', prior: prior('malaria'), links: { fever: 0.9 } },
        { id: 'certain', prior: 0.5, links: { fever: 1 } },
      ],
      tests: [],
    }
    // P(certain | fever) = 0.5·1/(0.5·1 + 0.5·(1 − P(no fever | the others))).
    const { posteriors } = diagnose(network, { kind: 'any', present: ['fever'], absent: [] })
    expect(posteriors.certain).toBeCloseTo(0.5 / (0.5 + 0.5 * (1 - printed)), 12)
  })
})
