/** The fork of the first page: the proportions of the demo's first unit (invented), at rest under a rider. */
import type { ForkParameters } from '@legwork/drawing'
import { say } from '@legwork/trade'
import { ForkCutaway } from '../cutaway/fork-cutaway.tsx'

const leg = { oil: 10e-6, volume: 205e-6, rod: 0.01 }
const fork: ForkParameters = {
  stanchion: 0.035,
  travel: 0.15,
  stroke: 0.03,
  spring: {
    kind: 'air',
    bore: 0.032,
    shaft: 0.01,
    positiveVolume: 197e-6,
    negative: { kind: 'air', volume: 31e-6 },
    equalisingStroke: 0.0025,
    spacers: 2,
    spacerVolume: 10e-6,
  },
  legs: { left: leg, right: leg },
  pressures: { positive: 7e5, negative: 3e5, left: 0.1e5, right: 0.1e5 },
  ring: 0.065,
}

export function StartDrawing() {
  return <ForkCutaway fork={fork} label={say('start.drawing')} />
}
