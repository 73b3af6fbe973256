/** A fork that the tests draw: invented, plausible. */
import type { ForkParameters } from './fork-parameters.ts'

/**
 * @param stroke    [m]
 * @param positive  gauge in the positive chamber [Pa]
 */
export const forkForTests = (stroke: number, positive = 7e5): ForkParameters => ({
  stanchion: 0.035,
  travel: 0.15,
  stroke,
  spring: {
    kind: 'air',
    bore: 0.032,
    shaft: 0.01,
    positiveVolume: 197e-6,
    negative: { kind: 'air', volume: 31e-6 },
    spacers: 1,
    spacerVolume: 10e-6,
  },
  legs: { left: { oil: 1e-5, volume: 205e-6, rod: 0.01 }, right: { oil: 1e-5, volume: 205e-6, rod: 0.01 } },
  pressures: { positive, negative: 3e5, left: 0, right: 0 },
})
