/** Every row of the bench limits. Common practice, no source: written here from the trade's notes, not from the table. */
import { describe, expect, it } from 'vitest'
import { sheetOfDemo } from '../journal/written-job.ts'
import type { Instrument } from '../registers.ts'
import type { Sheet, UnitKind } from '../sheets/sheet.ts'
import { isWordKey } from '../words/words.ts'
import { boundsFor, judgeables, judgeMeasured } from './bench-limits.ts'
import { halfWidthOf } from './instrument-doubt.ts'
import { judge, zonesOf } from './judge.ts'

const fork: UnitKind = 'fork-air'
const mm = 1e-3
/** What, kind, then values that pass, are watched, fail. */
const rows: readonly [string, UnitKind, number, number, number][] = [
  ['spring-load-off', fork, 0.1, 0.12, 0.16],
  ['friction', 'fork-air', 25, 30, 46],
  ['friction', 'fork-coil', 15, 16, 31],
  ['friction', 'shock-air', 70, 100, 121],
  ['friction', 'shock-coil', 15, 30, 31],
  ['breakaway', 'fork-coil', 39, 69, 71],
  ['breakaway-ratio', fork, 1.4, 1.9, 2.1],
  ['leak-10-min', fork, 0.009, 0.015, 0.021],
  ['leak-24-h', 'shock-air', 0.029, 0.05, 0.061],
  ['short-of-length', fork, 2 * mm, 4 * mm, 6 * mm],
  ['short-of-length', 'shock-air', 1 * mm, 2 * mm, 6 * mm],
  ['travel-off', fork, 3 * mm, 5 * mm, 7 * mm],
  ['return-time', fork, 0.14, 0.12, 0.09],
  ['return-time', fork, 0.24, 0.3, 0.41],
  ['return-time', 'shock-air', 0.07, 0.06, 0.04],
  ['return-time', 'shock-coil', 0.2, 0.25, 0.31],
  ['return-closed-over-open', fork, 2.4, 1.5, 1.2],
  ['return-warm-over-cold', fork, 0.9, 0.7, 0.6],
  ['repeat-spread', fork, 0.07, 0.1, 0.16],
  ['lock-out-creep', fork, 4 * mm, 8 * mm, 11 * mm],
  ['dead-zone', 'shock-air', 2 * mm, 3 * mm, 5 * mm],
  ['clearance', fork, 0.11 * mm, 0.18 * mm, 0.21 * mm],
  ['stanchion-out-of-round', fork, 0.019 * mm, 0.03 * mm, 0.05 * mm],
  ['stanchion-run-out', fork, 0.09 * mm, 0.12 * mm, 0.16 * mm],
  ['damper-shaft-run-out', fork, 0.04 * mm, 0.08 * mm, 0.11 * mm],
  ['shock-shaft-run-out', 'shock-air', 0.02 * mm, 0.05 * mm, 0.09 * mm],
  ['mount-play', 'shock-air', 0.15 * mm, 0.3 * mm, 0.45 * mm],
  ['coil-rate-off', 'fork-coil', 0.04, 0.06, 0.09],
]
/** Good or not: nothing to watch. */
const onlyFail: readonly [string, UnitKind, number, number][] = [
  ['bare-patch', fork, 3 * mm, 3.1 * mm],
  ['air-shaft-run-out', fork, 0.15 * mm, 0.16 * mm],
  ['bumper-shortened', fork, 0.15, 0.16],
  ['coil-shortened', 'shock-coil', 0.02, 0.021],
]

const bare = (kind: UnitKind): Sheet => ({ ...sheetOfDemo('U01'), kind, limits: {} })

describe('bench limits', () => {
  it.each(rows)('%s of a %s: %d pass, %d watch, %d fail', (what, kind, pass, watch, fail) => {
    const verdicts = [pass, watch, fail].map((value) => judgeMeasured(what, value, bare(kind)).verdict)
    expect(verdicts).toEqual(['pass', 'watch', 'fail'])
  })

  it.each(onlyFail)('%s of a %s: %d pass, %d fail', (what, kind, pass, fail) => {
    expect([pass, fail].map((value) => judgeMeasured(what, value, bare(kind)).verdict)).toEqual(['pass', 'fail'])
  })

  it('leaves none of them untried, and has a word for each', () => {
    const tried = new Set([...rows, ...onlyFail].map(([what]) => what))
    expect(judgeables.filter((what) => !tried.has(what))).toEqual([])
    expect(judgeables.filter((what) => !isWordKey(`measure.${what}`))).toEqual([])
  })

  it('cannot tell where the kind has no such limit', () => {
    expect(boundsFor('clearance', 'shock-air')).toBeNull()
    expect(judgeMeasured('mount-play', 0.001, bare('fork-air'))).toMatchObject({ verdict: 'cannot-tell', source: null })
  })

  it('goes by the sheet before common practice', () => {
    const { source } = sheetOfDemo('U01').stroke
    const sheet = { ...bare(fork), limits: { 'return-time': { failBelow: 0.2, watchBelow: 0.3, source } } }
    expect(judgeMeasured('return-time', 0.25, sheet)).toMatchObject({ verdict: 'watch', source })
    expect(judgeMeasured('return-time', 9, sheet).verdict).toBe('pass')
  })
})

describe('the instrument’s doubt', () => {
  const named = { id: 'i', name: 'I', note: null }
  const tape: Instrument = { ...named, kind: 'tape', resolution: 0.001 }

  it('is half its smallest step, and of a wrench its class', () => {
    expect(halfWidthOf(tape, 0.164)).toBe(0.0005)
    const wrench: Instrument = {
      ...named,
      kind: 'wrench',
      low: 2,
      high: 15,
      class: 0.06,
      length: 0.2,
      adapterLength: 0,
    }
    expect(halfWidthOf(wrench, 5)).toBeCloseTo(0.3, 12)
    expect(halfWidthOf(null, 5)).toBe(0)
  })

  it('makes 2 mm short by a tape a matter nobody can tell, 1 mm a pass', () => {
    const judged = (value: number) =>
      judgeMeasured('short-of-length', value, bare(fork), halfWidthOf(tape, value)).verdict
    expect([judged(0.001), judged(0.002), judged(0.003)]).toEqual(['pass', 'cannot-tell', 'watch'])
  })

  it('can’t tell where it reaches over the good zone to the watched one on either side', () => {
    const zones = zonesOf({ failBelow: 0.1, watchBelow: 0.14, watch: 0.24, fail: 0.4 })
    expect(judge(0.19, zones, 0.06)).toBe('cannot-tell')
    expect(judge(0.19, zones, 0.04)).toBe('pass')
  })
})
