import type { EntryKind } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { entryBodies } from './entries.ts'
import { liftBody, newestVersion, type UpCaster, upCasters } from './entry-versions.ts'
import { fieldErrors } from './field-errors.ts'

const isKind = (kind: string): kind is EntryKind => kind in entryBodies

// Two changes a kind might see: a field renamed, then one added.
const casters: UpCaster[] = [
  { kind: 'noted', from: 1, lift: (body) => ({ words: Reflect.get(Object(body), 'text') }) },
  { kind: 'noted', from: 2, lift: (body) => ({ ...Object(body), tone: 'plain' }) },
]

it('lifts an old body through every version to the newest', () => {
  expect(newestVersion('noted', casters)).toBe(3)
  expect(liftBody('noted', 1, { text: 'a' }, casters)).toEqual({ words: 'a', tone: 'plain' })
  expect(liftBody('noted', 2, { words: 'a' }, casters)).toEqual({ words: 'a', tone: 'plain' })
  expect(liftBody('noted', 3, { words: 'a', tone: 'b' }, casters)).toEqual({ words: 'a', tone: 'b' })
})

it('leaves another kind as it is and refuses a version of the future', () => {
  expect(liftBody('ready', 1, { minutes: 3 }, casters)).toEqual({ minutes: 3 })
  expect(() => liftBody('ready', 2, {}, casters)).toThrow('ready has version 2; this program reads 1 to 1')
})

describe('entries as version 1 wrote them', () => {
  const id = '0190b5a0-0000-7000-8000-00000000000a'
  const text = 'a'.repeat(64)
  const reading = { value: 0.164, measure: 'm', instrument: null, how: null }
  /** One body of each kind, pinned: whatever changes later, these are read. */
  const written: Record<EntryKind, unknown> = {
    'job-opened': { unit: id, rider: id, bike: null, visit: id, asked: text, spendAllowed: null },
    'snapshot-kept': { item: 'length', reading, photos: [], notKnownBecause: null },
    'chassis-checked': { part: 'crown', verdict: 'sound', found: null },
    'sign-noted': { sign: 'S27', state: 'present', by: 'seen' },
    'history-said': { what: 'crashed', value: true },
    measured: { what: 'clearance', leg: 'left', phase: 'received', reading },
    'plan-agreed': {
      services: ['lower-legs'],
      sheet: { id, revision: 'C' },
      steps: [{ step: 'air-out', procedure: 'lower-legs', revision: 1, legs: ['left'], minutes: 3 }],
      answer: 'yes',
      declined: [],
      answeredBy: 'rider',
    },
    'set-up-worked-out': {
      pressure: 606_739,
      band: [551_580, 661_900],
      temperature: 293.15,
      ambient: 101_325,
      riderMass: 82,
      frontShare: 0.42,
      sag: 0.2,
      load: 351,
      spacers: 1,
    },
    'step-done': { step: 'air-out', leg: null, reading: null, wrenchSet: null, saidSo: ['R5'] },
    'sag-measured': { fromAbove: 0.027, fromBelow: 0.021, instrument: null },
    'trail-said': { altitude: 1650, temperature: 285.15 },
    'setting-written': {
      pressure: 606_739,
      temperature: 293.15,
      pump: null,
      spacers: 1,
      clicks: { rebound: 8, compression: null },
    },
    'put-back': { item: 'axle', reading: null },
    'gate-waived': { gate: 'R22', reason: text },
    'taken-over': { from: id },
    waiting: { for: 'answer', until: null, why: text },
    stopped: { gate: 'R1', why: text },
    'stop-lifted': { why: text },
    ready: { minutes: 58 },
    'handed-over': { receivedBy: text, initials: null },
    'called-off': { why: text },
    noted: { text },
    struck: { entry: id, reason: text },
    ruled: { entry: id, ruling: 'stands', reason: text },
  }

  it.each(Object.entries(written))('%s is read today', (kind, body) => {
    if (!isKind(kind)) throw new Error(`${kind} is gone: an entry of it can't be read`)
    const read = entryBodies[kind].safeParse(liftBody(kind, 1, body))
    expect(read.success ? [] : fieldErrors(read.error, body)).toEqual([])
  })

  it('have a way up from every version to the newest', () => {
    for (const kind of Object.keys(written).filter(isKind)) {
      const steps = upCasters.filter((caster) => caster.kind === kind).map(({ from }) => from)
      expect(steps, kind).toEqual(steps.map((_, index) => index + 1))
      for (const version of [0, -1, 1.5, newestVersion(kind) + 1])
        expect(() => liftBody(kind, version, {})).toThrow(RangeError)
    }
  })
})
