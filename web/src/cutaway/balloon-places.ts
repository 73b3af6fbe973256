import { type ForkParameters, forkStations, lowerBushing, type Point, ringFrom, upperBushing } from '@legwork/drawing'

/** Parts of a spring leg that something can be tied to. */
export type BalloonPart =
  | 'foot'
  | 'bath'
  | 'lower-bushing'
  | 'upper-bushing'
  | 'wiper'
  | 'stanchion'
  | 'air-shaft'
  | 'seal-head'
  | 'negative'
  | 'piston'
  | 'positive'
  | 'spacers'
  | 'cap'
  | 'valve'

/** Inside each part [mm along, mm across], on the side of the leg that lies uppermost. */
export function balloonAnchors(fork: ForkParameters): Readonly<Record<BalloonPart, Point>> {
  const at = forkStations(fork)
  const stroke = fork.stroke * 1e3
  const room = at.rooms.left
  const { innerRadius: ri, outerRadius: ro } = at
  const [lower, upper] = [lowerBushing(room), upperBushing(room)]
  const face = at.headTo + at.negativeLength + at.pistonLength + stroke
  return {
    foot: [6 + stroke, 0],
    bath: [room.floor + stroke + 4, 12],
    'lower-bushing': [(lower.from + lower.to) / 2 + stroke, ro + 0.6],
    'upper-bushing': [(upper.from + upper.to) / 2 + stroke, ro + 0.6],
    wiper: [at.lip + 2 + stroke, ro + 3],
    stanchion: [(ringFrom(at, fork.stroke) + at.crownFrom) / 2, ro - 0.5],
    'air-shaft': [at.headFrom - 24, 3],
    'seal-head': [(at.headFrom + at.headTo) / 2, ri * 0.6],
    negative: [at.headTo + (at.negativeLength + stroke) / 2, ri * 0.6],
    piston: [face - at.pistonLength / 2, ri * 0.6],
    positive: [Math.min(face + 40, (face + at.cap) / 2), ri * 0.6],
    spacers: [at.cap - 6, ri * 0.7],
    cap: [at.crownTo + 2, ro - 2],
    valve: [at.crownTo + 8, 2],
  }
}
