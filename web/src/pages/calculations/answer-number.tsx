/** A number that came out, in the measures of whoever reads. */
import { fromSI, type KindName, type MeasureName, measures } from '@legwork/engine'
import type { Measures } from '@legwork/trade'
import { say } from '@legwork/trade'
import { measureFor } from '../../figures/shown.ts'
import { useMeasures } from '../../figures/world.tsx'
import type { Numeric } from './answer-lines.ts'
import '../../figures/figure.css'

/** Units that no field is written in, as a workshop reads them. */
const read: Readonly<Record<string, { factor: number; unit: string }>> = {
  'm²': { factor: 1e6, unit: 'mm²' },
}

const superscript: Readonly<Record<string, string>> = {
  '-': '⁻',
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
}

/** Digits after the point that leave four significant ones in a number of this size. */
const placesFor = (size: number): number => Math.min(6, Math.max(0, 3 - Math.floor(Math.log10(size))))

/**
 * Four significant digits, as a hand writes them: no exponent for everyday sizes, thin spaces from 10 000.
 *
 * @param beside  the largest number beside it: all of a range or a column have the same digits after the point
 * @example writtenNumber(-0.00013) // '−1.3·10⁻⁴'
 */
export function writtenNumber(value: number, beside?: number): string {
  if (value === 0) return '0'
  const size = Math.abs(beside ?? value)
  if (size >= 1e7 || size < 1e-3) {
    const [digits = '', power = '0'] = value.toExponential(3).split('e')
    const raised = [...power.replace('+', '')].map((sign) => superscript[sign] ?? sign).join('')
    return `${String(Number(digits)).replace('-', '−')}·10${raised}`
  }
  const fixed = value.toFixed(placesFor(size))
  const [whole = '', ...rest] = (beside === undefined ? String(Number(fixed)) : fixed).split('.')
  const grouped = whole.replace('-', '').length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, '\u2009')
  return [grouped.replace('-', '−'), ...rest].join('.')
}

/** Whole percents; one digit below one. */
function writtenChance(percent: number): string {
  return String(percent >= 1 ? Math.round(percent) : Number(percent.toPrecision(1)))
}

/** How a person reads a number: how large it is to them, and what stands after it. */
export function readIn(
  { kind, unit, measure: only }: Numeric,
  person: Measures,
  size: number,
): { of: (si: number) => number; unit: string } {
  const measure = only ?? (kind && measureOf(kind, person, size))
  if (measure) return { of: (si) => fromSI(si, measure), unit: measures[measure].label }
  const other = read[unit]
  if (other) return { of: (si) => si * other.factor, unit: other.unit }
  return { of: (si) => si, unit: kind === 'number' || unit === '1' ? '' : unit }
}

/** Long times and ways are read in larger measures. */
function measureOf(kind: KindName, person: Measures, size: number): MeasureName | null {
  if (kind === 'duration')
    return size < 0.1 ? 'ms' : size < 120 ? 's' : size < 7200 ? 'min' : size < 172_800 ? 'h' : 'd'
  if (kind === 'length' && size >= 10) return size >= 1000 ? 'km' : 'm'
  return measureFor(kind, person)
}

function Unit({ unit }: { unit: string }) {
  if (unit === '') return null
  return (
    <u className={unit === '°' ? 'close' : undefined} translate="no">
      {unit === '°' ? unit : `\u00a0${unit}`}
    </u>
  )
}

interface AnswerNumberProps {
  value: number
  of: Numeric
  /** The one answer of the page. */
  main?: boolean
  /** In a table the unit stands in its head, for the largest of the column. */
  bare?: boolean
  size?: number
}

export function AnswerNumber({ value, of, main = false, bare = false, size }: AnswerNumberProps) {
  const person = useMeasures()
  const inMeasure = readIn(of, person, size ?? Math.abs(value))
  return (
    <span className={main ? 'quantity calc-main' : 'quantity text'} translate="no">
      {of.isChance
        ? writtenChance(inMeasure.of(value))
        : writtenNumber(inMeasure.of(value), size === undefined ? undefined : inMeasure.of(size))}
      {!bare && <Unit unit={inMeasure.unit} />}
    </span>
  )
}

interface AnswerRangeProps extends Pick<AnswerNumberProps, 'of' | 'bare' | 'size'> {
  low: number
  high: number
}

export function AnswerRange({ low, high, of, bare = false, size }: AnswerRangeProps) {
  const person = useMeasures()
  const largest = size ?? Math.max(Math.abs(low), Math.abs(high))
  const inMeasure = readIn(of, person, largest)
  const [from = '', to = ''] = [low, high].map((si) => writtenNumber(inMeasure.of(si), inMeasure.of(largest)))
  return (
    <span className="quantity text">
      {say('calc.range', { low: from, high: to })}
      {!bare && <Unit unit={inMeasure.unit} />}
    </span>
  )
}
