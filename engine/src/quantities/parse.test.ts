import { describe, expect, it } from 'vitest'
import type { KindName } from './kinds.ts'
import { parseQuantity } from './parse.ts'

function read(text: string, kind: KindName): number {
  const parsed = parseQuantity(text, kind)
  if (!parsed.ok) throw new Error(`${text}: ${parsed.error.code}`)
  return parsed.value
}

describe('a quantity as people write it', () => {
  // By the exact definitions: 1 lb = 0.45359237 kg, 1 in = 0.0254 m, g = 9.80665 m/s².
  it.each<[string, KindName, number]>([
    ['80 psi', 'pressure', (80 * 0.45359237 * 9.80665) / 0.0254 ** 2],
    ['5.5 bar', 'pressure', 550_000],
    ['5,5 bar', 'pressure', 550_000],
    ['1013 hPa', 'absolutePressure', 101_300],
    ['20 ml', 'volume', 20e-6],
    ['20 cc', 'volume', 20e-6],
    ['120 mm', 'length', 0.12],
    ['120mm', 'length', 0.12],
    ['5 N·m', 'torque', 5],
    ['5 N.m', 'torque', 5],
    ['5 Nm', 'torque', 5],
    // NIST SP 811: 1 lbf·in = 0.1129848290276167 N·m
    ['48 in·lbf', 'torque', 48 * 0.1129848290276167],
    ['48 in-lb', 'torque', 48 * 0.1129848290276167],
    // NIST SP 811: 1 lbf·ft = 1.3558179483314004 N·m
    ['4 ft·lbf', 'torque', 4 * 1.3558179483314],
    ['12 °C', 'temperature', 285.15],
    ['−10 °C', 'temperature', 263.15],
    ['54 °F', 'temperature', (54 - 32) / 1.8 + 273.15],
    ['10 °F', 'temperatureDifference', 10 / 1.8],
    ['10 °C', 'temperatureDifference', 10],
    ['15 mm2/s', 'viscosity', 15e-6],
    ['15 cSt', 'viscosity', 15e-6],
    ['84 kg', 'mass', 84],
    ['185 lb', 'mass', 185 * 0.45359237],
    ['410 lb/in', 'rate', (410 * 0.45359237 * 9.80665) / 0.0254],
    ['30°', 'angle', 30],
    ['1:25:30', 'duration', 5130],
    ['24 h', 'duration', 86_400],
    ['1/2 turn', 'turns', 0.5],
    ['1 1/2 turns', 'turns', 1.5],
    ['20 %', 'fraction', 0.2],
    ['0.2', 'fraction', 0.2],
    ['1.5e2 N', 'force', 150],
    ['5\u00a0bar', 'pressure', 5e5],
  ])('%s as %s', (text, kind, value) => {
    expect(Math.abs(read(text, kind) - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value))
  })

  it.each<[string, KindName, string]>([
    ['80', 'pressure', 'needs-measure'],
    ['1,500 N', 'force', 'ambiguous-number'],
    ['0,500 N', 'force', 'ambiguous-number'],
    ['1,500.5 N', 'force', 'not-a-number'],
    ['1.500,5 N', 'force', 'not-a-number'],
    ['25:30', 'duration', 'ambiguous-number'],
    ['1:75:30', 'duration', 'not-a-number'],
    ['80 bananas', 'pressure', 'unknown-measure'],
    ['80 mm', 'pressure', 'wrong-measure'],
    ['12 K', 'pressure', 'wrong-measure'],
    ['psi', 'pressure', 'not-a-number'],
    ['', 'pressure', 'not-a-number'],
    ['NaN psi', 'pressure', 'not-a-number'],
    ['1e999 psi', 'pressure', 'not-a-number'],
    ['1/0 turn', 'turns', 'not-a-number'],
    ['30 mm', 'number', 'wrong-measure'],
  ])('refuses %j as %s: %s', (text, kind, code) => {
    const parsed = parseQuantity(text, kind)
    expect(parsed.ok ? 'read' : parsed.error.code).toBe(code)
  })

  it('offers both readings of an ambiguous comma', () => {
    const parsed = parseQuantity('1,500 N', 'force')
    expect(parsed.ok ? '' : parsed.error.next).toBe('Write "1500 N" or "1.500 N".')
  })

  it('takes the measure beside the field for a bare number', () => {
    expect(parseQuantity('80', 'pressure', 'bar')).toEqual({ ok: true, value: 8e6 })
  })
})
