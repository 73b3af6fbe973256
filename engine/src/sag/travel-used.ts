import { brent } from '../numerics/brent.ts'
import { figure } from '../quantities/kinds.ts'
import type { CubicMetre, Joule, Metre, Newton, Pascal } from '../quantities/si.ts'
import { refuseOne, stopAt, within } from '../refusal/found.ts'
import type { AirSpring, Conditions, LowerAir, Spring } from '../spring/spring.ts'
import { energyBetween } from '../spring/spring-energy.ts'
import { springState } from '../spring/spring-state.ts'
import { loadWithin, sag } from './sag.ts'

/** Another setting of the same spring; what is left out stays. */
export interface OtherSetting {
  readonly pressure?: Pascal
  readonly spacers?: number
  readonly chamberOil?: CubicMetre
  readonly lower?: LowerAir
  readonly ambient?: Pascal
}

export interface TravelQuestion extends Conditions {
  readonly load: Newton
  /** Deepest mark of the ring. */
  readonly deepest: Metre
  readonly to: OtherSetting
  /** Fast from the sag; 1.3 by default. */
  readonly exponent?: number
}

export interface TravelUsed {
  /** Of the hit, beyond what the load itself gives. */
  energy: Joule
  deepestThere: Metre
  /** Of the nominal stroke. */
  fractionThere: number
  limit: 'bottomed' | null
}

function changed(spring: Spring, to: OtherSetting): Spring {
  const lower = to.lower === undefined ? {} : { lower: to.lower }
  if (spring.kind === 'coil') return { ...spring, ...lower }
  const air: AirSpring = {
    ...spring,
    ...lower,
    ...(to.spacers === undefined ? {} : { spacers: to.spacers }),
    ...(to.chamberOil === undefined ? {} : { chamberOil: to.chamberOil }),
  }
  return air
}

/** The fast spring from its own sag. */
function fromSag(spring: Spring, conditions: Conditions, load: number, exponent: number) {
  const { stroke } = sag(spring, { ...conditions, load })
  return { start: stroke, state: springState(spring, { ...conditions, exponent, startStroke: stroke }) }
}

/**
 * The same hit at another setting: its energy ∫(F_fast − load)dx from sag to the deepest mark is the same there.
 *
 * @param spring    dimensions
 * @param question  pressure, load [N], deepest [m], the other setting
 * @returns energy [J], deepest there [m], as a fraction of the stroke; `bottomed` where the stroke does not hold it
 * @throws Refusal naming every field that can't be; `deepest` above the sag is refused
 * @source conservation of energy; damping is left out on both sides
 * @example travelUsed({ kind: 'coil', rate: 10000, stroke: 0.2 }, { load: 400, deepest: 0.1, to: {} }).energy // 18.0
 */
export function travelUsed(spring: Spring, question: TravelQuestion): TravelUsed {
  const { load, deepest, to, exponent = 1.3, pressure, pressureAt, ambient } = question
  const here: Conditions = {
    ...(pressure === undefined ? {} : { pressure }),
    ...(pressureAt === undefined ? {} : { pressureAt }),
    ...(ambient === undefined ? {} : { ambient }),
  }
  stopAt(within(loadWithin(null, 'load', load), '', 'exponent', exponent, 'number', 1, 1.4, 'Use 1.3 for riding.'))
  const now = fromSag(spring, here, load, exponent)
  const end = now.state.fullStroke
  if (!(deepest >= now.start && deepest <= end)) {
    const allowed = `from the sag (${figure(now.start, 'length')}) to the end of the stroke (${figure(end, 'length')})`
    refuseOne(
      'deepest',
      'beyond-end',
      figure(deepest, 'length'),
      allowed,
      'Read the ring after a ride; check the load.',
    )
  }
  const energy = energyBetween(now.state, load, now.start, deepest)
  const there: Conditions = {
    ...here,
    ...(to.pressure === undefined ? {} : { pressure: to.pressure }),
    ...(to.ambient === undefined ? {} : { ambient: to.ambient }),
  }
  const then = fromSag(changed(spring, to), there, load, exponent)
  const last = then.state.fullStroke
  if (energyBetween(then.state, load, then.start, last) < energy) {
    return { energy, deepestThere: last, fractionThere: last / spring.stroke, limit: 'bottomed' }
  }
  const found = brent((x) => energyBetween(then.state, load, then.start, x) - energy, then.start, last, 1e-10)
  const deepestThere = found ?? then.start
  return { energy, deepestThere, fractionThere: deepestThere / spring.stroke, limit: null }
}
