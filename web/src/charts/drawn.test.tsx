import type { ReactElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { ChapterRule } from './chapter-rule.tsx'
import { ForceStroke } from './force-stroke.tsx'
import type { Curve } from './force-stroke-geometry.ts'
import { LimitStrip } from './limit-strip.tsx'
import { StepRuler, stretches } from './step-ruler.tsx'

/** The reviewed drawings stand beside this file; a changed one is looked at before it is kept. */
const kept = (name: string, drawing: ReactElement) =>
  expect(renderToStaticMarkup(drawing).replaceAll('><', '>\n<')).toMatchFileSnapshot(`drawn/${name}.svg`)

const whole = (value: number) => String(Math.round(value))
/** Not a unit's: a force that rises evenly, then steeper. */
const slow: Curve = [0, 0.03, 0.06, 0.09, 0.12, 0.15].map((stroke) => ({
  stroke,
  force: 60 + 9000 * stroke + 4e5 * stroke ** 3,
}))

const chart = (
  <ForceStroke
    fullStroke={0.15}
    slow={slow}
    fast={slow.slice(1).map(({ stroke, force }) => ({ stroke, force: (force ?? 0) * (1 + stroke) }))}
    readings={[
      { stroke: 0.05, force: 540, way: 'pressing', when: 'today' },
      { stroke: 0.05, force: 480, way: 'releasing', when: 'last visit' },
    ]}
    lastVisit={slow.map(({ stroke, force }) => ({ stroke, force: (force ?? 0) * 0.97 }))}
    load={{ force: 351, low: 322, high: 380, value: '351', unit: 'N', words: 'load' }}
    wanted={{ from: 0.0225, to: 0.033, words: 'wanted' }}
    stroke={0.03}
    onStroke={() => {}}
    strokeMeasure={{ size: 0.001, unit: 'mm', format: whole }}
    forceMeasure={{ size: 1, unit: 'N', format: whole }}
    words={{
      chart: 'Force over the stroke',
      slow: 'slow',
      fast: 'fast',
      lastVisit: 'last visit',
      grip: 'stroke',
      gripValue: '30 mm, 341 N',
    }}
  />
)

describe('drawings that were looked at', () => {
  it('force over stroke', () => kept('force-stroke', chart))

  it('limit strip with a whisker over the limit', () =>
    kept(
      'limit-strip',
      <LimitStrip
        min={0}
        max={3}
        zones={[
          { from: 0, to: 1, verdict: 'pass' },
          { from: 1, to: 2, verdict: 'watch' },
          { from: 2, to: 3, verdict: 'fail' },
        ]}
        limits={[1, 2]}
        value={0.4}
        low={0}
        high={1.9}
        format={String}
        label="0.4 %, cannot tell"
      />,
    ))

  it('step ruler with an open and a shut gate', () =>
    kept(
      'step-ruler',
      <StepRuler
        states={['done', 'done', 'now', 'to-come', 'to-come']}
        gates={[
          { after: 1, open: true },
          { after: 3, open: false },
        ]}
        width={300}
        label="Step 3 of 5"
      />,
    ))

  it('chapters of a job', () =>
    kept(
      'chapter-rule',
      <ChapterRule states={['done', 'done', 'now', 'to-come', 'to-come', 'to-come', 'to-come']} gateAt={3} />,
    ))
})

describe('what a chart says without eyes', () => {
  it('the grip is a slider with a name, a range and words for its value', () => {
    const svg = renderToStaticMarkup(chart)
    expect(svg).toMatch(/role="slider"[^>]*tabindex="0"/i)
    for (const part of [
      'aria-label="stroke"',
      'aria-valuemin="0"',
      'aria-valuemax="150"',
      'aria-valuenow="30"',
      'aria-valuetext="30 mm, 341 N"',
    ])
      expect(svg).toContain(part)
  })

  it('no drawing holds a number that is none', () => {
    expect(renderToStaticMarkup(chart)).not.toMatch(/NaN|Infinity|undefined/)
  })
})

it('neighbouring steps in one state make one stretch of the rule', () => {
  expect(stretches(['done', 'done', 'now', 'to-come'])).toEqual([
    { from: 0, to: 2, state: 'done' },
    { from: 2, to: 3, state: 'now' },
    { from: 3, to: 4, state: 'to-come' },
  ])
})
