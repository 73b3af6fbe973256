/** The return times that are timed: the bare lowers of the demonstration fork, from 80 to 200 ms. */
import { dampingFromReturn } from '@legwork/engine'
import { fork } from './questions.ts'

export const lowers = { pressure: fork.pressure, mass: 2, friction: 20, from: 0.1, to: 0.02 }
export const returnTimes = Array.from({ length: 16 }, (_, index) => 0.08 + 0.008 * index)
let next = 0

export function dampingOf(time: number): number {
  return dampingFromReturn(fork.spring, { ...lowers, time }).damping ?? Number.NaN
}

/** Damping from one return time; another time each. */
export function returnSum(): number {
  const time = returnTimes[next % returnTimes.length] ?? 0.1
  next += 1
  return dampingOf(time)
}
