/** Clicks to start from, counted from closed: a place to begin trying, no answer (common practice, no source). Pure. */

const psi = 6894.757293168
/** So much more pressure asks for one click more closed, in a fork (common practice, no source) [Pa]. */
export const perClick = { least: 6 * psi, most: 10 * psi }

export interface ClicksFrom {
  basis: 'last-visit' | 'as-it-came' | 'middle'
  /** From closed. */
  clicks: number
  /** What the fork held with them, gauge [Pa]. */
  pressure: number
}

export interface StartClicks {
  clicks: number
  /** What the rule of thumb leaves open. */
  low: number
  high: number
  from: ClicksFrom
}

/**
 * Rebound to start from: n = n₀ − (p − p₀)/(6 … 10 psi), whole clicks within the adjuster's range: a stiffer spring returns
 * harder and is held back by one click more for each 6 to 10 psi.
 *
 * @param from      clicks that went with a pressure [Pa gauge]
 * @param pressure  what it is filled to now [Pa gauge]
 * @param range     clicks that the adjuster has
 * @source common practice, no source
 * @example startClicks({ basis: 'middle', clicks: 9, pressure: 551_581 }, 606_739, 18).clicks // 80 to 88 psi: 8
 */
export function startClicks(from: ClicksFrom, pressure: number, range: number): StartClicks {
  const within = (clicks: number) => Math.min(range, Math.max(0, Math.round(clicks)))
  const harder = pressure - from.pressure
  const moved = ([perClick.most, (perClick.least + perClick.most) / 2, perClick.least] as const).map((step) =>
    within(from.clicks - harder / step),
  )
  const [least = 0, clicks = 0, most = 0] = moved
  return { clicks, low: Math.min(least, most), high: Math.max(least, most), from }
}
