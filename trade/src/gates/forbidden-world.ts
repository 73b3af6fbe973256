/**
 * What really happens to a unit, told without facts, gates and the procedures' data: the yardstick of the search for forbidden sequences. Each
 * rule is written here once more, as what must not happen.
 */
import type { GateId, Leg, SnapshotItem } from '../journal/entry.ts'
import type { ProcedureStep } from '../procedures/procedure.ts'
import type { Traits } from './asked.ts'
import { filledWith, whatStepsDo } from './what-steps-do.ts'

export type Happening =
  /** Read, a pressure with its pump or without; or said that it is not known. */
  | { is: 'kept'; item: SnapshotItem; how: 'read' | 'no-pump' | 'not-known' }
  | { is: 'looked'; verdict: 'sound' | 'condemned' }
  | { is: 'planned'; valuesGood: boolean }
  | { is: 'worked-out'; pressure: number }
  | { is: 'wrote'; pressure: number }
  | { is: 'hands-changed' }
  /** `near`: wheel or caliper is at the fork again; `all`: nothing is left to put back. */
  | { is: 'put-back'; near: boolean; all: boolean }
  | { is: 'measured-length'; good: boolean }
  /** Null where the clocks that tell the minutes don't agree. */
  | { is: 'leak-begun'; minutes: number | null }
  | { is: 'leak-ended'; minutes: number | null }
  | { is: 'left' }
  | {
      is: 'step'
      id: string
      step: ProcedureStep
      leg: Leg | null
      said: boolean
      reading: 'good' | 'none' | 'off'
      wrench: boolean
      /** How long the rings have lain in oil; null where the clocks don't agree. */
      soaked: number | null
    }

/** What must be told of the unit's past to judge what happens next. */
export interface World {
  kept: readonly SnapshotItem[]
  /** The pressure was read; said not to be known, it was not. */
  gauged: boolean
  looked: 'no' | 'sound' | 'condemned'
  air: 'in' | 'out'
  vouched: boolean
  freeSeen: boolean
  preload: 'on' | 'off'
  lever: boolean
  wheelOff: boolean
  /** Wheel or caliper came back after it was off. */
  near: boolean
  back: boolean
  seals: 'in' | 'out'
  clean: boolean
  lowers: 'seated' | 'off' | 'bushings'
  oil: readonly Leg[]
  fast: readonly Leg[]
  stage: 0 | 1 | 2 | 3
  target: number
  travelGood: boolean
  lengthGood: boolean
  leak: 'none' | 'runs' | 'done'
  touched: boolean
  written: boolean
  damperOpen: boolean
  gas: 'unknown' | 'charged' | 'released'
}

export const worldAtTakeIn: World = {
  kept: [],
  gauged: false,
  looked: 'no',
  air: 'in',
  vouched: false,
  freeSeen: false,
  preload: 'on',
  lever: false,
  wheelOff: false,
  near: false,
  back: false,
  seals: 'in',
  clean: false,
  lowers: 'seated',
  oil: ['left', 'right'],
  fast: ['left', 'right'],
  stage: 0,
  target: 0,
  travelGood: false,
  lengthGood: false,
  leak: 'none',
  touched: false,
  written: false,
  damperOpen: false,
  gas: 'unknown',
}

/** In the search's own units: the sheet's maximum. */
export const largest = 140
const without = (all: readonly Leg[], leg: Leg | null): readonly Leg[] => all.filter((one) => one !== leg)
const withLeg = (all: readonly Leg[], leg: Leg | null): readonly Leg[] =>
  leg ? [...without(all, leg), leg].sort() : all

function stepHappened(world: World, { id, leg, reading }: Extract<Happening, { is: 'step' }>): World {
  switch (id) {
    case 'air-out':
      return {
        ...world,
        air: 'out',
        vouched: true,
        freeSeen: false,
        lever: world.lever,
        stage: 0,
        touched: true,
        ...unproved,
      }
    case 'trapped-check':
      return { ...world, freeSeen: true }
    case 'preload-off':
      return { ...world, preload: 'off', touched: true, ...unproved }
    case 'preload-on':
      return { ...world, preload: 'on', lengthGood: false }
    case 'lever-open':
      return { ...world, lever: true }
    case 'outside-off':
      return { ...world, wheelOff: true, near: false, back: false }
    case 'foot-off':
      return {
        ...world,
        fast: without(world.fast, leg),
        oil: without(world.oil, leg),
        travelGood: false,
        lengthGood: false,
      }
    case 'lowers-off':
      return { ...world, lowers: 'off' }
    case 'seals-out':
      return { ...world, seals: 'out', clean: false }
    case 'clean':
      return { ...world, clean: true }
    case 'seals-in':
      return { ...world, seals: 'in' }
    case 'lowers-on':
      return { ...world, lowers: 'bushings' }
    case 'oil-in':
      return { ...world, oil: withLeg(world.oil, leg) }
    case 'foot-torque':
      return { ...world, fast: withLeg(world.fast, leg), lowers: 'seated' }
    case 'travel-air-out':
    case 'travel-spring-out':
      return { ...world, travelGood: reading === 'good' }
    case 'fill-quarter':
    case 'fill-half':
    case 'fill-target':
      return {
        ...world,
        air: 'in',
        freeSeen: false,
        stage: filledWith[id] ?? world.stage,
        lengthGood: false,
        leak: 'none',
      }
    case 'cap-off':
    case 'shaft-out':
      return { ...world, travelGood: false, lengthGood: false }
    case 'damper-off':
      return { ...world, damperOpen: true }
    case 'damper-bled':
      return { ...world, damperOpen: false }
    case 'gas-out':
      return { ...world, gas: 'released' }
    case 'gas-in':
      return { ...world, gas: 'charged' }
    default:
      return world
  }
}
const unproved = { lengthGood: false, leak: 'none', written: false } as const

/** The unit afterwards. */
export function happened(world: World, event: Happening): World {
  switch (event.is) {
    case 'kept':
      return {
        ...world,
        kept: [...new Set([...world.kept, event.item])].sort(),
        gauged: world.gauged || (event.item === 'pressure' && event.how !== 'not-known'),
      }
    case 'looked':
      return { ...world, looked: event.verdict }
    case 'planned':
      return world
    case 'worked-out':
      return { ...world, target: event.pressure }
    case 'wrote':
      return { ...world, written: true }
    case 'hands-changed':
      return { ...world, vouched: false }
    case 'put-back':
      return { ...world, near: world.near || (event.near && world.wheelOff), back: event.all || world.back }
    case 'measured-length':
      return { ...world, lengthGood: event.good }
    case 'leak-begun':
      return { ...world, leak: 'runs' }
    case 'leak-ended':
      return { ...world, leak: 'done' }
    case 'left':
      return world
    case 'step':
      return stepHappened(world, event)
  }
}

/** What the rules ask about besides: the unit's traits, whether it came on its bike, whether its maximum is known. */
export interface Around {
  traits: Traits
  maximumKnown: boolean
  bike: boolean
}
type Forbidden = (world: World, event: Happening, around: Around) => boolean
const does = (event: Happening, ...wanted: readonly (keyof typeof whatStepsDo)[]): boolean =>
  event.is === 'step' && wanted.some((one) => whatStepsDo[one].has(event.id))
const both = 2

/** What must not happen, rule by rule. */
export const forbidden: Readonly<Record<string, Forbidden>> = {
  R1: (world, event) => (event.is === 'planned' || event.is === 'step') && world.looked !== 'sound',
  R2: (world, event, { traits }) =>
    does(event, 'letsAirOut', 'turnsAdjuster', 'loosens')
      ? traits.snapshot.some((item) => !world.kept.includes(item))
      : event.is === 'kept' &&
        event.how !== 'not-known' &&
        (world.touched ||
          (event.item === 'pressure' && (event.how === 'no-pump' || !world.kept.includes('length') || world.gauged))),
  R3: (world, event, { traits }) =>
    does(event, 'loosens') && traits.spring === 'air' && !(world.air === 'out' && world.vouched),
  R4: (world, event, { traits }) => does(event, 'loosens') && traits.spring === 'air' && !world.freeSeen,
  R5: (_, event) => does(event, 'letsAirOut', 'opensOrSprings') && event.is === 'step' && !event.said,
  R6: (world, event) => does(event, 'opensGas') && world.gas !== 'released',
  R7: (world, event, { traits }) => does(event, 'cycles', 'stripsDamper') && traits.compression && !world.lever,
  R8: (_, event) => does(event, 'taps') && event.is === 'step' && !event.said,
  R9: (world, event, { bike }) => does(event, 'usesOil') && bike && (!world.wheelOff || world.near),
  R10: (_, event) => does(event, 'drains') && event.is === 'step' && event.reading === 'none',
  R11: (_, event) => does(event, 'pullsLowers') && event.is === 'step' && !event.said,
  R12: (world, event) => (does(event, 'cleans') && world.seals !== 'out') || (does(event, 'fitsSeals') && !world.clean),
  R13: (_, event) => does(event, 'fitsSeals') && event.is === 'step' && (event.soaked ?? 0) < 5,
  R14: (world, event) =>
    (does(event, 'fillsOil') && world.lowers !== 'bushings') || (does(event, 'seats') && world.oil.length < both),
  R15: (_, event) => does(event, 'seats') && event.is === 'step' && !event.said,
  R16: (world, event) => does(event, 'provesTravel', 'fillsAir', 'addsPreload') && world.fast.length < both,
  R17: (world, event) =>
    event.is === 'step' &&
    event.id in filledWith &&
    (filledWith[event.id] !== world.stage + 1 || event.reading === 'off'),
  R18: (world, event) => does(event, 'fillsAir', 'addsPreload') && world.damperOpen,
  R19: (world, event) => does(event, 'cyclesGasDamper') && world.gas !== 'charged',
  R20: (world, event, { traits }) => does(event, 'loosens') && traits.spring === 'coil' && world.preload === 'on',
  R21: (_, event) => does(event, 'torques') && event.is === 'step' && !event.wrench,
  R22: (world, event) =>
    (event.is === 'leak-begun' && world.stage > 0 && (event.minutes ?? 0) < 15) ||
    (event.is === 'leak-ended' && (event.minutes ?? 0) < 10) ||
    (event.is === 'left' && (world.leak === 'runs' || (world.stage > 0 && world.leak !== 'done'))),
  R23: (world, event) => event.is === 'left' && world.touched && !world.written,
  R24: (_, event) => event.is === 'planned' && !event.valuesGood,
  R25: (world, event) => event.is === 'left' && world.wheelOff && !world.back,
  R26: (world, event) =>
    (does(event, 'fillsAir', 'addsPreload') && !world.travelGood) ||
    (event.is === 'left' && world.touched && !world.lengthGood),
  R27: (world, event, { traits, maximumKnown }) =>
    traits.spring === 'air' &&
    ((does(event, 'fillsAir') &&
      (!maximumKnown ||
        world.target > largest ||
        (event.is === 'step' && event.reading === 'off' && filledWith[event.id] === 3))) ||
      ((event.is === 'worked-out' || event.is === 'wrote') && maximumKnown && event.pressure > largest)),
}

const everyForbidden = Object.entries(forbidden)

/** The rules that this happening breaks. */
export function broken(world: World, event: Happening, around: Around): readonly GateId[] {
  return everyForbidden.filter(([, is]) => is(world, event, around)).map(([id]) => id as GateId) // the table's names are those of the rules
}
