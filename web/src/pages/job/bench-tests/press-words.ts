/** What a hypothesis of the press says, in words, with how far. */
import type { PressHypothesis, PressTest } from '@legwork/engine'
import { say } from '@legwork/trade'

type Text = (value: number, measure: 'm³') => string

const percent = (share: number): string => `${Math.round(share * 100)} %`

/** A value of its parameter as it is read: millilitres, or a share of what the sheet gives. */
function readAs({ name, unit }: PressHypothesis, value: number, text: Text): string {
  if (unit === 'm³') return text(value, 'm³')
  return percent(name === 'pressure-off' ? Math.abs(value - 1) : value)
}

export function hypothesisSays(one: PressHypothesis, text: Text): string {
  const { name, estimate } = one
  if (name === 'as-sheet' || estimate === null) return say('press.fault.as-sheet')
  const value = readAs(one, estimate, text)
  if (name === 'pressure-off') return say(`press.fault.pressure-off.${estimate < 1 ? 'less' : 'more'}`, { value })
  return say(`press.fault.${name}`, { value })
}

/** Nine times in ten. */
export function bandSays(one: PressHypothesis, text: Text): string | null {
  if (!one.band) return null
  const [low, high] = one.band
  if (one.name === 'pressure-off') {
    const signed = (value: number) => `${value < 1 ? '−' : '+'}${readAs(one, value, text)}`
    return say('press.fault.band', { low: signed(low), high: signed(high) })
  }
  return say('press.fault.band', { low: readAs(one, low, text), high: readAs(one, high, text) })
}

/** A BIC of 6 more is what the engine takes for clearly worse, of 20 for out of the question. */
export function standingOf({ hypotheses, verdict }: PressTest, one: PressHypothesis): Standing {
  const [best] = hypotheses
  // Where no fault is needed, one that fits a little better or as well says nothing.
  if (verdict === 'as-sheet' && one.name === 'as-sheet') return 'best'
  if (!best || (one === best && verdict !== 'as-sheet')) return 'best'
  const worse = one.bic - best.bic
  return worse <= 6 ? (verdict === 'as-sheet' ? 'no-better' : 'alike') : worse <= 20 ? 'worse' : 'none'
}
type Standing = 'best' | 'alike' | 'no-better' | 'worse' | 'none'

/** The verdict in one sentence. */
export function verdictSays({ verdict, together, hypotheses }: PressTest, text: Text): string {
  if (verdict === 'as-sheet' || verdict === 'nothing-fits') return say(`press.verdict.${verdict}`)
  const named = (name: string) => {
    const found = hypotheses.find((one) => one.name === name)
    return found ? hypothesisSays(found, text) : ''
  }
  if (verdict !== 'cannot-tell') return say('press.verdict.fault', { fault: named(verdict) })
  return say('press.verdict.cannot-tell', { faults: (together ?? []).map(named).join(say('press.or')) })
}
