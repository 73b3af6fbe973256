import { type ForkParameters, forkStations, legGap, type Point } from '@legwork/drawing'

export type CalloutPart = 'bath' | 'negative' | 'positive'

export interface CalloutPlace {
  readonly part: CalloutPart
  /** Where its words begin [mm along]. */
  readonly from: number
  /** Inside the part the words belong to; across counts from the left leg's axis towards the right leg. */
  readonly anchor: Point
}

/** What the words take at the drawing's full width [mm]: two figures over a short clause. */
const widths: Record<CalloutPart, number> = { bath: 72, negative: 96, positive: 96 }
const apart = 8

/**
 * Places for the words between the legs: clear of the axle and the arch, which move with the stroke, and of each
 * other; the positive chamber's stand beyond the arch as long as there is room before the crown.
 */
export function calloutPlaces(fork: ForkParameters): CalloutPlace[] {
  const at = forkStations(fork)
  const stroke = fork.stroke * 1e3
  const axle = 31 + stroke + 5
  const arch = { from: at.lip - 26 + stroke, to: at.lip + 20 + stroke }
  const ri = at.innerRadius
  const pistonFace = at.headTo + at.negativeLength + at.pistonLength + stroke
  const anchors: Record<CalloutPart, Point> = {
    bath: [at.rooms.left.floor + stroke + 4, 12],
    negative: [(at.headTo + at.headTo + at.negativeLength + stroke) / 2, ri * 0.65],
    positive: [Math.min(pistonFace + 40, (pistonFace + at.cap) / 2), ri * 0.65],
  }
  const beyond = at.crownFrom - arch.to - apart >= widths.positive
  const leftmost: CalloutPart[] = beyond ? ['bath', 'negative'] : ['bath', 'negative', 'positive']
  const places: CalloutPlace[] = []
  let free = axle
  let needed = leftmost.reduce((sum, part) => sum + widths[part] + apart, 0)
  for (const part of leftmost) {
    // As near above its part as the ones still to come leave room for.
    const latest = Math.max(free, arch.from - needed)
    const from = Math.min(latest, Math.max(free, anchors[part][0] - widths[part] * 0.7))
    places.push({ part, from, anchor: anchors[part] })
    free = from + widths[part] + apart
    needed -= widths[part] + apart
  }
  if (beyond)
    places.push({
      part: 'positive',
      from: Math.min(at.crownFrom - widths.positive, Math.max(arch.to + apart, anchors.positive[0] - 20)),
      anchor: anchors.positive,
    })
  return places
}

/** Across, from the left leg's axis: where a leader meets its words, in the middle between the legs. */
export const wordsAcross = legGap / 2 - 13
