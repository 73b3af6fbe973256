import { studentFactor } from '../numerics/student-t.ts'
import { figure } from '../quantities/kinds.ts'
import type { NewtonSecondPerMetre } from '../quantities/si.ts'
import { type Found, refuse, refuseOne, stopAt, within } from '../refusal/found.ts'
import { dampingWithin, largestDamping } from './return-time.ts'

/** One setting that was measured. */
export interface ClickSetting {
  /** Opened from closed. */
  readonly clicks: number
  readonly damping: NewtonSecondPerMetre
}

export interface ClicksQuestion {
  readonly settings: readonly ClickSetting[]
  readonly wanted: NewtonSecondPerMetre
}

export interface ClicksForDamping {
  /** From closed, not rounded. */
  clicks: number
  /** 90 %; null with two settings, which leave nothing over to judge by. */
  band: [number, number] | null
  /** Damping with the adjuster closed. */
  closed: NewtonSecondPerMetre
  /** Share of the damping that one click out takes away. */
  perClick: number
}

function checkSettings(found: Found, settings: readonly ClickSetting[]): Found {
  if (!Array.isArray(settings) || settings.length < 2 || settings.length > 100) {
    const came = Array.isArray(settings) ? `${settings.length} settings` : 'no list'
    return refuse(found, 'settings', 'wrong-count', came, '2 to 100 settings', 'Measure the damping at two settings.')
  }
  return settings.reduce<Found>((before, { clicks, damping }, index) => {
    const at = `settings[${index}].`
    const checked = within(before, at, 'clicks', clicks, 'number', 0, 200, 'Count the clicks out from closed.')
    return dampingWithin(checked, `${at}damping`, damping, 0.1)
  }, found)
}

/**
 * Clicks for a wanted damping: c = c_closed·e^(−β·n) laid through measured settings, least squares of ln c over n.
 *
 * Band: Student's t with N − 2 degrees of freedom, ±t·s/β·√(1/N + (n − n̄)²/Σ(n_i − n̄)²), s the scatter of ln c about the
 * line. It is the doubt of the line there, not of one more measurement.
 *
 * @param question  settings [clicks, N·s/m], wanted [N·s/m]
 * @returns clicks, band, closed [N·s/m], perClick = 1 − e^(−β)
 * @throws Refusal naming every field that can't be; settings that do not fall with the clicks; more than closed gives
 * @source least squares: JCGM 100:2008 (GUM), H.3; the law is common practice, no source
 * @example clicksForDamping({ settings: [{ clicks: 0, damping: 1000 }, { clicks: 10, damping: 500 }], wanted: 707.107 }).clicks // 5.000
 */
export function clicksForDamping({ settings, wanted }: ClicksQuestion): ClicksForDamping {
  stopAt(checkSettings(dampingWithin(null, 'wanted', wanted, 0.1), settings))
  const count = settings.length
  const middle = settings.reduce((sum, { clicks }) => sum + clicks, 0) / count
  const height = settings.reduce((sum, { damping }) => sum + Math.log(damping), 0) / count
  const spread = settings.reduce((sum, { clicks }) => sum + (clicks - middle) ** 2, 0)
  if (spread < 0.1) {
    const allowed = 'at least two different settings of the adjuster'
    refuseOne('settings', 'does-not-fit', 'all at the same clicks', allowed, 'Measure once more at other clicks.')
  }
  const fall = -settings.reduce((sum, one) => sum + (one.clicks - middle) * Math.log(one.damping), 0) / spread
  if (fall * middle + height > Math.log(10 * largestDamping)) {
    const allowed = `settings that leave closed at most ${figure(10 * largestDamping, 'damping')}`
    refuseOne('settings', 'no-answer', 'damping that falls too steeply', allowed, 'Check clicks and damping.')
  }
  if (!(fall > 1e-6)) {
    const allowed = 'less damping the more clicks are opened'
    refuseOne('settings', 'no-answer', 'damping that does not fall', allowed, 'Count the clicks out from closed.')
  }
  const clicks = middle + (height - Math.log(wanted)) / fall
  const closed = Math.exp(height + fall * middle)
  const perClick = 1 - Math.exp(-fall)
  if (clicks < 0) {
    const allowed = `at most what the adjuster gives closed (${figure(closed, 'damping')})`
    refuseOne('wanted', 'no-answer', figure(wanted, 'damping'), allowed, 'It needs another valving or thicker oil.')
  }
  if (count === 2) return { clicks, band: null, closed, perClick }
  const left = settings.reduce(
    (sum, one) => sum + (Math.log(one.damping) - height + fall * (one.clicks - middle)) ** 2,
    0,
  )
  const scatter = Math.sqrt(left / (count - 2))
  const doubt = (scatter / fall) * Math.sqrt(1 / count + (clicks - middle) ** 2 / spread)
  const half = studentFactor(0.9, count - 2) * doubt
  return { clicks, band: [clicks - half, clicks + half], closed, perClick }
}
