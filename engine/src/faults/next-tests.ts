import { afterAbsent, type Evidence, type Posed, posed, type UnitNetwork } from './evidence.ts'
import { explain } from './explain.ts'
import type { FaultTest } from './network.ts'

export interface NextTest {
  readonly test: string
  readonly minutes: number
  /** Expected drop of uncertainty [bits/min]. */
  readonly gainPerMinute: number
  /** Causes it tells most of, up to three; safety first. */
  readonly because: readonly string[]
  /** It goes first: a cause that may hurt somebody is not ruled out. */
  readonly safety: boolean
}

/** Below this a cause that may hurt somebody counts as ruled out. */
const ruledOut = 0.02

/** Uncertainty of a yes or no [bit]. */
function binaryEntropy(chance: number): number {
  if (chance <= 0 || chance >= 1) return 0
  return -(chance * Math.log2(chance) + (1 - chance) * Math.log2(1 - chance))
}

function chances({ present, absent }: { present: Float64Array; absent: Float64Array }): Float64Array {
  return present.map((value, place) => value / (value + (absent[place] ?? 0)))
}

/** Posteriors after either reading of a test, and the chance of a positive one. */
function readings(test: FaultTest, unit: UnitNetwork, at: Posed) {
  const finding = unit.findings.get(test.id)
  const before = chances(at.explained)
  if (!finding) return null
  const folded = afterAbsent(at.priors, [finding])
  const explained = explain(at.order, folded.priors)
  const negativeChance = Math.min(1, (folded.chance * explained.evidence) / at.explained.evidence)
  const positiveChance = 1 - negativeChance
  const negative = negativeChance > 0 ? chances(explained) : before
  const positive = before.map((value, place) => {
    if (positiveChance <= 0) return value
    return Math.min(1, Math.max(0, (value - (negative[place] ?? 0) * negativeChance) / positiveChance))
  })
  return { positiveChance, positive, negative }
}

/**
 * Tests not yet done by the drop of uncertainty they promise a minute: Σ over causes of the binary entropy now, less its
 * expectation after; tests of a safety cause that is not ruled out (0.02) stand first.
 *
 * A test that stands for a sign already given is weighed as it would be counted: without that sign.
 */
export function nextTests(unit: UnitNetwork, evidence: Evidence, now: Posed): NextTest[] {
  const given = new Set([...evidence.present, ...evidence.absent])
  const before = chances(now.explained)
  const list = unit.tests.flatMap((test): NextTest[] => {
    if (given.has(test.id)) return []
    const doubled = (unit.pairedSigns.get(test.id) ?? []).filter((sign) => given.has(sign))
    const without = (ids: readonly string[]) => ids.filter((id) => !doubled.includes(id))
    const then =
      doubled.length === 0 ? now : posed(unit, { present: without(evidence.present), absent: without(evidence.absent) })
    const expected = readings(test, unit, now)
    const after = then === now ? expected : then && readings(test, unit, then)
    if (!expected || !after) return []
    const { positiveChance } = expected
    const drops = unit.causes.map(({ id, safety = false }, place) => {
      const left =
        positiveChance * binaryEntropy(after.positive[place] ?? 0) +
        (1 - positiveChance) * binaryEntropy(after.negative[place] ?? 0)
      const open = safety && Object.hasOwn(test.links, id) && (before[place] ?? 0) >= ruledOut
      return { id, open, drop: binaryEntropy(before[place] ?? 0) - left }
    })
    const gain = drops.reduce((sum, { drop }) => sum + drop, 0)
    if (gain < 1e-9) return []
    const told = drops.filter(({ id, drop }) => drop > 1e-9 && Object.hasOwn(test.links, id))
    told.sort((one, other) => Number(other.open) - Number(one.open) || other.drop - one.drop)
    const because = told.slice(0, 3).map(({ id }) => id)
    const safety = drops.some(({ open }) => open)
    return [{ test: test.id, minutes: test.minutes, gainPerMinute: gain / test.minutes, because, safety }]
  })
  return list.sort((one, other) => Number(other.safety) - Number(one.safety) || other.gainPerMinute - one.gainPerMinute)
}
