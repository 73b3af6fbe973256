/** What timed returns are read with, and where each of it comes from. Pure. */
import {
  type Bike,
  commonPractice,
  type Instrument,
  type JobState,
  type MeasuredEntry,
  type Pressed,
  pressesIn,
  type Reading,
  type Sheet,
  type Source,
  type SourceKind,
  usualBike,
} from '@legwork/trade'
import { pressedSpring, truePressure } from './press-asked.ts'
import { type ReturnSetting, usualFriction, wantedRatio } from './return-asked.ts'

export const plainly = (kind: SourceKind): Source => ({ ...commonPractice, kind })

const readHere = (made: { person: string; at: string; reading: Reading | null }): Source => ({
  ...plainly('measured-here'),
  person: made.person,
  at: made.at,
  instrument: made.reading?.instrument ?? null,
})

export interface KnownSetting extends ReturnSetting {
  from: { pressure: Source; mass: Source; friction: Source }
}

/** Pressed once more at about half the pressure, it is filled again before anything else is done with it. */
const half = { least: 0.3, most: 0.7 } as const

/** The last press but those at half the pressure of one before. */
function fullPress(presses: readonly Pressed[]): Pressed | null {
  const filledTo = (one: Pressed) => one.filling.reading.value
  const isHalf = (one: Pressed, before: Pressed) =>
    filledTo(one) > half.least * filledTo(before) && filledTo(one) < half.most * filledTo(before)
  return presses.findLast((one, index) => !presses.slice(0, index).some((before) => isHalf(one, before))) ?? null
}

interface Asked {
  state: JobState
  sheet: Sheet | null
  instruments: readonly Instrument[]
  phase: MeasuredEntry['phase']
}

/** Gauge at full length [Pa] while it was timed. */
function pressureOf({ state, instruments, phase }: Asked): { value: number; source: Source } | null {
  const press = fullPress(pressesIn(state.measured, phase))
  const { filledTo } = state.basis
  if (phase === 'done' && filledTo !== null) return { value: filledTo, source: plainly('measured-here') }
  if (press) return { value: truePressure(press.filling, instruments), source: readHere(press.filling) }
  const kept = phase === 'done' ? undefined : state.snapshot.pressure
  return kept?.reading ? { value: kept.reading.value, source: readHere(kept) } : null
}

/** Spring, pressure, mass and friction; null while one of them is not known. */
export function returnSetting(asked: Asked, weighed: MeasuredEntry | null, mass: number | null): KnownSetting | null {
  const { state, sheet, phase } = asked
  const spring = pressedSpring(sheet, state, phase)
  const pressure = pressureOf(asked)
  const friction = state.measured.findLast((one) => one.what === 'friction' && one.phase === phase)
  if (!spring || mass === null || (spring.kind === 'air' && pressure === null)) return null
  return {
    spring,
    pressure: spring.kind === 'coil' ? null : (pressure?.value ?? null),
    mass,
    friction: friction?.reading.value ?? usualFriction,
    from: {
      pressure: pressure?.source ?? plainly('common-practice'),
      mass: weighed ? readHere(weighed) : plainly('measured-here'),
      friction: friction ? readHere(friction) : plainly('common-practice'),
    },
  }
}

/** What turns the load into what the damper moves: a fork's head angle [°], a shock's leverage. */
export type Rider = { ratio: number; load: number; factor: number } & (
  | { headAngle: { value: number; source: Source } }
  | { leverage: number }
)

/** The rider's part of the clicks; null where the bike's leverage is not known. */
export function riderOf(sheet: Sheet | null, bike: Bike | null, load: number): Rider | null {
  if (sheet?.kind.startsWith('fork-') ?? true) {
    const measured = bike?.headAngle ?? null
    const value = measured ?? usualBike.headAngle
    const headAngle = { value, source: plainly(measured === null ? 'common-practice' : 'measured-here') }
    return { ratio: wantedRatio.fork, load, factor: Math.sin((value * Math.PI) / 180), headAngle }
  }
  const leverage = bike?.leverage ?? null
  return leverage === null ? null : { ratio: wantedRatio.shock, load, factor: leverage, leverage }
}
