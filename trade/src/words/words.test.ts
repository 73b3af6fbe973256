import { afterEach, describe, expect, it } from 'vitest'
import { rules } from '../gates/rules.ts'
import { procedureSteps } from '../procedures/procedures.ts'
import { appBenchTestWords } from './app-bench-tests.ts'
import { appCalculationFieldWords } from './app-calculation-fields.ts'
import { appCalculationPictureWords } from './app-calculation-pictures.ts'
import { appCalculationWords } from './app-calculations.ts'
import { appInstrumentWords } from './app-instruments.ts'
import { appLifeWords } from './app-life.ts'
import { appStandingWords } from './app-standing.ts'
import { catalogue } from './catalogue.ts'
import { faultTestWords } from './fault-tests.ts'
import { faultWords } from './faults.ts'
import type { LaterWords } from './later.ts'
import { lookOverWords } from './look-over.ts'
import { paperWords } from './papers.ts'
import { supplyWords } from './supplies.ts'
import { isWordKey, message, say, sayMessage, sayPressuresIn, setVoice } from './words.ts'

const later: LaterWords = {
  ...faultWords,
  ...faultTestWords,
  ...appCalculationWords,
  ...appCalculationFieldWords,
  ...appCalculationPictureWords,
  ...appInstrumentWords,
  ...appBenchTestWords,
  ...appLifeWords,
  ...appStandingWords,
  ...lookOverWords,
  ...paperWords,
  ...supplyWords,
}

afterEach(() => {
  setVoice('plain')
  sayPressuresIn('psi')
})

describe('the text catalogue', () => {
  it('fills in parameters and messages', () => {
    expect(say('gate.R16.shut', { leg: message('leg.right') })).toBe(
      'No air before both feet are torqued. The right leg is not ticked.',
    )
  })

  it('says a pressure in the measure of who reads', () => {
    // 85 psi · 6894.757 Pa = 586 054 Pa; 1 bar = 100 000 Pa.
    const asked = { maximum: { pascal: 586_054 }, asked: { pascal: 600_000 } }
    expect(say('gate.R27.shut', asked)).toBe('The maximum of this unit is 85 psi; 87 psi is above it.')
    sayPressuresIn('bar')
    expect(say('gate.R27.shut', asked)).toBe('The maximum of this unit is 5.9 bar; 6.0 bar is above it.')
  })

  it('brackets a whole text once in the pseudo voice', () => {
    setVoice('pseudo')
    expect(say('gate.R16.act', { leg: message('leg.right.capital') })).toBe('⟦Right leg first⟧')
    expect(sayMessage(message('leg.left'))).toBe('⟦left⟧')
  })

  it('has title, note and caution of every step, and a name of every gate', () => {
    const wanted = [
      ...Object.keys(procedureSteps).flatMap((id) => [`step.${id}`, `step.${id}.note`, `step.${id}.caution`]),
      ...rules.map((rule) => `gate.${rule.id}`),
    ]
    expect(wanted.filter((key) => !isWordKey(key))).toEqual([])
  })

  it('has no empty text, no double space, no text in capitals, and braces that close', () => {
    for (const [key, text] of Object.entries({ ...catalogue, ...later })) {
      expect(text.trim(), key).not.toBe('')
      expect(text, key).not.toMatch(/ {2}/)
      expect(text.replaceAll(/\{[^{}]*\}/g, ''), key).not.toMatch(/[{}]/)
      expect(text.replaceAll('JSON', ''), key).not.toMatch(/\b[A-Z]{4,}\b/)
    }
  })
})
