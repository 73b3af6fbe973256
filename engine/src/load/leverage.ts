import { figure } from '../quantities/kinds.ts'
import type { Metre } from '../quantities/si.ts'
import { type Found, refuse, within } from '../refusal/found.ts'

/** d(wheel travel)/d(shock stroke): one number, a straight line over the full shock stroke, or a table (straight between). */
export type Leverage =
  | number
  | { readonly start: number; readonly end: number; readonly stroke: Metre }
  | readonly { readonly stroke: Metre; readonly leverage: number }[]

const nextRatio = 'Give wheel travel over shock stroke, like 2.6.'

function isTable(leverage: Leverage): leverage is readonly { readonly stroke: Metre; readonly leverage: number }[] {
  return Array.isArray(leverage)
}

/** What can't be about a leverage. */
export function checkLeverage(found: Found, leverage: Leverage): Found {
  if (typeof leverage === 'number') return within(found, '', 'leverage', leverage, 'number', 0.5, 10, nextRatio)
  if (!isTable(leverage)) {
    let checked = within(found, 'leverage.', 'start', leverage.start, 'number', 0.5, 10, nextRatio)
    checked = within(checked, 'leverage.', 'end', leverage.end, 'number', 0.5, 10, nextRatio)
    return within(checked, 'leverage.', 'stroke', leverage.stroke, 'length', 0.005, 0.5, 'Give the full shock stroke.')
  }
  if (leverage.length < 2 || leverage.length > 1000) {
    const came = `${leverage.length} lines`
    return refuse(
      found,
      'leverage',
      'wrong-count',
      came,
      '2 to 1000 lines',
      'Give stroke and leverage at two strokes or more.',
    )
  }
  let checked = found
  let before = -1
  leverage.forEach((line, index) => {
    const at = `leverage[${index}].`
    checked = within(checked, at, 'leverage', line.leverage, 'number', 0.5, 10, nextRatio)
    checked = within(checked, at, 'stroke', line.stroke, 'length', 0, 0.5, 'Give the shock stroke.')
    if (checked === null && line.stroke <= before) {
      const allowed = `more than the line before (${figure(before, 'length')})`
      checked = refuse(
        checked,
        `${at}stroke`,
        'does-not-fit',
        figure(line.stroke, 'length'),
        allowed,
        'Sort the table by stroke.',
      )
    }
    before = line.stroke
  })
  return checked
}

/** A straight line of leverage ends with the full stroke it was given for; a table's last value goes on. */
export function strokeOnLeverage(found: Found, field: string, stroke: Metre, leverage: Leverage): Found {
  if (typeof leverage === 'number' || isTable(leverage) || stroke <= leverage.stroke * (1 + 1e-9)) return found
  const allowed = `at most leverage.stroke (${figure(leverage.stroke, 'length')})`
  return refuse(
    found,
    field,
    'beyond-end',
    figure(stroke, 'length'),
    allowed,
    'Give leverage over the full shock stroke.',
  )
}

/** Ratio and travel at a shock stroke; beyond a table's ends its end values go on. */
function along(leverage: Leverage, stroke: Metre): { ratio: number; travel: Metre } {
  if (typeof leverage === 'number') return { ratio: leverage, travel: leverage * stroke }
  if (!isTable(leverage)) {
    const slope = (leverage.end - leverage.start) / leverage.stroke
    return { ratio: leverage.start + slope * stroke, travel: leverage.start * stroke + (slope * stroke * stroke) / 2 }
  }
  let travel = 0
  let ratio = leverage[0]?.leverage ?? 0
  let from = 0
  for (const line of leverage) {
    const before = from
    if (line.stroke > from) {
      const to = Math.min(stroke, line.stroke)
      const there = ratio + ((line.leverage - ratio) * (to - before)) / (line.stroke - before)
      travel += ((ratio + there) / 2) * (to - before)
      if (line.stroke >= stroke) return { ratio: there, travel }
    }
    ratio = line.leverage
    from = line.stroke
  }
  return { ratio, travel: travel + ratio * (stroke - from) }
}

/**
 * Leverage at a shock stroke.
 *
 * @example leverageAt({ start: 3, end: 2, stroke: 0.06 }, 0.03) // 2.5
 */
export function leverageAt(leverage: Leverage, stroke: Metre): number {
  return along(leverage, stroke).ratio
}

/**
 * Wheel travel at a shock stroke: ∫ leverage ds [m].
 *
 * @example wheelTravel({ start: 3, end: 2, stroke: 0.06 }, 0.06) // 0.15
 */
export function wheelTravel(leverage: Leverage, stroke: Metre): Metre {
  return along(leverage, stroke).travel
}
