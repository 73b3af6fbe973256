/**
 * Return times, drops and adjuster laws against SciPy on formulas written for this check (damping.py): 120 return times, 30
 * of them backwards, 110 drops, 50 laws, drawn by seed. Within 1e-4 of the value.
 */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import {
  clicksForDamping,
  dampingFromReturn,
  drop,
  Refusal,
  returnTime,
  type Spring,
  seededDraws,
} from '@legwork/engine'
import { describe, expect, it } from 'vitest'

const next = seededDraws(20_260_611)
const between = (low: number, high: number) => low + (high - low) * next()

function fork(): Spring {
  const stroke = between(0.1, 0.2)
  const bore = between(0.028, 0.037)
  const swept = (Math.PI / 4) * bore ** 2 * stroke
  const stanchion = bore + 0.003
  return {
    kind: 'air',
    bore,
    shaft: between(0.008, 0.012),
    stroke,
    positiveVolume: swept * between(1.55, 2),
    negativeVolume: swept * between(0.15, 0.35),
    equalisingStroke: between(0, 0.005),
    lower: {
      volume: (Math.PI / 4) * stanchion ** 2 * stroke * between(1.4, 1.9),
      stanchion,
      rod: 0.01,
      legs: [{ oil: between(5e-6, 2e-5) }, { oil: between(5e-6, 2e-5), rod: 0 }],
    },
    ...(next() < 0.3 ? { bumper: { rate: between(10_000, 50_000), length: 0.02, exponent: between(1, 3) } } : {}),
    ...(next() < 0.3 ? { topOut: { rate: between(5000, 20_000), length: between(0.003, 0.01) } } : {}),
  }
}

function coil(): Spring {
  return {
    kind: 'coil',
    rate: between(4000, 12_000),
    stroke: between(0.12, 0.2),
    ...(next() < 0.5 ? { preload: between(0, 0.02) } : {}),
  }
}

function settingOf() {
  const spring = next() < 0.75 ? fork() : coil()
  return {
    spring,
    ...(spring.kind === 'air' ? { pressure: between(4e5, 9e5) } : {}),
    ambient: between(75_000, 103_000),
    exponent: next() < 0.5 ? 1 : between(1.05, 1.4),
    startStroke: between(0, 0.04),
  }
}

const returns = Array.from({ length: 120 }, (_, index) => {
  const setting = settingOf()
  return {
    ask: 'return' as const,
    ...setting,
    mass: between(1.5, 15),
    friction: between(0, 40),
    load: next() < 0.4 ? between(0, 55) : 0,
    damping: between(0, 3000),
    from: setting.spring.stroke * between(0.5, 0.9),
    to: setting.spring.stroke * between(0.02, 0.3),
    inverse: index % 4 === 0,
  }
})
const drops = Array.from({ length: 110 }, () => ({
  ask: 'drop' as const,
  ...settingOf(),
  sprungMass: between(22, 50),
  wheelMass: between(2, 4),
  dropHeight: between(0.02, next() < 0.5 ? 0.8 : 2.5),
  linear: between(100, 2500),
  orifice: between(0, 800),
  tyre: between(50_000, 150_000),
}))
const laws = Array.from({ length: 50 }, () => ({
  ask: 'law' as const,
  settings: Array.from({ length: 3 + Math.floor(between(0, 6)) }, (_, index) => ({
    clicks: 3 * index,
    damping: 2000 * Math.exp(-0.05 * 3 * index + between(-0.05, 0.05)),
  })),
  wanted: between(1200, 1700),
}))

interface PeerReturn {
  time: number | null
  wanted: number
  damping: number | null
}
interface PeerDrop {
  deepest: number
  peakForce: number
  settling: number | null
  bottomed: boolean
  strokes: number[]
}
interface PeerLaw {
  clicks: number
  half: number
  closed: number
  perClick: number
}

function ask<Answer>(cases: readonly object[]): Answer[] {
  const script = join(import.meta.dirname, 'damping.py')
  const { status, stdout, stderr } = spawnSync('/usr/bin/python3', [script], {
    input: JSON.stringify(cases),
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  if (status !== 0) throw new Error(`python3 with SciPy is needed (Debian: python3-scipy): ${stderr}`)
  // What damping.py writes.
  return JSON.parse(stdout) as Answer[]
}

function near(ours: number, theirs: number | null | undefined, floor: number, what: string): void {
  const other = theirs ?? Number.NaN
  expect(Math.abs(ours - other), `${what}: ${ours} against ${other}`).toBeLessThanOrEqual(
    1e-4 * Math.max(floor, Math.abs(other)),
  )
}

describe('return times against SciPy', () => {
  const answers = ask<PeerReturn>(returns)

  it('arrive where SciPy arrives, at the same time', () => {
    const arrived = returns.filter((asked, index) => {
      const answer = answers[index]
      const { spring, ask: _ask, inverse: _inverse, ...question } = asked
      try {
        near(returnTime(spring, question).time, answer?.time, 1e-3, `time ${index}`)
        return true
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
        expect(answer?.time, `${index}: ${error.message}`).toBeNull()
        return false
      }
    })
    expect(arrived.length).toBeGreaterThanOrEqual(100)
    expect(arrived.length).toBeLessThan(returns.length)
  })

  it('and backwards', () => {
    let compared = 0
    returns.forEach((asked, index) => {
      const answer = answers[index]
      if (!answer || answer.time === null || answer.damping === null) return
      const { spring, ask: _ask, inverse: _inverse, damping: _damping, ...question } = asked
      const { damping } = dampingFromReturn(spring, { ...question, time: answer.wanted, timeResolution: 1e-4 })
      near(damping ?? Number.NaN, answer.damping, 1, `damping ${index}`)
      compared += 1
    })
    expect(compared).toBeGreaterThanOrEqual(20)
  })
})

describe('drops against SciPy', () => {
  const answers = ask<PeerDrop>(drops)
  const ours = drops.map(({ spring, ask: _ask, linear, orifice, tyre, ...question }) =>
    drop(spring, { ...question, damping: { linear, orifice }, tyre: { rate: tyre } }),
  )

  it('deepest, peak force and limit', () => {
    ours.forEach(({ deepest, peakForce, limit }, index) => {
      near(deepest, answers[index]?.deepest, 1e-3, `deepest ${index}`)
      near(peakForce, answers[index]?.peakForce, 10, `peak ${index}`)
      expect(limit === 'bottomed', `${index}`).toBe(answers[index]?.bottomed)
    })
    const bottomed = answers.filter((answer) => answer.bottomed).length
    expect(bottomed).toBeGreaterThan(3)
    expect(bottomed).toBeLessThan(80)
  })

  it('stroke over time', () => {
    ours.forEach(({ trace }, index) => {
      answers[index]?.strokes.forEach((stroke, at) => {
        near(trace[20 * at]?.stroke ?? Number.NaN, stroke, 0.1, `stroke ${index} ${at}`)
      })
    })
  })

  it('settling, as far as the peer’s looks 0.2 ms apart tell', () => {
    ours.forEach(({ settling }, index) => {
      const theirs = answers[index]?.settling ?? null
      expect(settling === null, `${index}`).toBe(theirs === null)
      if (settling !== null) expect(Math.abs(settling - (theirs ?? 0)), `${index}`).toBeLessThanOrEqual(2.1e-4)
    })
  })
})

it('adjuster laws against linregress and Student’s t', () => {
  const answers = ask<PeerLaw>(laws)
  laws.forEach(({ settings, wanted }, index) => {
    const { clicks, band, closed, perClick } = clicksForDamping({ settings, wanted })
    const answer = answers[index]
    near(clicks, answer?.clicks, 1e-3, `clicks ${index}`)
    near((band?.[1] ?? Number.NaN) - clicks, answer?.half, 1e-6, `band ${index}`)
    near(closed, answer?.closed, 1, `closed ${index}`)
    near(perClick, answer?.perClick, 1e-6, `share ${index}`)
  })
})
