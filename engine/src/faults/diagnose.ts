import { type Found, refuse, refuseOne, stopAt, within } from '../refusal/found.ts'
import { countedOnce, posed, stopAtEvidence, unitNetwork } from './evidence.ts'
import { type FaultNetwork, stopAtNetwork } from './network.ts'
import { type NextTest, nextTests } from './next-tests.ts'

export interface DiagnoseQuestion {
  readonly kind: string
  /** Signs and tests by id: there; looked for and not there. What is in neither is unknown. */
  readonly present: readonly string[]
  readonly absent: readonly string[]
  /** On the prior odds of a group of causes. */
  readonly factors?: Readonly<Record<string, number>>
}

export interface RankedFault {
  readonly fault: string
  readonly prior: number
  readonly posterior: number
  /** Posterior odds over prior odds: what the findings say. Null where they leave no doubt. */
  readonly gain: number | null
}

export interface Diagnosis {
  readonly posteriors: Readonly<Record<string, number>>
  readonly ranking: readonly RankedFault[]
  readonly nextTests: readonly NextTest[]
  /** Signs left out because a test of the same observation counts. */
  readonly ignored: readonly string[]
}

/** P(c|e)/P(¬c|e) over P(c)/P(¬c); 1 where the prior left nothing to say. */
function gainOf(prior: number, present: number, absent: number): number | null {
  if (prior === 0 || prior === 1) return 1
  const gain = (present / absent / prior) * (1 - prior)
  return Number.isFinite(gain) ? gain : null
}

/**
 * What may be wrong, from signs and tests: exact posteriors of a network of causes, independent beforehand, each of which
 * brings a sign by its own chance (noisy-OR with a leak for each sign).
 *
 * P(sign absent | causes) = (1 − leak)·Π over causes there (1 − link). Ranked by gain, then by posterior. Next tests by the
 * expected drop of Σ binary entropy a minute.
 *
 * @param network  causes, signs, tests; chances 0 … 1
 * @param question kind of unit, what is there and what is not, factors 0.001 … 1000
 * @returns posteriors [-], gain [-], gainPerMinute [bits/min]
 * @throws Refusal naming every field that can't be; `no-answer` where the network says that the findings can't all be
 * @source J. Pearl, Probabilistic Reasoning in Intelligent Systems (1988), chapter 4
 * @example diagnose({ causes: [{ id: 'cold', prior: 0.1, links: { fever: 0.4 } }], signs: [{ id: 'fever', leak: 0 }], tests: [] }, { kind: 'any', present: [], absent: ['fever'] }).posteriors.cold // 0.0625
 */
export function diagnose(network: FaultNetwork, question: DiagnoseQuestion): Diagnosis {
  const { kind, present, absent, factors = {} } = question
  stopAtNetwork(network)
  let found: Found = null
  for (const [group, factor] of Object.entries(factors)) {
    found = within(found, 'factors.', group, factor, 'number', 0.001, 1000, 'Give a factor on the odds.')
  }
  if (present.length + absent.length > 500) {
    const came = `${present.length + absent.length} signs and tests`
    found = refuse(found, 'present', 'wrong-count', came, 'at most 500', 'Name each once.')
  }
  stopAt(found)
  const unit = unitNetwork(network, kind, factors)
  if (unit.causes.length === 0) {
    refuseOne('kind', 'not-a-choice', JSON.stringify(kind), 'a kind with causes in the network', 'Choose another.')
  }
  stopAtEvidence(unit, kind, { present, absent })
  const { ignored, ...counted } = countedOnce(unit, { present, absent })
  const now = posed(unit, counted)
  if (!now) {
    const came = [...counted.present, ...counted.absent.map((id) => `no ${id}`)].join(', ')
    const allowed = 'findings that some of the causes allow together'
    return refuseOne('present', 'no-answer', came, allowed, 'Look again at the signs, or give the network a leak.')
  }
  const ranking = unit.causes.map(({ id }, place): RankedFault => {
    const there = now.explained.present[place] ?? 0
    const not = now.explained.absent[place] ?? 0
    const prior = unit.priors[place] ?? 0
    return { fault: id, prior, posterior: there / (there + not), gain: gainOf(prior, there, not) }
  })
  const posteriors = Object.fromEntries(ranking.map(({ fault, posterior }) => [fault, posterior]))
  // Rounding must not rank what the findings say nothing of.
  const told = ({ gain }: RankedFault) => Number((gain ?? Number.MAX_VALUE).toPrecision(9))
  ranking.sort((one, other) => told(other) - told(one) || other.posterior - one.posterior)
  return { posteriors, ranking, nextTests: nextTests(unit, counted, now), ignored }
}
