/**
 * Searches every state of facts that can be reached through the gates for a sequence that must not happen: breadth first,
 * over all ticks and entries, each also in its careless form. Uses the facts, needs and gates that the book uses.
 */
import { changed, factsAfterStep, factsPutBack, holds, unmet } from '../journal/apply-step.ts'
import type { GateId, Leg } from '../journal/entry.ts'
import { legs } from '../journal/entry.ts'
import type { ProcedureStep } from '../procedures/procedure.ts'
import type { Rested } from '../rests/rested.ts'
import { message } from '../words/words.ts'
import type { Asked, Rule } from './asked.ts'
import { type FactName, type Facts, factsAtTakeIn } from './facts.ts'
import { type Around, broken, type Happening, happened, largest, type World, worldAtTakeIn } from './forbidden-world.ts'
import { firstShut, guards } from './rules.ts'

/** A kind of unit with the steps that are done on it. */
export interface Bench extends Around {
  steps: readonly { id: string; step: ProcedureStep }[]
  /**
   * Gates left out together with the entries that only they ask about (leak-down, setting, put-back): for steps that
   * neither make nor spoil any of these, so that the search without them has no fewer ways to go wrong.
   */
  apart?: readonly GateId[]
}

/** Which gate an entry is made for. */
const madeFor: Partial<Record<Happening['is'], GateId>> = {
  'leak-begun': 'R22',
  'leak-ended': 'R22',
  wrote: 'R23',
  'put-back': 'R25',
}

export interface Found {
  /** The shortest forbidden sequence, or null where there is none. */
  sequence: readonly string[] | null
  breaks: GateId | null
  states: number
}

interface Node {
  facts: Facts
  world: World
  planned: boolean
  target: number | null
  offTravel: number | null
  offLength: number | null
  parent: Node | null
  by: string
}

const bad = { over: 200, good: 88 }

function stepsOf({ steps }: Bench): readonly Happening[] {
  return steps.flatMap(({ id, step }) => {
    const sides: readonly (Leg | null)[] = step.legs === 'each' ? legs : [null]
    return sides.flatMap((leg): Happening[] => {
      const good = { is: 'step', id, step, leg, said: true, reading: 'good', wrench: true, soaked: 7 } as const
      const careless: Happening[] = [{ ...good, said: false }]
      if (step.records === 'wrench') careless.push({ ...good, wrench: false })
      if (step.ends === 'soak') careless.push({ ...good, soaked: 3 }, { ...good, soaked: null })
      if (step.records === 'reading') careless.push({ ...good, reading: 'none' }, { ...good, reading: 'off' })
      return [good, ...careless]
    })
  })
}

function everything(bench: Bench): readonly Happening[] {
  return [
    ...bench.traits.snapshot.map((item): Happening => ({ is: 'kept', item, how: 'read' })),
    ...bench.traits.snapshot
      .filter((item) => item === 'pressure')
      // That it is not known may be said at any time, and nothing happens to the unit.
      .map((item): Happening => ({ is: 'kept', item, how: 'no-pump' })),
    { is: 'looked', verdict: 'sound' },
    { is: 'looked', verdict: 'condemned' },
    { is: 'planned', valuesGood: true },
    { is: 'planned', valuesGood: false },
    { is: 'worked-out', pressure: bad.good },
    { is: 'worked-out', pressure: bad.over },
    { is: 'wrote', pressure: bad.good },
    { is: 'wrote', pressure: bad.over },
    { is: 'hands-changed' },
    { is: 'put-back', near: true, all: true },
    { is: 'measured-length', good: true },
    { is: 'measured-length', good: false },
    { is: 'leak-begun', minutes: 5 },
    { is: 'leak-begun', minutes: 20 },
    { is: 'leak-begun', minutes: null },
    { is: 'leak-ended', minutes: 4 },
    { is: 'leak-ended', minutes: 12 },
    { is: 'leak-ended', minutes: null },
    { is: 'left' },
    ...stepsOf(bench),
  ]
}

const pascal = 6894.757293168
const fillReading = { good: { quarter: 22, half: 44, target: 88 }, off: { quarter: 80, half: 80, target: 200 } }

/** As the book asks: two clocks that differ tell nothing. */
function restedFor(minutes: number | null): Rested {
  return minutes === null ? { minutes, by: null, apart: 90 } : { minutes, by: 'receipt', apart: null }
}

function asked(node: Node, event: Happening, bench: Bench): Asked | null {
  const plain: Asked = {
    entry: 'noted',
    acts: [],
    facts: node.facts,
    traits: bench.traits,
    leg: null,
    saidSo: [],
    wrenchSet: null,
    reading: null,
    snapshotItem: null,
    fills: null,
    pressure: null,
    target: node.target === null ? null : node.target * pascal,
    maximum: bench.maximumKnown ? largest * pascal : null,
    missing: [],
    soaked: null,
    leakDown: { act: null, rested: null },
    readBefore: node.world.gauged,
    off: { travel: node.offTravel, length: node.offLength, lengthAllowed: 0.002 },
  }
  const number = { value: 1, measure: 'm', instrument: null, how: null } as const
  switch (event.is) {
    case 'kept':
      return {
        ...plain,
        entry: 'snapshot-kept',
        snapshotItem: event.item,
        reading: event.how === 'not-known' ? null : { ...number, instrument: event.how === 'read' ? 'pump' : null },
      }
    case 'planned':
      return { ...plain, entry: 'plan-agreed', missing: event.valuesGood ? [] : [message('value.sheet')] }
    case 'worked-out':
      return { ...plain, entry: 'set-up-worked-out', pressure: event.pressure * pascal }
    case 'wrote':
      return { ...plain, entry: 'setting-written', pressure: event.pressure * pascal }
    case 'leak-begun':
      // Nothing settles where no air went in.
      return {
        ...plain,
        entry: 'measured',
        leakDown: { act: 'begins', rested: node.facts.fill === 'none' ? null : restedFor(event.minutes) },
      }
    case 'leak-ended':
      return { ...plain, entry: 'measured', leakDown: { act: 'ends', rested: restedFor(event.minutes) } }
    case 'left':
      return { ...plain, entry: 'handed-over' }
    case 'step': {
      const { step, leg, said, reading, wrench, soaked } = event
      const measure = step.acts.includes('drains') ? 'm³' : 'm'
      const pressure = step.fills && reading !== 'none' ? fillReading[reading][step.fills] * pascal : null
      return {
        ...plain,
        entry: 'step-done',
        acts: step.acts,
        leg,
        saidSo: said ? ['R5', 'R8', 'R11', 'R15'] : [],
        wrenchSet: wrench ? 4.9 : null,
        reading: reading === 'none' ? null : { ...number, measure },
        fills: step.fills ?? null,
        pressure,
        soaked: step.ends === 'soak' ? restedFor(soaked) : null,
      }
    }
    default:
      return null
  }
}

/** Whether it is possible at all, gates apart. */
function possible(node: Node, event: Happening, bench: Bench): boolean {
  const { facts, world } = node
  switch (event.is) {
    case 'kept':
      // A pressure may be read again, and should not.
      return event.item === 'pressure' || !world.kept.includes(event.item)
    case 'looked':
      return world.looked === 'no'
    case 'planned':
      return !node.planned
    case 'worked-out':
      return node.target === null
    case 'hands-changed':
      return facts.pressure === 'released'
    case 'put-back':
      return facts['put-back.wheel'] === 'no'
    case 'leak-begun':
      return facts.leakDown === 'none'
    case 'leak-ended':
      return facts.leakDown === 'running'
    case 'wrote':
      return facts.setting === 'none'
    case 'measured-length':
      return facts.length !== (event.good ? 'within' : 'outside')
    case 'left':
      return true
    case 'step':
      return (
        node.planned &&
        bench.steps.length > 0 &&
        unmet(facts, event.step.needs, event.leg) === null &&
        !holds(facts, event.step, event.leg)
      )
  }
}

function factsAfter(node: Node, event: Happening, bench: Bench): Facts {
  const { facts } = node
  switch (event.is) {
    case 'kept':
      return { ...facts, [`snapshot.${event.item}`]: 'kept' }
    case 'looked':
      return { ...facts, 'chassis.crown': event.verdict }
    case 'planned':
      return { ...facts, plan: 'agreed', brake: bench.bike ? facts.brake : 'no-bike' }
    case 'worked-out':
      return { ...facts, pressureToFill: 'worked-out' }
    case 'wrote':
      return { ...facts, setting: 'written' }
    case 'hands-changed':
      return { ...facts, pressure: 'unknown' }
    case 'put-back':
      return factsPutBack(facts, 'wheel')
    case 'measured-length':
      return { ...facts, length: event.good ? 'within' : 'outside' }
    case 'leak-begun':
      return { ...facts, leakDown: 'running' }
    case 'leak-ended':
      return { ...facts, leakDown: 'finished' }
    case 'left':
      return facts
    case 'step':
      return factsAfterStep(facts, event.step, event.leg, {
        washerNew: event.said,
        travelOff: event.reading === 'none' ? null : event.reading === 'good' ? 0 : 0.02,
        read: event.reading === 'none' ? null : event.reading === 'good' ? 0 : 0.02,
      })
  }
}

/** What is no step, in words of the search. */
function calledOf(event: Exclude<Happening, { is: 'step' }>): string {
  switch (event.is) {
    case 'kept':
      return {
        read: `${event.item} kept`,
        'no-pump': `${event.item} kept without its pump`,
        'not-known': `${event.item} not known`,
      }[event.how]
    case 'looked':
      return `chassis ${event.verdict}`
    case 'planned':
      return event.valuesGood ? 'plan agreed' : 'plan agreed on a sheet with gaps'
    case 'worked-out':
      return event.pressure > largest ? 'pressure worked out above the maximum' : 'pressure worked out'
    case 'wrote':
      return event.pressure > largest ? 'setting written above the maximum' : 'setting written'
    case 'measured-length':
      return event.good ? 'free length right' : 'free length wrong'
    case 'leak-begun':
      return event.minutes === null
        ? 'leak-down begun by clocks that differ'
        : `leak-down begun after ${event.minutes} min`
    case 'hands-changed':
      return 'other hands'
    case 'put-back':
      return 'all put back'
    case 'leak-ended':
      return event.minutes === null
        ? 'leak-down finished by clocks that differ'
        : `leak-down finished after ${event.minutes} min`
    case 'left':
      return 'leaves the bench'
  }
}

function called(event: Happening): string {
  if (event.is !== 'step') return calledOf(event)
  const careless = [
    event.said ? '' : 'unsaid',
    event.wrench ? '' : 'no wrench',
    event.reading === 'good' ? '' : event.reading,
    event.step.ends !== 'soak' || event.soaked === 7
      ? ''
      : event.soaked === null
        ? 'by clocks that differ'
        : `after ${event.soaked} min`,
  ]
  return [event.id, event.leg ?? '', ...careless].filter((part) => part !== '').join(' ')
}

function pathTo(node: Node, last: string): readonly string[] {
  const path = [last]
  for (let at: Node | null = node; at?.parent; at = at.parent) path.unshift(at.by)
  return path
}

/** Facts that anything here can change. */
function changingFacts(bench: Bench): readonly FactName[] {
  const start = factsAtTakeIn()
  const changing = new Set<FactName>(['chassis.crown', 'put-back.wheel', 'pressure', 'pressureToFill', 'setting'])
  for (const item of bench.traits.snapshot) changing.add(`snapshot.${item}`)
  for (const fact of ['length', 'leakDown', 'brake', 'plan'] as const) changing.add(fact)
  for (const { step } of bench.steps)
    for (const leg of legs) {
      const after = changed(start, { ...step.spoils, ...step.makes }, leg)
      const before = changed(start, { ...step.makes, ...step.spoils }, leg)
      for (const name of Object.keys(start) as FactName[]) // the facts' own names
        if (after[name] !== start[name] || before[name] !== start[name]) changing.add(name)
    }
  return [...changing]
}

/**
 * The shortest forbidden sequence that the gates of this table let through.
 *
 * @param table  the gates; leave one out to see that the others don't stand in for it
 */
export function searchForbidden(bench: Bench, table: readonly Rule[]): Found {
  const start: Node = {
    facts: factsAtTakeIn(),
    world: worldAtTakeIn,
    planned: false,
    target: null,
    offTravel: null,
    offLength: null,
    parent: null,
    by: '',
  }
  const names = changingFacts(bench)
  const keyOf = ({ facts, world, planned, target }: Node): string => {
    let key = planned ? `${target}` : `-${target}`
    for (const name of names) key += `${facts[name]},`
    for (const value of Object.values(world)) key += `${value},`
    return key
  }
  const seen = new Set([keyOf(start)])
  const apart = bench.apart ?? []
  const gates = table.filter((rule) => !apart.includes(rule.id))
  const all = everything(bench)
    .filter((event) => !apart.some((id) => id === madeFor[event.is]))
    .map((event) => {
      const question = asked(start, event, bench)
      return { event, by: called(event), gates: question ? gates.filter((rule) => guards(rule, question)) : [] }
    })
  let edge: Node[] = [start]
  while (edge.length > 0) {
    const next: Node[] = []
    for (const node of edge)
      for (const { event, by, gates: its } of all) {
        if (!possible(node, event, bench)) continue
        const question = its.length > 0 ? asked(node, event, bench) : null
        if (question && firstShut(question, [], its) !== null) continue
        const breaks = broken(node.world, event, bench).find((id) => !apart.includes(id))
        if (breaks) return { sequence: pathTo(node, by), breaks, states: seen.size }
        if (event.is === 'left') continue
        const after: Node = {
          ...node,
          facts: factsAfter(node, event, bench),
          world: happened(node.world, event),
          planned: node.planned || event.is === 'planned',
          target: event.is === 'worked-out' ? event.pressure : node.target,
          parent: node,
          by,
        }
        const key = keyOf(after)
        if (seen.has(key)) continue
        seen.add(key)
        next.push(after)
      }
    edge = next
  }
  return { sequence: null, breaks: null, states: seen.size }
}
