import { describe, expect, it } from 'vitest'
import { measurable } from './findings.ts'
import { readAs } from './read-as.ts'
import { readingText } from './readings.tsx'

const metric = { pressure: 'psi', length: 'mm' } as const

describe('a reading in the book and in a unit’s life', () => {
  it.each(Object.entries(measurable))('is told as finely as it was typed: %s', (what, { fine, share }) => {
    expect(readAs(what)).toEqual({ fine, share })
  })

  it('a leak of two hundredths is 2.0 per cent', () => {
    // A person's measures are many; neither of these two is asked for a ratio.
    const text = readingText(0.02, '1', metric as never, readAs('leak-24-h'))
    expect(text).toBe('2.0\u00a0%')
  })
})
