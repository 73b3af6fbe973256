import { type Found, refuse, stopAt } from '../refusal/found.ts'
import { eliminationOrder, type Finding, type Order } from './elimination-order.ts'
import { type Explained, explain } from './explain.ts'
import type { FaultCause, FaultNetwork, FaultTest } from './network.ts'

/** The part of a network that one kind of unit has. */
export interface UnitNetwork {
  readonly causes: readonly FaultCause[]
  readonly tests: readonly FaultTest[]
  /** Signs and tests. */
  readonly findings: ReadonlyMap<string, Finding>
  /** With what is known of the unit beforehand in them. */
  readonly priors: Float64Array
  /** Signs that a test stands for. */
  readonly pairedSigns: ReadonlyMap<string, readonly string[]>
}

/** What was seen and what was looked for and not seen; the rest is unknown. */
export interface Evidence {
  readonly present: readonly string[]
  readonly absent: readonly string[]
}

function hasKind(kinds: readonly string[] | undefined, kind: string): boolean {
  return kinds?.includes(kind) ?? true
}

/** Prior odds times a factor, as a chance. */
function withFactor(prior: number, factor: number): number {
  return (prior * factor) / (prior * factor + 1 - prior)
}

/**
 * Causes, signs and tests of a kind, factors of groups on the prior odds.
 *
 * @param network  checked before
 * @param kind     of unit; what names no kinds belongs to all
 * @param factors  by group, on the odds p/(1 − p) [-]
 * @source odds form of Bayes' rule: J. Pearl, Probabilistic Reasoning in Intelligent Systems (1988), 2.1.2
 * @example unitNetwork({ signs: [], causes: [{ id: 'bent', group: 'damage', prior: 0.05, links: {} }], tests: [] }, 'any', { damage: 4 }).priors[0] // 0.173913
 */
export function unitNetwork(
  network: FaultNetwork,
  kind: string,
  factors: Readonly<Record<string, number>>,
): UnitNetwork {
  const causes = network.causes.filter(({ kinds }) => hasKind(kinds, kind))
  const placeOf = new Map(causes.map(({ id }, place) => [id, place]))
  const findings = new Map<string, Finding>()
  for (const { id, kinds, leak } of network.signs) {
    if (!hasKind(kinds, kind)) continue
    const links = causes.flatMap((cause, place): [number, number][] => {
      const chance = Object.hasOwn(cause.links, id) ? cause.links[id] : undefined
      return chance === undefined ? [] : [[place, chance]]
    })
    findings.set(id, { leak, links: new Map(links) })
  }
  const tests = network.tests.filter(({ links }) => Object.keys(links).some((cause) => placeOf.has(cause)))
  for (const { id, falsePositive, links } of tests) {
    const here = Object.entries(links).flatMap(([cause, chance]): [number, number][] => {
      const place = placeOf.get(cause)
      return place === undefined ? [] : [[place, chance]]
    })
    findings.set(id, { leak: falsePositive, links: new Map(here) })
  }
  const factorOf = (group: string | undefined) =>
    group !== undefined && Object.hasOwn(factors, group) ? (factors[group] ?? 1) : 1
  const priors = Float64Array.from(causes, ({ prior, group }) => withFactor(prior, factorOf(group)))
  const pairedSigns = new Map(
    tests.map(({ id }) => [id, (network.pairs ?? []).filter(({ test }) => test === id).map(({ sign }) => sign)]),
  )
  return { causes, tests, findings, priors, pairedSigns }
}

/**
 * Refuses what this kind of unit does not show, and what is both there and not there.
 *
 * @throws Refusal naming every id that can't be
 */
export function stopAtEvidence(unit: UnitNetwork, kind: string, { present, absent }: Evidence): void {
  let found: Found = null
  const known = [...unit.findings.keys()].join(', ')
  const check = (list: 'present' | 'absent', ids: readonly string[]) => {
    ids.forEach((id, index) => {
      const field = `${list}[${index}]`
      if (!unit.findings.has(id)) {
        const allowed = `a sign or test of ${kind}: ${known || 'there is none'}`
        found = refuse(found, field, 'not-a-choice', JSON.stringify(id), allowed, 'Choose one of these.')
      } else if (list === 'absent' && present.includes(id)) {
        found = refuse(found, field, 'does-not-fit', id, 'not present as well', 'Say whether it is there or not.')
      }
    })
  }
  check('present', present)
  check('absent', absent)
  stopAt(found)
}

/**
 * Evidence in which near-identical pairs count once: a sign is left out where its test was done, told in `ignored`.
 * That a sign and its bench test are one observation is an estimate of the trade, no source.
 *
 * @example countedOnce({ causes: [], tests: [], findings: new Map(), priors: new Float64Array(), pairedSigns: new Map([['T16', ['S36']]]) }, { present: ['S36', 'T16'], absent: [] }).ignored // ["S36"]
 */
export function countedOnce(unit: UnitNetwork, { present, absent }: Evidence): Evidence & { ignored: string[] } {
  const given = [...new Set([...present, ...absent])]
  const doubled = new Set(given.flatMap((id) => unit.pairedSigns.get(id) ?? []))
  return {
    present: [...new Set(present)].filter((id) => !doubled.has(id)),
    absent: [...new Set(absent)].filter((id) => !doubled.has(id)),
    ignored: given.filter((id) => doubled.has(id)),
  }
}

/**
 * Priors with negative findings in them, and the chance of those findings: a noisy-OR that stayed away parts into one factor a
 * cause, 1 − prior·link.
 *
 * @param priors    by place of the cause
 * @param findings  the negative ones
 * @source J. Pearl, Probabilistic Reasoning in Intelligent Systems (1988), noisy-OR, 4.3.2
 * @example afterAbsent(Float64Array.of(0.1), [{ leak: 0, links: new Map([[0, 0.4]]) }]).priors[0] // 0.0625
 */
export function afterAbsent(
  priors: Float64Array,
  findings: readonly Finding[],
): { priors: Float64Array; chance: number } {
  const after = Float64Array.from(priors)
  let chance = 1
  for (const { leak, links } of findings) {
    chance *= 1 - leak
    for (const [place, link] of links) {
      const prior = after[place] ?? 0
      const kept = 1 - prior * link
      chance *= kept
      after[place] = kept > 0 ? (prior * (1 - link)) / kept : 0
    }
  }
  return { priors: after, chance }
}

/** Evidence ready for inference: negative findings folded into the priors, an order for the positive ones. */
export interface Posed {
  readonly order: Order
  readonly priors: Float64Array
  readonly explained: Explained
}

/** Rarer together than this, the smallest numbers a computer has would decide. */
const leastEvidence = 1e-290

/** @returns null where the findings can't all be */
export function posed(unit: UnitNetwork, { present, absent }: Evidence): Posed | null {
  const findingsOf = (ids: readonly string[]) => ids.flatMap((id) => unit.findings.get(id) ?? [])
  const order = eliminationOrder(findingsOf(present), unit.causes.length)
  stopAtWork(order, unit, present.length)
  const folded = afterAbsent(unit.priors, findingsOf(absent))
  const explained = explain(order, folded.priors)
  return folded.chance > 0 && explained.evidence > leastEvidence ? { order, priors: folded.priors, explained } : null
}

/** About a second of work with all next tests. */
const mostWork = 3e8

function stopAtWork(order: Order, unit: UnitNetwork, present: number): void {
  if (order.work * (unit.tests.length + 1) <= mostWork) return
  const allowed = 'few enough to weigh together; more share too many causes'
  const next = 'Leave out the signs you are least sure of.'
  stopAt(refuse(null, 'present', 'wrong-count', `${present} signs and tests`, allowed, next))
}
