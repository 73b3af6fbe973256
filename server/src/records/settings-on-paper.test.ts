import { describe, expect, it } from 'vitest'
import type { JobOnPaper } from './job-on-paper.ts'
import { labelOf } from './job-papers.ts'
import { settingsOf } from './settings-on-paper.ts'

/** Only what is looked at. */
function job(springKind: 'air' | 'coil'): JobOnPaper {
  const setting = {
    pressure: springKind === 'coil' ? 0 : 6e5,
    temperature: 293.15,
    pump: null,
    spacers: 0,
    clicks: { rebound: 8, compression: null },
  }
  const sheet = { springKind, clicks: { rebound: { value: 14 }, compression: null }, spring: {}, legs: null }
  const state = { setting, sheet, setUp: null, sag: null, steps: [], plan: null, handedOver: null }
  const measures = { pressure: 'psi', temperature: '°C', length: 'mm' }
  const registers = { instruments: [], riders: [], units: [] }
  const now = '2026-05-02T16:00:00Z'
  // A job on paper has all of a job's state and the whole register; settings are told by these.
  return { state, measures, registers, number: 'J1', now, address: 'x' } as unknown as JobOnPaper
}

describe('settings on paper', () => {
  it('a coil leaves with its clicks, and with no pressure and no spacers', () => {
    expect(settingsOf(job('air')).map(({ place }) => place)).toEqual(['pressure', 'spacers', 'rebound'])
    expect(settingsOf(job('coil')).map(({ place }) => place)).toEqual(['rebound'])
  })

  it('the label of a coil says so, not that a pressure is 0 or missing', () => {
    expect(labelOf(job('coil'))).toMatchObject({ coil: true, pressure: null, at: null })
    expect(labelOf(job('air'))).toMatchObject({ coil: false, pressure: '87\u00a0psi' })
  })
})
