/** Hands at the bench for the rest of the day. */
import type { BenchHands } from '../offline/lines.ts'

/** Where nobody has said otherwise: one person, to five (common practice, no source). */
export const usualHands: BenchHands = { closes: '17:00', people: 1 }

/** Minutes of hands from now to closing, by the station's own time of day; 0 after it. */
export function minutesOfHands({ closes, people }: BenchHands, now: Date): number {
  const [hour = 0, minute = 0] = closes.split(':').map(Number)
  const left = hour * 60 + minute - (now.getHours() * 60 + now.getMinutes())
  return Math.max(0, left) * people
}
