/** One hypothesis against the readings: its best value, how sure that is, and what it costs. */
import { minimum } from '../numerics/minimum.ts'
import type { Spring } from '../spring/spring.ts'
import { type FaultRange, type HypothesisName, pressureOffSd } from './press-hypothesis.ts'
import { type Doubts, type Explained, explainedAt, explainedBest } from './press-likelihood.ts'
import { foreseenBy, type Stops } from './press-model.ts'
import type { PressQuestion } from './press-question.ts'
import { shortestBand } from './shortest-band.ts'

export interface PressFit extends Explained {
  name: HypothesisName
  /** Null where the hypothesis has no parameter of its own. */
  estimate: number | null
  unit: '1' | 'm³' | null
  band: [number, number] | null
  bic: number
  /** Readings and priors less parameters. */
  freedom: number
}

interface Asked {
  readonly spring: Spring
  readonly question: PressQuestion
  readonly stops: Stops
}

function doubtsOf({ spring, question }: Asked, name: HypothesisName): Doubts {
  const gaugeSd = name === 'pressure-off' ? pressureOffSd : (question.gaugeSd ?? 0.02)
  const scaleSd = spring.kind === 'coil' ? null : gaugeSd
  return { forceSd: question.forceSd, strokeSd: question.strokeSd, scaleSd }
}

function explainedWith(asked: Asked, name: HypothesisName): (value: number) => Explained {
  const { spring, question, stops } = asked
  const doubts = doubtsOf(asked, name)
  const foreseenAt = foreseenBy(spring, question, stops, name)
  if (name === 'pressure-off') {
    const foreseen = foreseenAt(1)
    return (value) => explainedAt(foreseen(value), stops, doubts, value)
  }
  // Neighbouring values have neighbouring scales.
  let scale = 1
  return (value) => {
    const foreseen = foreseenAt(value)
    if (doubts.scaleSd === null) return explainedAt(foreseen(1), stops, doubts, 1)
    const explained = explainedBest(foreseen, stops, doubts, scale)
    scale = explained.scale
    return explained
  }
}

const looks = 24

/** The value of a fault that explains most. */
function bestValue(explain: (value: number) => Explained, { low, high }: FaultRange): number {
  const step = (high - low) / looks
  let best = low
  let least = Number.POSITIVE_INFINITY
  for (let look = 0; look <= looks; look += 1) {
    const value = low + look * step
    const { minusTwoLog } = explain(value)
    if (minusTwoLog >= least) continue
    least = minusTwoLog
    best = value
  }
  const from = Math.max(low, best - step)
  const to = Math.min(high, best + step)
  const found = minimum((value) => explain(value).minusTwoLog, from, to, step * 1e-5)
  return found.value < least ? found.at : best
}

/** `as-sheet`: nothing but friction, and the gauge's own error. */
export function fitAsSheet(asked: Asked): PressFit {
  const explained = explainedWith(asked, 'as-sheet')(0)
  const freedom = 2 * asked.stops.count - 1
  return { name: 'as-sheet', ...explained, estimate: null, unit: null, band: null, bic: explained.minusTwoLog, freedom }
}

/** A fault at its best. */
export function fitFault(asked: Asked, fault: FaultRange): PressFit {
  const explain = explainedWith(asked, fault.name)
  const estimate = bestValue(explain, fault)
  const explained = explain(estimate)
  const readings = 2 * asked.stops.count
  return {
    name: fault.name,
    ...explained,
    estimate,
    unit: fault.unit,
    band: shortestBand((value) => explain(value).logMarginal, fault.low, fault.high, estimate),
    bic: explained.minusTwoLog + Math.log(readings),
    // The scale has its prior as one reading more; in `pressure-off` it is the parameter itself.
    freedom: readings - (fault.name === 'pressure-off' ? 1 : 2),
  }
}
