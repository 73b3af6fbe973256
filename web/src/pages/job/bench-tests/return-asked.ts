/** What timed returns put to the engine: damping by clicks, and the clicks for the rider. Pure. */
import {
  type ClickSetting,
  clicksForDamping,
  type DampingFromReturn,
  dampingFromReturn,
  type FromReturnQuestion,
  Refusal,
  type Spring,
  sag,
} from '@legwork/engine'
import type { ReleasedAt } from '@legwork/trade'

/** Pushed in and let go at once, the gas has no time to give its heat away: usual for riding (common practice, no source). */
export const quick = 1.3
/** Of a fork that nobody pressed yet: in the middle of what passes (common practice, no source) [N]. */
export const usualFriction = 15
/** Damping ratios to start from (common practice, no source). */
export const wantedRatio = { fork: 0.8, shock: 0.65 } as const

const gravity = 9.80665

export interface ReturnSetting {
  spring: Spring
  /** Gauge at full length [Pa]; null for a coil. */
  pressure: number | null
  /** What moves, as the leg feels it [kg]. */
  mass: number
  friction: number
}

export type Worked<T> = { ok: true; found: T } | { ok: false; because: string }

function worked<T>(work: () => T): Worked<T> {
  try {
    return { ok: true, found: work() }
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, because: error.message }
    throw error
  }
}

export function returnQuestion(at: ReleasedAt, { pressure, mass, friction }: ReturnSetting): FromReturnQuestion {
  return {
    ...(pressure === null ? {} : { pressure, exponent: quick }),
    mass,
    friction,
    from: at.from,
    to: at.to,
    time: at.time,
    timeResolution: at.resolution,
  }
}

export function dampingAt(at: ReleasedAt, setting: ReturnSetting): Worked<DampingFromReturn> {
  return worked(() => dampingFromReturn(setting.spring, returnQuestion(at, setting)))
}

export interface RiderOnIt {
  /** Gauge that it is ridden at [Pa]; null for a coil. */
  pressure: number | null
  /** Along the leg [N]. */
  load: number
  /** What turns the sprung mass into what the leg feels: a fork's sin(head angle), a shock's leverage. */
  factor: number
  ratio: number
}

/** The damping that has that ratio at the sag: 2·ζ·√(dF/dx·m) [N·s/m]. */
export function wantedDamping(spring: Spring, { pressure, load, factor, ratio }: RiderOnIt): Worked<number> {
  return worked(() => {
    const { rate } = sag(spring, { load, ...(pressure === null ? {} : { pressure }) })
    return 2 * ratio * Math.sqrt(rate * (load / gravity) * factor)
  })
}

export function clicksFor(settings: readonly ClickSetting[], wanted: number) {
  return worked(() => clicksForDamping({ settings, wanted }))
}
