import { expect, it } from 'vitest'
import { reading, WrittenJob } from '../journal/written-job.ts'
import { releasesIn, returnMarks, thumb } from './released.ts'

// A fork from 110 to 10 mm, a shock from 70 to 10 % of its stroke: common practice, no source.
it('a return is timed between the marks of its kind', () => {
  expect(returnMarks('fork-air', 0.15)).toEqual({ from: 0.11, to: 0.01 })
  expect(returnMarks('fork-coil', 0.1)).toEqual({ from: 0.07, to: 0.01 })
  expect(returnMarks('shock-coil', 0.055)).toEqual({ from: 0.0385, to: 0.0055 })
})

it('repeats stand together by their clicks, with mean and spread', () => {
  const job = new WrittenJob().ready()
  const time = (clicks: number, seconds: number, film: { pictures: number; perSecond: number } | null) =>
    job.put('measured', {
      what: 'return-timed',
      leg: null,
      phase: 'received',
      reading: reading(seconds, 's'),
      release: { from: 0.11, to: 0.01, clicks, film },
    })
  time(8, 0.2, { pictures: 48, perSecond: 240 })
  time(0, 0.5, null)
  time(8, 0.21, { pictures: 50, perSecond: 240 })
  time(8, 0.19, { pictures: 46, perSecond: 240 })
  const [card, closed] = releasesIn(job.state.measured, 'received')
  // (0.20 + 0.21 + 0.19)/3 = 0.20 s; (0.21 − 0.19)/0.20 = 10 %; one picture of three repeats: 1/240/√3 s.
  expect(card).toMatchObject({ clicks: 8, from: 0.11, to: 0.01 })
  expect(card?.time).toBeCloseTo(0.2, 6)
  expect(card?.spread).toBeCloseTo(0.1, 6)
  expect(card?.resolution).toBeCloseTo(1 / 240 / Math.sqrt(3), 9)
  expect(closed).toMatchObject({ clicks: 0, spread: null, resolution: thumb })
})
