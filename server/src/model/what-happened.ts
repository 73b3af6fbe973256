/**
 * What the lines of a book say has really happened to the unit, told to the yardstick of the gates' own search: without
 * facts, gates or chapters, and with the true time, which no station knows.
 */
import {
  type AnyEntry,
  chassisParts,
  type GateId,
  type Id,
  isStepId,
  isWaivable,
  type JobState,
  procedureSteps,
  type Sheet,
  saidSoFor,
  traitsOf,
} from '@legwork/trade'
import {
  type Around,
  broken,
  type Happening,
  happened,
  largest,
  type World,
  worldAtTakeIn,
} from '@legwork/trade/gates/forbidden-world.ts'

const psi = 6894.757293168
const vouchedFor = 12 * 60
/** Clocks that agree within a minute are compared, so a rest may be short by so much. */
const clocksAgree = 1
const fillShares = { quarter: [0, 0.45], half: [0, 0.7], target: [0.9, 1.1] } as const

/** A line that stands in the book although a rule was broken with it. */
export interface Breach {
  entry: Id
  rules: readonly GateId[]
  late: boolean
}

interface Told {
  world: World
  hands: Id | null
  releasedAt: number | null
  filledAt: number | null
  /** What air last went in to [Pa gauge], by a step or by a setting that differs. */
  filledTo: number | null
  leakFrom: number | null
  soakFrom: number | null
  targetPressure: number | null
  looked: Map<string, 'sound' | 'condemned'>
  back: Set<string>
}

type StepEntry = Extract<AnyEntry, { kind: 'step-done' }>

function readingOf({ body: { step, reading } }: StepEntry, told: Told, sheet: Sheet): 'good' | 'none' | 'off' {
  if (!isStepId(step)) return 'none'
  const { acts, fills, makes } = procedureSteps[step]
  if (fills) {
    const [least, most] = fillShares[fills]
    const share = reading && told.targetPressure ? reading.value / told.targetPressure : least
    const over = fills === 'target' && reading !== null && reading.value > largest * psi
    return share < least || share > most || over ? 'off' : 'good'
  }
  if (acts.includes('drains')) return reading?.measure === 'm³' ? 'good' : 'none'
  if (makes.travel)
    return reading === null ? 'none' : Math.abs(reading.value - sheet.stroke.value) <= 0.003 + 1e-9 ? 'good' : 'off'
  return reading === null ? 'none' : 'good'
}

/** Minutes since something began, by clocks that may differ by one; an hour where nothing did. */
const since = (from: number | null, now: number): number => (from === null ? 60 : now - from + clocksAgree)

/** A line as what happened; null where nothing happened to the unit. */
function happeningOf(entry: AnyEntry, told: Told, sheet: Sheet, trueMinute: number): Happening | null {
  switch (entry.kind) {
    case 'snapshot-kept': {
      const { item, reading } = entry.body
      const named = item !== 'pressure' || reading?.instrument !== null
      return { is: 'kept', item, how: reading === null ? 'not-known' : named ? 'read' : 'no-pump' }
    }
    case 'chassis-checked': {
      told.looked.set(entry.body.part, entry.body.verdict)
      const verdicts = [...told.looked.values()]
      if (verdicts.includes('condemned')) return { is: 'looked', verdict: 'condemned' }
      return verdicts.length === chassisParts.length ? { is: 'looked', verdict: 'sound' } : null
    }
    case 'plan-agreed':
      return { is: 'planned', valuesGood: true }
    case 'set-up-worked-out':
      return { is: 'worked-out', pressure: entry.body.pressure / psi }
    case 'setting-written':
      return { is: 'wrote', pressure: entry.body.pressure / psi }
    case 'put-back':
      told.back.add(entry.body.item)
      return {
        is: 'put-back',
        near: entry.body.item === 'wheel' || entry.body.item === 'caliper',
        all: told.back.size === traitsOf(sheet.kind, sheet).putBack.length,
      }
    case 'measured': {
      const { what, phase, reading } = entry.body
      if (what === 'leak-down-start') return { is: 'leak-begun', minutes: since(told.filledAt, trueMinute) }
      if (what === 'leak-down-end')
        return told.world.leak === 'runs' ? { is: 'leak-ended', minutes: since(told.leakFrom, trueMinute) } : null
      if (what !== 'free-length' || phase !== 'done') return null
      return { is: 'measured-length', good: Math.abs(reading.value - (sheet.freeLength?.value ?? 0)) <= 0.002 + 1e-9 }
    }
    case 'step-done': {
      const { step: id, leg, saidSo, wrenchSet } = entry.body
      if (!isStepId(id)) return null
      const step = procedureSteps[id]
      const said = saidSoFor(step.acts).every((gate) => saidSo.includes(gate))
      return {
        is: 'step',
        id,
        step,
        leg,
        said,
        reading: readingOf(entry, told, sheet),
        wrench: wrenchSet !== null,
        soaked: since(told.soakFrom, trueMinute),
      }
    }
    case 'ready':
    case 'handed-over':
      return { is: 'left' }
    default:
      return null
  }
}

/** Another pressure than the one filled: air went in or out, and a leak-down begins anew. */
function airChanged(told: Told, entry: AnyEntry): boolean {
  return (
    entry.kind === 'setting-written' &&
    told.filledTo !== null &&
    told.world.stage > 0 &&
    Math.abs(told.filledTo - entry.body.pressure) > 0.5 * psi
  )
}

function tell(told: Told, entry: AnyEntry, event: Happening, trueMinute: number): void {
  told.world = happened(told.world, event)
  if (entry.kind === 'set-up-worked-out') told.targetPressure = entry.body.pressure
  if (airChanged(told, entry) && entry.kind === 'setting-written') {
    told.world = { ...told.world, leak: 'none' }
    told.filledAt = trueMinute
    told.filledTo = entry.body.pressure
  }
  if (event.is === 'leak-begun') told.leakFrom = trueMinute
  if (event.is !== 'step') return
  if (event.id === 'seals-out') told.soakFrom = trueMinute
  if (event.id === 'air-out') told.releasedAt = trueMinute
  if (event.id === 'outside-off') told.back.clear()
  if (event.step.fills && entry.kind === 'step-done') {
    told.filledAt = trueMinute
    told.filledTo = entry.body.reading?.value ?? told.targetPressure
  }
}

/** Other hands: nobody vouches for the pressure any more. */
function inOtherHands(told: Told, entry: AnyEntry): boolean {
  const hands = entry.kind === 'step-done' || entry.kind === 'taken-over' ? entry.person : null
  const others = hands !== null && told.hands !== null && hands !== told.hands
  if (hands !== null) told.hands = hands
  return others
}

/** The unit as it is for this line: after 12 hours nobody vouches for the pressure, whatever came into the book before it. */
const worldAt = ({ world, releasedAt }: Told, trueMinute: number): World =>
  releasedAt !== null && trueMinute - releasedAt > vouchedFor ? happened(world, { is: 'hands-changed' }) : world

/**
 * The lines that stand although they broke a rule, in the order in which things were done. What is struck, contested and
 * not ruled on, or refused never happened as far as the book says; a person's ruling and a person's waiver are theirs.
 *
 * @param entries     in the order of the replay
 * @param trueMinute  when a line was really made, by its id
 */
export function breachesIn(
  entries: readonly AnyEntry[],
  state: JobState,
  sheet: Sheet,
  trueMinute: (entry: Id) => number,
): readonly Breach[] {
  const contested = new Map(state.contested.map((one) => [one.entry, one.ruling]))
  const around: Around = { traits: traitsOf(sheet.kind, sheet), maximumKnown: true, bike: true }
  const told: Told = {
    world: worldAtTakeIn,
    hands: null,
    releasedAt: null,
    filledAt: null,
    filledTo: null,
    leakFrom: null,
    soakFrom: null,
    targetPressure: null,
    looked: new Map(),
    back: new Set(),
  }
  const waived = new Set<GateId>()
  const breaches: Breach[] = []
  for (const entry of entries) {
    if (state.struck.has(entry.id) || contested.get(entry.id) === null) continue
    const minute = trueMinute(entry.id)
    if (inOtherHands(told, entry)) told.world = happened(told.world, { is: 'hands-changed' })
    if (entry.kind === 'gate-waived' && isWaivable(entry.body.gate)) waived.add(entry.body.gate)
    const event = happeningOf(entry, told, sheet, minute)
    if (!event) continue
    const rules = broken(worldAt(told, minute), event, around).filter((rule) => !waived.has(rule))
    if (rules.length > 0 && !contested.has(entry.id))
      breaches.push({ entry: entry.id, rules, late: entry.standing.mode === 'late' })
    tell(told, entry, event, minute)
  }
  return breaches
}
