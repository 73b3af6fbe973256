import { table } from './page.ts'
import type { FrameTimes, SliderFrames } from './slider-frames.ts'

/** Script of 95 frames of 100 [ms]. */
const target = 8

const milliseconds = (value: number) => `${value.toFixed(1)} ms`

function row(what: string, { frames, median, p95, slowest }: FrameTimes, wanted?: number): string[] {
  const met = wanted === undefined ? '' : `≤ ${wanted} ms: ${p95 <= wanted ? 'met' : 'missed'}`
  return [what, String(frames), milliseconds(median), milliseconds(p95), milliseconds(slowest), met]
}

/** What a frame of Set up costs while a finger is on it. */
export function frameTable({ stroke, strokeLayout, whatIf }: SliderFrames): string[] {
  return table([
    ['what', 'frames', 'median', '95 of 100', 'slowest', 'target'],
    row('stroke: drawing, chart, numbers; script', stroke, target),
    row('the same frames: styles and layout', strokeLayout),
    row('what-if: another spring, all curves anew; script', whatIf, target),
  ])
}

/** How the table was taken. */
export const frameWords = [
  'The built app on its own server, Set up of a demonstration job at 1024 × 768 in Chromium: a mouse drags the drawing',
  'through half its stroke and back; then the altitude of a what-if is stepped up and down. Chromium’s own counters',
  '(`Performance.getMetrics`, time on the processor) are read before the move and two animation frames later; what the',
  'test runs to wait counts as script too. The first frames of each, which are compiled while they run, are left out.',
]
