/** From a job to the list a technician reads. The estimates are one technician's; what is checked is the way through. */
import { diagnose } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import type { JobState } from '../journal/job-state.ts'
import { faultTestWords } from '../words/fault-tests.ts'
import { faultWords } from '../words/faults.ts'
import { addWords, isWordKey, say } from '../words/words.ts'
import { faultCauses } from './causes.ts'
import { evidenceOf } from './evidence-of-job.ts'
import { curedBy, faultList, likelihood, nextTestOf } from './fault-list.ts'
import { faultNetwork } from './fault-network.ts'
import { groupFactors } from './group-factors.ts'
import { faultSigns } from './signs.ts'
import { isSignId, signsOf } from './signs-of.ts'
import { faultTests } from './tests.ts'

const made = { entry: 'e', person: 'p', at: '2026-05-03T09:00:00.000Z', carriedOver: false, late: false }
const noted = (sign: string, state: 'present' | 'absent' | 'unknown') => ({ ...made, sign, state, by: 'seen' as const })
const job = (signs: JobState['signs'], sound: readonly ('crown' | 'dropouts')[] = []) => ({
  signs,
  chassis: Object.fromEntries(sound.map((part) => [part, { ...made, verdict: 'sound' as const, found: null }])),
})

describe('what a job says', () => {
  it('takes what was noted last, and nothing from what nobody looked at', () => {
    const signs = [noted('S19', 'present'), noted('S16', 'present'), noted('S19', 'absent'), noted('S16', 'unknown')]
    expect(evidenceOf('fork-air', job(signs), [])).toEqual({ present: [], absent: ['S19'] })
  })

  it('leaves out what its kind does not show, and names of nothing', () => {
    const signs = [noted('S19', 'present'), noted('S34', 'present'), noted('T11', 'present'), noted('rust', 'present')]
    expect(evidenceOf('shock-air', job(signs), [])).toEqual({ present: [], absent: [] })
    expect(evidenceOf('fork-coil', job(signs), []).present).toEqual(['S19', 'S34', 'T11'])
  })

  it('knows a sound crown and free dropouts, and what was measured', () => {
    const judged = [
      { what: 'clearance', verdict: 'fail' as const },
      { what: 'clearance', verdict: 'pass' as const },
      { what: 'friction', verdict: 'watch' as const },
      { what: 'short-of-length', verdict: 'pass' as const },
    ]
    expect(evidenceOf('fork-air', job([], ['crown', 'dropouts']), judged)).toEqual({
      present: ['T30'],
      absent: ['T33', 'S33', 'S03'],
    })
  })
})

describe('the list', () => {
  const asked = (present: string[], absent: string[]) => {
    const diagnosis = diagnose(faultNetwork, { kind: 'fork-air', present, absent })
    return { list: faultList(diagnosis, { present, absent }), next: nextTestOf(diagnosis), diagnosis }
  }

  it('a knock with the brake held can’t part headset and bushings; three minutes with a finger can', () => {
    const knock = asked(['S19'], ['T33', 'S33'])
    expect(knock.list.open).toMatchObject([
      { fault: 'C43', likelihood: 'likely', signs: ['S19'] },
      { fault: 'C15', likelihood: 'possible', signs: ['S19'] },
    ])
    expect(knock.next).toMatchObject({ minutes: 3, because: expect.arrayContaining(['C43', 'C15']) })
    const finger = asked(['S19', 'T11'], ['T33', 'S33', 'T12'])
    expect(finger.list.open[0]).toMatchObject({ fault: 'C15', likelihood: 'likely', signs: ['T11', 'S19'] })
    expect(
      Object.values(finger.list)
        .flat()
        .some(({ fault }) => fault === 'C43'),
    ).toBe(false)
  })

  it('puts behind what a service cures anyway, and asks no test for it alone', () => {
    const { list, next } = asked(['S05', 'S06'], ['T33', 'S33'])
    expect(list.cured.find(({ fault }) => fault === 'C02')).toMatchObject({
      likelihood: 'likely',
      curedBy: 'lower-legs',
    })
    expect([...list.open, ...list.unlikely].every((one) => one.curedBy === null)).toBe(true)
    expect(list.unlikely.every((one) => one.likelihood === 'unlikely')).toBe(true)
    expect(next?.because.some((fault) => curedBy(fault) === null)).toBe(true)
  })

  it('is empty where nothing points anywhere, and lists what may hurt somebody at the first sign of it', () => {
    expect(asked([], []).list).toEqual({ open: [], unlikely: [], cured: [] })
    expect(asked(['S06'], []).list.open).toContainEqual(expect.objectContaining({ fault: 'C20', safety: true }))
    expect(asked([], []).next?.safety).toBe(true)
  })

  it('says a half as likely, 15 % as possible, less as unlikely', () => {
    expect([0.5, 0.499, 0.15, 0.149].map(likelihood)).toEqual(['likely', 'possible', 'possible', 'unlikely'])
  })
})

describe('what is known beforehand', () => {
  it.each([
    [{ hoursOverInterval: 0.9 }, { wear: 0.5 }],
    [{ hoursOverInterval: 1 }, { wear: 1 }],
    [{ hoursOverInterval: 2 }, { wear: 2 }],
    [{ hoursOverInterval: 4 }, { wear: 3.5 }],
    [
      { servicedWithinDays: 60, hoursOverInterval: 5 },
      { wear: 1.75, assembly: 4 },
    ],
    [{ servicedWithinDays: 61 }, { wear: 1, assembly: 1 }],
    [
      { secondHand: true, servicedWithinDays: 3 },
      { 'set-up': 2, assembly: 8 },
    ],
    [{ crashed: true }, { damage: 4, 'not-the-unit': 1 }],
  ])('%o', (known, factors) => {
    expect(groupFactors(known)).toMatchObject(factors)
  })

  it('stands on the prior odds', () => {
    const factors = groupFactors({ crashed: true })
    const { ranking } = diagnose(faultNetwork, { kind: 'fork-air', present: [], absent: [], factors })
    // By hand: odds of 0.05 are 1 to 19; four times that are 4 to 19.
    expect(ranking.find(({ fault }) => fault === 'C19')?.prior).toBeCloseTo(4 / 23, 12)
    expect(() => groupFactors({ hoursOverInterval: -1 })).toThrow('factors.hoursOverInterval')
    expect(() => groupFactors({ servicedWithinDays: Number.NaN })).toThrow('factors.servicedWithinDays')
  })
})

it('has words for every sign, fault and test, once they are loaded', () => {
  expect([isWordKey('fault.C15'), say('fault.C15')]).toEqual([false, 'fault.C15'])
  addWords({ ...faultWords, ...faultTestWords })
  expect(say('fault.likely', { fault: say('fault.C15') })).toBe('Likely: lower-leg bushings worn')
  const wanted = [
    ...faultSigns.map(({ id }) => `look.sign.${id}`),
    ...faultCauses.map(({ id }) => `fault.${id}`),
    ...faultTests.flatMap(({ id }) => [`test.${id}`, `test.${id}.reading`]),
  ]
  expect(wanted.filter((key) => !isWordKey(key))).toEqual([])
})

it('signs of a kind: those looked at on every unit first', () => {
  expect(signsOf('fork-air', 'bench').first).toEqual(['S03', 'S06', 'S15', 'S16', 'S17', 'S19', 'S20', 'S23'])
  expect(signsOf('shock-coil', 'bench').first).toEqual(['S03', 'S06', 'S15', 'S16', 'S18', 'S23'])
  expect(signsOf('shock-coil', 'rider').others).not.toContain('S01')
  expect([isSignId('S36'), isSignId('S37')]).toEqual([true, false])
})
