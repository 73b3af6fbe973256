import type { Metre } from '../quantities/si.ts'

/** An instrument that would put the whole band on one side of the limit. */
export interface Deciding {
  instrument: 'bore-gauge' | 'micrometer' | 'both'
  /** Standard uncertainty it may have at most; for both, each. */
  u: Metre
}

/** What the best instruments of a workshop reach. */
const smallest = 0.5e-6

/**
 * The instrument whose smaller doubt would decide: the one that adds more doubt now, the other where that one can't,
 * both where neither can alone.
 *
 * @param clearance  as measured [m]
 * @param limit       from which to watch, and that fails [m]
 * @param uStanchion  standard uncertainty of the micrometer now [m]
 * @param uBushing    of the bore gauge now [m]
 * @returns null where the limit lies so near that no workshop's instrument decides
 * @source band ±1.645·√(uStanchion² + uBushing²): doubts combined after JCGM 100:2008 5.1.2
 * @example decidingInstrument(0.00011, { watch: 0.00012, fail: 0.0002 }, 0.000005, 0.00001).instrument // "bore-gauge"
 */
export function decidingInstrument(
  clearance: Metre,
  limit: { readonly watch: Metre; readonly fail: Metre },
  uStanchion: Metre,
  uBushing: Metre,
): Deciding | null {
  const nearest = Math.min(Math.abs(clearance - limit.watch), Math.abs(clearance - limit.fail))
  const wanted = nearest / 1.645
  const bore = { instrument: 'bore-gauge', u: Math.sqrt(Math.max(0, wanted ** 2 - uStanchion ** 2)) } as const
  const micrometer = { instrument: 'micrometer', u: Math.sqrt(Math.max(0, wanted ** 2 - uBushing ** 2)) } as const
  const alone = uBushing >= uStanchion ? [bore, micrometer] : [micrometer, bore]
  const both = { instrument: 'both', u: wanted / Math.SQRT2 } as const
  return [...alone, both].find(({ u }) => u >= smallest) ?? null
}
