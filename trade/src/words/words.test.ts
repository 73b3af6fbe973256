import { afterEach, describe, expect, it } from 'vitest'
import { rules } from '../gates/rules.ts'
import { procedureSteps } from '../procedures/procedures.ts'
import { catalogue } from './catalogue.ts'
import { isWordKey, message, say, sayMessage, setVoice } from './words.ts'

afterEach(() => setVoice('plain'))

describe('the text catalogue', () => {
  it('fills in parameters and messages', () => {
    expect(say('gate.R16.shut', { leg: message('leg.right') })).toBe(
      'No air before both feet are torqued. The right leg is not ticked.',
    )
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
    for (const [key, text] of Object.entries(catalogue)) {
      expect(text.trim(), key).not.toBe('')
      expect(text, key).not.toMatch(/ {2}/)
      expect(text.replaceAll(/\{[^{}]*\}/g, ''), key).not.toMatch(/[{}]/)
      expect(text, key).not.toMatch(/\b[A-Z]{4,}\b/)
    }
  })
})
