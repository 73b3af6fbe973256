import { type Found, refuse, stopAt, within } from '../refusal/found.ts'

export interface Life {
  /** Hours it ran [h]; any unit of use does, the answer has the same. */
  readonly hours: number
  /** It failed then; otherwise it ran at least so long. */
  readonly failed: boolean
}

/** Between the 5 % and the 95 % quantile of a normal distribution. */
export const z90 = 1.6448536269514722

/** 1 … 100 000 lives of 0.01 … 1 000 000 h. */
export function livesWithin(lives: readonly Life[]): Found {
  if (lives.length < 1 || lives.length > 100_000) {
    const next = 'Give every life, those still running too.'
    return refuse(null, 'lives', 'wrong-count', `${lives.length} lives`, '1 to 100,000 lives', next)
  }
  let found: Found = null
  for (let index = 0; index < lives.length; index += 1) {
    const hours = lives[index]?.hours
    // A path is written only where one is refused.
    if (hours !== undefined && hours >= 0.01 && hours <= 1e6) continue
    found = within(found, `lives[${index}].`, 'hours', hours, 'number', 0.01, 1e6, 'Give the hours it ran.')
    if (found && found.length >= 20) break
  }
  return found
}

/** Checked on their own, for functions asked without the rest of a question. */
export function stopAtLives(lives: readonly Life[]): void {
  stopAt(livesWithin(lives))
}
