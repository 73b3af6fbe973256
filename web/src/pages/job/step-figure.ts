/** The figure of a step: what stands largest on its page, where it comes from, and what a hand writes down with the tick. */
import { wrenchSetting } from '@legwork/engine'
import {
  commonPractice,
  type Instrument,
  isStepId,
  type JobState,
  type Leg,
  type Message,
  message,
  procedureSteps,
  type Reading,
  type Sheet,
  type Source,
  type StepState,
  saidSoFor,
} from '@legwork/trade'

export type Wrench = Extract<Instrument, { kind: 'wrench' }>
export type Pump = Extract<Instrument, { kind: 'pump' }>

/** A number in SI with what it is read in and where it comes from. */
export interface StepValue {
  value: number
  measure: Reading['measure']
  source: Source | null
  /** In hundredths of a millimetre. */
  fine?: boolean
  /** What it is, e.g. 'At the nut'. */
  label: Message
}

export type StepFigure =
  | { kind: 'none' }
  /** One number, or one a leg. */
  | { kind: 'value'; value: StepValue }
  | { kind: 'legs'; left: StepValue; right: StepValue }
  /** The nut's torque and what to set: the wrench's figure is the one to act on. */
  | { kind: 'torque'; value: StepValue; wrench: Wrench; set: number; suits: boolean }
  /** Pump to this; the gauge's own error is in `shown`. */
  | { kind: 'air'; value: StepValue; pump: Pump | null; shown: number }
  /** The sheet is silent: it is asked. */
  | { kind: 'missing'; what: Message }

/** What is entered beside the tick. */
export interface AskedReading {
  measure: Reading['measure']
  label: Message
  /** In hundredths of a millimetre. */
  fine?: boolean
  /** Without it the tick is refused. */
  needed: boolean
}

const fillShare = { quarter: 0.25, half: 0.5, target: 1 } as const

/** The wrench to offer: the most exact one whose range holds the setting. */
export function bestWrench(wrenches: readonly Wrench[], wanted: number): Wrench | null {
  const fits = wrenches.filter((wrench) => {
    const { set } = settingOf(wrench, wanted)
    return set >= wrench.low && set <= wrench.high
  })
  return fits.sort((one, other) => one.class - other.class || one.high - other.high)[0] ?? null
}

/** What to set on a wrench, and whether it lies in its range. */
export function settingOf(wrench: Wrench, wanted: number): { set: number; suits: boolean } {
  const { length, adapterLength } = wrench
  const { set } = wrenchSetting({ wanted, wrenchLength: length, adapterLength })
  return { set, suits: set >= wrench.low && set <= wrench.high }
}

function torque(value: StepValue, wrenches: readonly Wrench[], picked: string | null): StepFigure {
  const wrench = wrenches.find((one) => one.id === picked) ?? bestWrench(wrenches, value.value)
  return wrench ? { kind: 'torque', value, wrench, ...settingOf(wrench, value.value) } : { kind: 'value', value }
}

const of = (found: { value: number; source: Source } | null | undefined, rest: Omit<StepValue, 'value' | 'source'>) =>
  found ? { value: found.value, source: found.source, ...rest } : null

/** The leg that a step is at: the first not ticked, else the left one. */
export function legAt(step: StepState): Leg | null {
  return step.legs ? (step.legs.find((leg) => !step.done[leg]) ?? 'left') : null
}

export interface FigureTools {
  wrenches: readonly Wrench[]
  pickedWrench: string | null
  pump: Pump | null
}

/** Before draining it says what was put in; before filling, what goes in. */
function oilFigure(sheet: Sheet | null, drained: boolean): StepFigure {
  const labelOf = (leg: Leg): Message =>
    drained ? message('work.drained-into', { leg: message(`leg.${leg}`) }) : message(`leg.${leg}.title`)
  const volume = (leg: Leg) => of(sheet?.legs?.[leg].bathOil, { measure: 'm³', label: labelOf(leg) })
  const [left, right] = [volume('left'), volume('right')]
  if (left && right) return { kind: 'legs', left, right }
  return { kind: 'missing', what: message('value.bath-oil', { leg: message(left ? 'leg.right' : 'leg.left') }) }
}

function footFigure(step: StepState, sheet: Sheet | null, tools: FigureTools): StepFigure {
  const leg = legAt(step) ?? 'left'
  const found = sheet?.legs?.[leg]
  const label = message(found?.fixing === 'nut-on-shaft' ? 'work.at-nut' : 'work.at-bolt', {
    leg: message(`leg.${leg}`),
  })
  const value = of(found?.footTorque, { measure: 'N·m', label })
  return value
    ? torque(value, tools.wrenches, tools.pickedWrench)
    : { kind: 'missing', what: message('value.foot-torque', { leg: message(`leg.${leg}`) }) }
}

const clampWords = {
  lowerClamp: { at: 'work.at-lower-clamps', missing: 'value.lower-clamp-torque' },
  upperClamp: { at: 'work.at-upper-clamps', missing: 'value.upper-clamp-torque' },
} as const

function clampFigure(clamp: 'lowerClamp' | 'upperClamp', sheet: Sheet | null, tools: FigureTools): StepFigure {
  const { at, missing } = clampWords[clamp]
  const value = of(sheet?.torques?.[clamp], { measure: 'N·m', label: message(at) })
  return value ? torque(value, tools.wrenches, tools.pickedWrench) : { kind: 'missing', what: message(missing) }
}

function airFigure(fills: 'quarter' | 'half' | 'target' | undefined, state: JobState, pump: Pump | null): StepFigure {
  if (!state.setUp || !fills) return { kind: 'missing', what: message('work.set-up-first') }
  const value = state.setUp.pressure * fillShare[fills]
  const source: Source = {
    kind: 'worked-out',
    document: null,
    revision: null,
    page: null,
    person: state.setUp.person,
    at: state.setUp.at,
    instrument: null,
  }
  return {
    kind: 'air',
    value: { value, measure: 'Pa', source, label: message(`work.fill.${fills}`) },
    pump,
    shown: value * (1 + (pump?.offset ?? 0)),
  }
}

/** The figure of one step of a job. */
export function figureOf(step: StepState, state: JobState, tools: FigureTools): StepFigure {
  if (!isStepId(step.step)) return { kind: 'none' }
  const { sheet } = state
  const { figure, fills } = procedureSteps[step.step]
  const one = (value: StepValue | null): StepFigure => (value ? { kind: 'value', value } : { kind: 'none' })
  switch (figure) {
    case 'bath-oil':
    case 'drained':
      return oilFigure(sheet, figure === 'drained')
    case 'foot-torque':
      return footFigure(step, sheet, tools)
    case 'cap-torque': {
      const value = of(sheet?.spring.capTorque, { measure: 'N·m', label: message('work.at-cap') })
      return value
        ? torque(value, tools.wrenches, tools.pickedWrench)
        : { kind: 'missing', what: message('value.cap-torque') }
    }
    case 'travel':
      return one(of(sheet?.stroke, { measure: 'm', label: message('work.travel-by-sheet') }))
    case 'air-pressure':
      return airFigure(fills, state, tools.pump)
    case 'clearance': {
      const limit = sheet?.limits.clearance
      return one(
        limit?.watch === undefined
          ? null
          : {
              value: limit.watch,
              measure: 'm',
              fine: true,
              source: limit.source,
              label: message('work.clearance-under'),
            },
      )
    }
    case 'clicks': {
      const kept = state.snapshot.rebound
      if (!kept?.reading) return { kind: 'none' }
      const source: Source = {
        kind: 'measured-here',
        document: null,
        revision: null,
        page: null,
        person: kept.person,
        at: kept.at,
        instrument: null,
      }
      return one({ value: kept.reading.value, measure: 'clicks', source, label: message('work.clicks-kept') })
    }
    case 'spacers':
      return one(of(sheet?.spacers, { measure: 'count', label: message('work.spacers-by-sheet') }))
    case 'lower-clamp-torque':
      return clampFigure('lowerClamp', sheet, tools)
    case 'upper-clamp-torque':
      return clampFigure('upperClamp', sheet, tools)
    case 'height-difference': {
      const within = procedureSteps[step.step].makesWithin ?? 0
      return one({ value: within, measure: 'm', source: commonPractice, label: message('work.heights-within') })
    }
    case 'stanchion-height':
    case 'none':
      return { kind: 'none' }
  }
}

/** What is read with the tick of a step, or null. */
export function askedReading(step: StepState): AskedReading | null {
  if (!isStepId(step.step)) return null
  switch (procedureSteps[step.step].figure) {
    case 'drained':
      return { measure: 'm³', label: message('work.read.drained', { leg: '' }), needed: true }
    case 'bath-oil':
      return { measure: 'm³', label: message('work.read.oil', { leg: '' }), needed: true }
    case 'travel':
      return { measure: 'm', label: message('work.read.travel'), needed: true }
    case 'clearance':
      return { measure: 'm', fine: true, label: message('work.read.clearance'), needed: false }
    case 'air-pressure':
      return { measure: 'Pa', label: message('work.read.pressure'), needed: true }
    case 'clicks':
      return { measure: 'clicks', label: message('work.read.clicks'), needed: false }
    case 'spacers':
      return { measure: 'count', label: message('work.read.spacers'), needed: true }
    case 'stanchion-height':
      return { measure: 'm', fine: true, label: message('work.read.height'), needed: true }
    case 'height-difference':
      return { measure: 'm', fine: true, label: message('work.read.height-difference'), needed: true }
    default:
      return null
  }
}

/** What the person who ticks says so. */
export function statementsOf(step: StepState): ReturnType<typeof saidSoFor> {
  return isStepId(step.step) ? saidSoFor(procedureSteps[step.step].acts) : []
}

/** Whether the tick writes down what the wrench was set to. */
export function torques(step: StepState): boolean {
  return isStepId(step.step) && procedureSteps[step.step].records === 'wrench'
}

/** What the reading of a step can be taken with; a pressure is read off the pump, a count needs nothing. */
export function instrumentsFor(asked: AskedReading | null): readonly Instrument['kind'][] {
  if (asked?.measure === 'm³') return ['measuring-cylinder']
  if (asked?.measure !== 'm') return []
  return asked.fine ? ['caliper', 'other'] : ['tape', 'caliper']
}
