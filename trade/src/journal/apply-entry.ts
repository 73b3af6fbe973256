/** An entry takes effect on what its job has added up to so far. */
import type { Facts } from '../gates/facts.ts'
import { restBegun } from '../rests/rested.ts'
import { message } from '../words/words.ts'
import { applyStep, factsPutBack } from './apply-step.ts'
import type { AnyEntry } from './entry.ts'
import { endRest, withoutAir } from './job-rests.ts'
import { photosIn } from './photos-in.ts'
import { lengthAllowedBy, madeBy, type Progress, sheetOf } from './progress.ts'

const set = (progress: Progress, facts: Partial<Facts>): void => {
  progress.facts = { ...progress.facts, ...facts }
}

function applyPlan(progress: Progress, entry: Extract<AnyEntry, { kind: 'plan-agreed' }>): void {
  const { body } = entry
  progress.plan = { ...madeBy(entry), ...body }
  if (body.answer === 'no') return
  const before = new Map(progress.steps.map((step) => [step.step, step.done]))
  progress.steps = body.steps.map((step) => ({
    ...step,
    done: before.get(step.step) ?? { once: null, left: null, right: null },
    complete: false,
    carriedOver: entry.standing.mode === 'carried-over',
  }))
  const bikeHere = body.steps.some((step) => step.step === 'outside-off')
  set(progress, { plan: 'agreed', values: 'known' })
  if (!bikeHere && progress.facts.brake === 'at-fork') set(progress, { brake: 'no-bike' })
}

/** Half a psi: what no pump's gauge tells apart is the same pressure (common practice, no source). */
const alike = 3447

/** Free length, told absolutely or as what is missing to full length. */
function judgeLength(progress: Progress, what: string, value: number): void {
  const sheet = sheetOf(progress)
  const wanted = sheet?.freeLength?.value ?? progress.snapshot.length?.reading?.value
  const off = what === 'short-of-length' ? -value : wanted === undefined ? null : value - wanted
  progress.off.length = off
  const within = off !== null && Math.abs(off) <= lengthAllowedBy(sheet) + 1e-9
  set(progress, { length: off === null ? 'cannot-tell' : within ? 'within' : 'outside' })
}

/** Another pressure than the one filled means that air went in or out: a leak-down begins anew. */
function airChanged(progress: Progress, pressure: number, entry: AnyEntry): void {
  if (progress.filledTo === null || Math.abs(progress.filledTo - pressure) <= alike) return
  progress.filledTo = pressure
  progress.rests = { ...withoutAir(progress.rests), settle: restBegun(entry) }
  set(progress, { leakDown: 'none' })
}

/** A gauge alone reads some per cent off; further down than this, air was let out to press once more. */
const lowered = 0.85

function applyMeasured(progress: Progress, entry: Extract<AnyEntry, { kind: 'measured' }>): void {
  const { what, phase, reading } = entry.body
  progress.measured.push({ ...madeBy(entry), ...entry.body })
  if (phase === 'done' && (what === 'free-length' || what === 'short-of-length'))
    judgeLength(progress, what, reading.value)
  if (what === 'press-pressure' && phase === 'done' && reading.value < lowered * (progress.filledTo ?? 0))
    airChanged(progress, reading.value, entry)
  if (what === 'maximum-pressure') progress.maximumOnUnit = reading.value
  if (what === 'leak-down-start') {
    endRest(progress, 'settle', entry)
    if (progress.waiting?.for === 'rest') progress.waiting = null
    progress.rests = { ...progress.rests, leak: restBegun(entry) }
    set(progress, { leakDown: 'running' })
  }
  if (what === 'leak-down-end' && progress.facts.leakDown === 'running') {
    endRest(progress, 'leak', entry)
    set(progress, { leakDown: 'finished' })
  }
}

function applySetting(progress: Progress, entry: Extract<AnyEntry, { kind: 'setting-written' }>): void {
  progress.setting = { ...madeBy(entry), ...entry.body }
  set(progress, { setting: 'written' })
  airChanged(progress, entry.body.pressure, entry)
}

/** Takes effect; entries that are struck, contested or out of place never come here. */
export function applyEntry(progress: Progress, entry: AnyEntry): void {
  const made = madeBy(entry)
  switch (entry.kind) {
    case 'job-opened':
      progress.opened = { ...made, ...entry.body }
      break
    case 'snapshot-kept': {
      const { item, reading, photos, notKnownBecause } = entry.body
      // What was read stays read, whoever says later that it is not known; a wrong reading is struck.
      if (notKnownBecause !== null && progress.facts[`snapshot.${item}`] === 'kept') break
      progress.snapshot[item] = { ...made, reading, photos, notKnownBecause }
      set(progress, { [`snapshot.${item}`]: notKnownBecause === null ? 'kept' : 'not-known' })
      break
    }
    case 'chassis-checked': {
      const { part, verdict, found } = entry.body
      progress.chassis[part] = { ...made, verdict, found, photos: photosIn(entry) }
      set(progress, { [`chassis.${part}`]: verdict })
      break
    }
    case 'sign-noted':
      progress.signs.push({ ...made, ...entry.body })
      break
    case 'history-said':
      progress.history.push({ ...made, ...entry.body })
      break
    case 'measured':
      applyMeasured(progress, entry)
      break
    case 'plan-agreed':
      applyPlan(progress, entry)
      break
    case 'set-up-worked-out':
      progress.setUp = { ...made, ...entry.body }
      set(progress, { pressureToFill: 'worked-out' })
      break
    case 'step-done':
      applyStep(progress, entry)
      break
    case 'sag-measured':
      progress.sag = { ...made, ...entry.body }
      break
    case 'trail-said':
      progress.trail = { ...made, ...entry.body }
      break
    case 'setting-written':
      applySetting(progress, entry)
      break
    case 'put-back':
      progress.putBack[entry.body.item] = { ...made, reading: entry.body.reading }
      progress.facts = factsPutBack(progress.facts, entry.body.item)
      break
    case 'gate-waived':
      progress.waivers.push({ ...made, ...entry.body })
      break
    case 'taken-over':
      if (progress.hands !== entry.person) set(progress, { pressure: 'unknown' })
      progress.hands = entry.person
      break
    case 'waiting':
      progress.waiting = entry.body.for === null ? null : { ...made, ...entry.body }
      break
    case 'stopped':
      progress.stop = {
        entry: entry.id,
        gate: entry.body.gate,
        because: message('stopped.by-hand'),
        why: entry.body.why,
      }
      break
    case 'stop-lifted':
      progress.stop = null
      progress.lateStop = null
      break
    case 'ready':
      progress.ready = { ...made, ...entry.body }
      break
    case 'handed-over':
      progress.handedOver = { ...made, ...entry.body }
      break
    case 'called-off':
      progress.calledOff = made
      break
    case 'noted':
      progress.notes.push({ ...made, text: entry.body.text, photos: photosIn(entry) })
      break
    case 'struck':
    case 'ruled':
      break
  }
}
