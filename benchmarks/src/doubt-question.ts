/** The doubt that is timed: 10,000 draws of a sag whose pressure and load are doubtful. */
import { doubtAtOnce, sag } from '@legwork/engine'
import { fork } from './questions.ts'

export const doubted = { draws: 10_000, uPressure: 6894.757, uLoad: 8 }
const names = ['pressure', 'load']
const stroke = new Float64Array(1)
let seed = 0

export function doubtOfSag() {
  seed += 1
  const { outputs } = doubtAtOnce({
    inputs: [
      { value: fork.pressure, u: doubted.uPressure },
      { value: fork.load, u: doubted.uLoad },
    ],
    names,
    outputs: 1,
    draws: doubted.draws,
    seed,
    run([pressure = 0, load = 0]) {
      stroke[0] = sag(fork.spring, { pressure, load }).stroke
      return stroke
    },
  })
  const [output] = outputs
  if (!output) throw new Error('no output was drawn')
  return output
}

/** One number that hangs on band and shares; another seed each time. */
export function doubtSum(): number {
  const { spread, shares } = doubtOfSag()
  return spread.median + spread.low + spread.high + (shares.pressure ?? 0) + (shares.load ?? 0)
}
