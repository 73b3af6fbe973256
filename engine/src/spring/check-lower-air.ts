import { figure } from '../quantities/kinds.ts'
import { type Found, refuse, within, withinIfGiven } from '../refusal/found.ts'
import { legAir, legArea } from './dimensions.ts'
import type { LowerAir } from './spring.ts'

function checkLeg(found: Found, at: string, lower: LowerAir, index: number): Found {
  const leg = lower.legs[index]
  if (!leg) return found
  const here = `${at}legs[${index}].`
  let checked = within(found, here, 'oil', leg.oil, 'volume', 0, 0.005, 'Give the oil in this leg.')
  checked = withinIfGiven(
    checked,
    here,
    'volume',
    leg.volume,
    'volume',
    1e-6,
    0.01,
    'Give the leg without oil, at full length.',
  )
  checked = withinIfGiven(checked, here, 'stanchion', leg.stanchion, 'length', 0.005, 0.2, 'Measure the stanchion.')
  checked = withinIfGiven(checked, here, 'rod', leg.rod, 'length', 0, 0.2, 'Measure the rod.')
  if (checked !== found) return checked
  const stanchion = leg.stanchion ?? lower.stanchion
  const rod = leg.rod ?? lower.rod
  if (rod >= stanchion) {
    const field = leg.rod === undefined ? `${at}rod` : `${here}rod`
    const allowed = `smaller than the stanchion (${figure(stanchion, 'length')})`
    return refuse(
      found,
      field,
      'does-not-fit',
      figure(rod, 'length'),
      allowed,
      'Measure the rod where it enters the leg.',
    )
  }
  const air = legAir(lower, leg)
  if (air <= 1e-7) {
    const allowed = `less than the leg holds (${figure(leg.volume ?? lower.volume, 'volume')})`
    return refuse(
      found,
      `${here}oil`,
      'does-not-fit',
      figure(leg.oil, 'volume'),
      allowed,
      'Drain the leg and measure its oil.',
    )
  }
  const end = (0.999 * air) / legArea(lower, leg)
  const closedStroke = lower.closedStroke ?? 0
  if (closedStroke < end) return found
  const allowed = `less than where this leg's air ends (${figure(end, 'length')})`
  return refuse(
    found,
    `${at}closedStroke`,
    'beyond-end',
    figure(closedStroke, 'length'),
    allowed,
    'Give the stroke at which the legs were closed.',
  )
}

/** What can't be about the air closed in the lower legs. */
export function checkLowerAir(found: Found, at: string, lower: LowerAir, stroke: number): Found {
  let checked = within(
    found,
    at,
    'volume',
    lower.volume,
    'volume',
    1e-6,
    0.01,
    'Give one leg without oil, at full length.',
  )
  checked = within(checked, at, 'stanchion', lower.stanchion, 'length', 0.005, 0.2, 'Measure the stanchion.')
  checked = within(checked, at, 'rod', lower.rod, 'length', 0, 0.2, 'Measure the rod; 0 for an open bath.')
  checked = withinIfGiven(
    checked,
    at,
    'closedStroke',
    lower.closedStroke,
    'length',
    0,
    stroke,
    'Give the stroke at which the legs were closed.',
  )
  if (lower.closedAt !== undefined && lower.closedAt >= 0 && lower.closedAt < 1000) {
    const next = 'It is an absolute pressure: did you mean "1013 hPa"?'
    checked = refuse(
      checked,
      `${at}closedAt`,
      'unlikely-absolute-pressure',
      `${lower.closedAt} Pa`,
      'from 200 hPa to 10000 hPa',
      next,
    )
  } else {
    const next = 'Give the absolute pressure at which the legs were closed, like "1013 hPa".'
    checked = withinIfGiven(checked, at, 'closedAt', lower.closedAt, 'absolutePressure', 20_000, 1e6, next)
  }
  if (!Array.isArray(lower.legs) || lower.legs.length < 1 || lower.legs.length > 2) {
    const came = Array.isArray(lower.legs) ? `${lower.legs.length} legs` : 'no list'
    checked = refuse(checked, `${at}legs`, 'wrong-count', came, 'one or two legs', 'Give each leg with its oil.')
  }
  if (checked !== found) return checked
  for (let index = 0; index < lower.legs.length; index += 1) checked = checkLeg(checked, at, lower, index)
  return checked
}
