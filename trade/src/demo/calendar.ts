/** The demo's calendar: its story ends on 29 May and is shifted by whole weeks, so that weekdays keep. */
const day = 86_400_000
const storyMonth = Date.UTC(2023, 4, 1)
const lastDay = 29

/**
 * The moment of the story, shifted by whole weeks so that its last day lies 1 to 7 days before `today`.
 *
 * @param dayOfMay  1 … 31, a day of the story
 * @param time      minutes after midnight, UTC
 * @param today     any moment of today
 * @example storyTime(29, 0, new Date('2026-06-03T10:00:00Z')).toISOString() // '2026-06-01T00:00:00.000Z'
 */
export function storyTime(dayOfMay: number, time: number, today: Date): Date {
  const midnight = Math.floor(today.getTime() / day) * day
  const last = storyMonth + (lastDay - 1) * day
  const weeks = Math.floor((midnight - day - last) / (7 * day))
  return new Date(storyMonth + (dayOfMay - 1) * day + weeks * 7 * day + time * 60_000)
}
