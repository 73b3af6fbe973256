import { upperGamma } from '../numerics/incomplete-gamma.ts'
import { normalQuantile, normalShare } from '../numerics/normal-distribution.ts'
import type { Newton } from '../quantities/si.ts'
import type { Spring } from '../spring/spring.ts'
import { fitAsSheet, fitFault, type PressFit } from './press-fit.ts'
import { faultsOf, type HypothesisName, type PressFault } from './press-hypothesis.ts'
import { stopsOf } from './press-model.ts'
import { checkPress, type PressQuestion } from './press-question.ts'

export interface PressHypothesis {
  name: HypothesisName
  /** Null for `as-sheet`, which has no parameter of its own. */
  estimate: number | null
  /** `1`: ratio to the sheet. */
  unit: '1' | 'm³' | null
  /** 90 %, the shortest of its posterior. */
  band: [number, number] | null
  bic: number
}

export interface PressTest {
  friction: Newton
  /** 90 %. */
  frictionBand: [Newton, Newton]
  /** Best first. */
  hypotheses: PressHypothesis[]
  verdict: HypothesisName | 'cannot-tell' | 'nothing-fits'
  /** With `cannot-tell`: the faults that explain it alike. */
  together?: PressFault[]
  nextTest: 'second-press-half-pressure' | null
}

/** How much better a fault must be than none, and than the next fault. */
const clear = 6
/** Below this share of chance, readings are not explained. */
const tooFar = 1e-6

/** 90 % of a normal density that ends at 0. */
function frictionBand({ friction, frictionSd }: PressFit): [number, number] {
  const kept = 0.9 * normalShare(friction / frictionSd)
  const half = frictionSd * normalQuantile((1 + kept) / 2)
  if (friction >= half) return [friction - half, friction + half]
  return [0, friction + frictionSd * normalQuantile(1 - normalShare(friction / frictionSd) + kept)]
}

/** Half the pressure tells faults apart that one pressure can't; once it was pressed there is no such test left. */
function nextTestAfter(spring: Spring, { presses }: PressQuestion): PressTest['nextTest'] {
  if (spring.kind === 'coil') return null
  const filled = presses.map(({ pressure = 0 }) => pressure)
  return Math.min(...filled) < 0.7 * Math.max(...filled) ? null : 'second-press-half-pressure'
}

/**
 * Every hypothesis at its best, best first: the fits behind `pressTest`, with the pressure scale each one needs.
 *
 * @param spring    as the sheet says
 * @param question  as `pressTest`
 * @returns for each: estimate with its 90 % band, pressure scale [-], friction and its standard deviation [N], χ², BIC
 * @throws Refusal naming every field that can't be
 * @source maximum likelihood; BIC after G. Schwarz, Ann. Stat. 6 (1978) 461
 * @example pressFits({ kind: 'coil', rate: 9000, stroke: 0.15 }, { presses: [{ readings: [{ stroke: 0.03, pressing: 290, releasing: 250 }, { stroke: 0.06, pressing: 560, releasing: 520 }, { stroke: 0.09, pressing: 830, releasing: 790 }] }], forceSd: 4, strokeSd: 0.0007 })[0].name // "as-sheet"
 */
export function pressFits(spring: Spring, question: PressQuestion): PressFit[] {
  checkPress(spring, question)
  const stops = stopsOf(question)
  const asked = { spring, question, stops }
  const faults = faultsOf(spring, stops.last).map((fault) => fitFault(asked, fault))
  return [fitAsSheet(asked), ...faults].sort((one, other) => one.bic - other.bic)
}

function judge(fits: readonly PressFit[]): Pick<PressTest, 'verdict' | 'together'> {
  const best = fits[0]
  const sound = fits.find(({ name }) => name === 'as-sheet')
  if (!best || !sound || upperGamma(best.freedom / 2, best.chiSquare / 2) < tooFar) return { verdict: 'nothing-fits' }
  if (sound.bic - best.bic <= clear) return { verdict: 'as-sheet' }
  const near = fits.flatMap(({ name, bic }) => (name !== 'as-sheet' && bic - best.bic <= clear ? [name] : []))
  return near.length > 1 ? { verdict: 'cannot-tell', together: near } : { verdict: best.name }
}

/**
 * What a press through the stroke says of a spring: friction, and which one fault explains the readings, if any does.
 *
 * pressing = F(x) + F_f, releasing = F(x) − F_f. Every hypothesis has a pressure scale s ~ N(1, gaugeSd), one for all
 * presses, and F_f ≥ 0; a fault has one parameter more. σ² = forceSd² + (dF/dx)²·strokeSd² with the slope of the
 * hypothesis. BIC = −2 ln L + ln n for a fault, −2 ln L for none; L with the prior density of s. A fault must beat
 * `as-sheet` by more than 6; faults within 6 of the best stand together.
 *
 * @param spring    as the sheet says
 * @param question  presses: gauge pressure [Pa], stops with stroke [m] and both forces [N]; standard uncertainties
 * @returns friction and band [N], hypotheses best first, verdict, what stands together, the test that decides
 * @throws Refusal naming every field that can't be
 * @source maximum likelihood; BIC after G. Schwarz, Ann. Stat. 6 (1978) 461; ideal gas, isothermal
 * @example pressTest({ kind: 'coil', rate: 9000, stroke: 0.15 }, { presses: [{ readings: [{ stroke: 0.03, pressing: 290, releasing: 250 }, { stroke: 0.06, pressing: 560, releasing: 520 }, { stroke: 0.09, pressing: 830, releasing: 790 }] }], forceSd: 4, strokeSd: 0.0007 }).friction // 20
 */
export function pressTest(spring: Spring, question: PressQuestion): PressTest {
  const fits = pressFits(spring, question)
  const [best] = fits
  const judged = judge(fits)
  return {
    friction: best?.friction ?? 0,
    frictionBand: best ? frictionBand(best) : [0, 0],
    hypotheses: fits.map(({ name, estimate, unit, band, bic }) => ({ name, estimate, unit, band, bic })),
    ...judged,
    nextTest: judged.verdict === 'cannot-tell' ? nextTestAfter(spring, question) : null,
  }
}
