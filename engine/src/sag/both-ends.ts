import { angleWithin } from '../load/fork-load.ts'
import { checkLeverage, type Leverage, leverageAt, strokeOnLeverage, wheelTravel } from '../load/leverage.ts'
import { brent } from '../numerics/brent.ts'
import type { Degree, Metre, Newton, Pascal } from '../quantities/si.ts'
import { ambientWithin, stopAt, within } from '../refusal/found.ts'
import { freeStroke } from '../spring/free-stroke.ts'
import type { Spring } from '../spring/spring.ts'
import { force } from '../spring/spring-force.ts'
import { springState } from '../spring/spring-state.ts'
import { loadWithin, restingStroke } from './sag.ts'

export interface End {
  readonly spring: Spring
  /** Gauge at full length; a coil needs none. */
  readonly pressure?: Pascal
  /** Fork: along the leg. Shock: the vertical sprung load at the wheel. */
  readonly load: Newton
}

export interface BothEndsQuestion {
  readonly fork: End
  readonly shock: End
  readonly wheelbase: Metre
  /** Rear axle to bottom bracket, horizontal. */
  readonly rearCentre: Metre
  readonly headAngle: Degree
  readonly leverage: Leverage
  readonly ambient?: Pascal
}

interface EndSag {
  stroke: Metre
  fraction: number
}

export interface BothEnds {
  sags: { fork: EndSag; shock: EndSag; rearTravel: Metre }
  headAngleAtSag: Degree
  bottomBracketDrop: Metre
}

function ready(end: End, ambient: number, at: string) {
  const pressure = end.pressure === undefined ? {} : { pressure: end.pressure }
  return springState(end.spring, { ...pressure, ambient }, at)
}

/**
 * The bike with rider on both springs: how far each end sinks, what that does to head angle and bottom bracket.
 *
 * Fork F(x) = load; shock F(s) = load·leverage(s). Front drop = fork sag·sin(headAngle), rear drop = ∫leverage ds,
 * pitch = atan((front − rear)/wheelbase), nose down positive; bottom bracket drop = rear + (front − rear)·rearCentre/wheelbase.
 *
 * @param question  both springs and loads, lengths [m], angle [°], leverage
 * @returns sags [m, fraction], rear travel [m], head angle at sag [°], bottom bracket drop [m]
 * @throws Refusal naming every field that can't be
 * @source statics and plane geometry; tyres taken as stiff
 * @example bothEnds({ fork: { spring: { kind: 'coil', rate: 9000, stroke: 0.15 }, load: 270 }, shock: { spring: { kind: 'coil', rate: 50000, stroke: 0.05 }, load: 250 }, wheelbase: 1.2, rearCentre: 0.43, headAngle: 65, leverage: 2.5 }).sags.rearTravel // 0.03125
 */
export function bothEnds(question: BothEndsQuestion): BothEnds {
  const { fork, shock, wheelbase, rearCentre, headAngle, leverage, ambient = 101_325 } = question
  let found = loadWithin(loadWithin(null, 'fork.load', fork.load), 'shock.load', shock.load)
  found = within(found, '', 'wheelbase', wheelbase, 'length', 0.5, 2, 'Measure between the axles.')
  found = within(
    found,
    '',
    'rearCentre',
    rearCentre,
    'length',
    0.2,
    0.8,
    'Measure rear axle to bottom bracket, horizontally.',
  )
  found = angleWithin(found, headAngle)
  found = checkLeverage(ambientWithin(found, '', 'ambient', ambient), leverage)
  if (found === null) found = strokeOnLeverage(found, 'shock.spring.stroke', shock.spring.stroke, leverage)
  stopAt(found)
  const front = ready(fork, ambient, 'fork.spring.')
  const forkSag = restingStroke(front, freeStroke(front), fork.load)
  const rear = ready(shock, ambient, 'shock.spring.')
  const free = freeStroke(rear)
  const left = (s: number) => force(rear, s) - shock.load * leverageAt(leverage, s)
  let shockSag = rear.fullStroke
  if (left(free) >= 0) shockSag = free
  else if (left(rear.fullStroke) > 0) shockSag = brent(left, free, rear.fullStroke, 1e-12) ?? rear.fullStroke
  const rearTravel = wheelTravel(leverage, shockSag)
  const frontDrop = forkSag * Math.sin((headAngle * Math.PI) / 180)
  const pitch = (Math.atan((frontDrop - rearTravel) / wheelbase) * 180) / Math.PI
  return {
    sags: {
      fork: { stroke: forkSag, fraction: forkSag / fork.spring.stroke },
      shock: { stroke: shockSag, fraction: shockSag / shock.spring.stroke },
      rearTravel,
    },
    headAngleAtSag: headAngle + pitch,
    bottomBracketDrop: rearTravel + ((frontDrop - rearTravel) * rearCentre) / wheelbase,
  }
}
