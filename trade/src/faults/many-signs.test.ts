/**
 * Many signs at once, against inclusion–exclusion over all subsets of them in whole numbers without rounding: every chance of
 * the tables is a whole number of hundredths.
 */
import { diagnose } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import type { UnitKind } from '../sheets/sheet.ts'
import { faultNetwork } from './fault-network.ts'

const hundredths = (chance: number) => BigInt(Math.round(chance * 100))

/** Σ over subsets of the positive signs of (−1)^|subset|·P(subset and all negative ones absent), times 100^… */
function exact(kind: UnitKind, present: readonly string[], absent: readonly string[], known: string | null): bigint {
  const causes = faultNetwork.causes.filter((cause) => cause.kinds?.includes(kind) ?? true)
  const leakOf = (id: string) => hundredths(1 - (faultNetwork.signs.find((sign) => sign.id === id)?.leak ?? 0))
  let sum = 0n
  for (let subset = 0; subset < 2 ** present.length; subset += 1) {
    const off = [...absent, ...present.filter((_, place) => (subset >> place) & 1)]
    let term = 1n
    // Every term carries the same powers of a hundred: one for each finding in all, one for each cause and finding.
    for (const id of [...absent, ...present]) term *= off.includes(id) ? leakOf(id) : 100n
    for (const cause of causes) {
      let quiet = hundredths(cause.prior)
      for (const id of [...absent, ...present])
        quiet *= off.includes(id) ? 100n - hundredths(cause.links[id] ?? 0) : 100n
      const without = hundredths(1 - cause.prior) * 100n ** BigInt(absent.length + present.length)
      term *= cause.id === known ? quiet : quiet + without
    }
    const odd = off.length - absent.length
    sum += odd % 2 === 0 ? term : -term
  }
  return sum
}

/** Quotient of whole numbers to sixteen digits. */
const share = (part: bigint, whole: bigint) => Number((part * 10n ** 20n) / whole) / 1e20

describe('eight to ten signs at once, exact in whole numbers', () => {
  it.each<[UnitKind, string, string, string]>([
    ['fork-air', 'S05 S06 S08 S16 S27 S04 S10 S15', 'S33', 'C02 C14 C22 C25'],
    ['fork-air', 'S01 S02 S03 S09 S30 S31 S32 S21', 'S19 S20', 'C05 C06 C07 C50'],
    ['fork-coil', 'S05 S06 S07 S11 S16 S19 S22 S34 S35', '', 'C15 C41 C42 C43'],
    ['shock-coil', 'S05 S10 S12 S13 S15 S18 S22 S23 S26 S34', 'S07', 'C33 C34 C35 C39'],
  ])('%s: %s', (kind, there, not, causes) => {
    const present = there.split(' ')
    const absent = not === '' ? [] : not.split(' ')
    const { posteriors } = diagnose(faultNetwork, { kind, present, absent })
    const whole = exact(kind, present, absent, null)
    for (const cause of causes.split(' ')) {
      expect(posteriors[cause]).toBeCloseTo(share(exact(kind, present, absent, cause), whole), 13)
    }
  })
})
