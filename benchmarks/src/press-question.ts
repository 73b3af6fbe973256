/** The press that is timed: the demonstration fork at full and at half pressure, twelve stops each. */
import { type PressQuestion, prepareSpring, pressTest } from '@legwork/engine'
import { fork } from './questions.ts'

const stops = [10, 20, 25, 30, 35, 40, 55, 70, 85, 100, 113, 127].map((mm) => mm / 1000)

/** Readings of the fork with so much friction [N], a little off the model at every stop so that no fit is exact. */
function pressed(friction: number): PressQuestion {
  const presses = [1, 0.5].map((share) => {
    const pressure = fork.pressure * share
    const prepared = prepareSpring(fork.spring, pressure, { ambient: fork.ambient })
    const readings = stops.map((stroke, index) => {
      const off = 4 * Math.cos(2.4 * index + share)
      return {
        stroke,
        pressing: prepared.force(stroke) + friction + off,
        releasing: prepared.force(stroke) - friction - off / 2,
      }
    })
    return { pressure, readings }
  })
  return { presses, forceSd: 4, strokeSd: 0.0007, gaugeSd: 0.02, ambient: fork.ambient }
}

export const timedPress = pressed(15)
const sessions = Array.from({ length: 16 }, (_, index) => pressed(10 + index))
let next = 0

/** One number that hangs on every hypothesis of a press test; another friction each time. */
export function pressSum(): number {
  const question = sessions[next % sessions.length] ?? timedPress
  next += 1
  return pressTest(fork.spring, question).hypotheses.reduce((sum, { bic, band }) => sum + bic + (band?.[1] ?? 0), 0)
}
