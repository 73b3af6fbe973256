/** A field for one place of a sheet. What is unusual is taken only after somebody has said that it is so. */
import type { MeasureName } from '@legwork/engine'
import { isWordKey, type SheetPlace, say, sayMessage, usualBeside, usualWarning } from '@legwork/trade'
import { QuantityInput } from '../figures/quantity-input.tsx'
import { measureFor, shown } from '../figures/shown.ts'
import { useMeasures } from '../figures/world.tsx'
import { Choice } from '../ui/choice.tsx'
import { TextField } from '../ui/field.tsx'
import { TickBox } from '../ui/tick-box.tsx'

export interface PlaceDraft {
  value: number | string | null
  /** Somebody said: yes, that is what the sheet says. */
  sure: boolean
}
export const emptyPlace: PlaceDraft = { value: null, sure: false }

/** What is unusual about it; null where nothing is. */
export function warningOf(place: SheetPlace, { value }: PlaceDraft): string | null {
  if (typeof value !== 'number' || !place.usual) return null
  const warning = usualWarning(value, place.usual)
  return warning && sayMessage(warning)
}

/** Whether it may be kept: a value, and where it is unusual, somebody's word for it. */
export const isKeepable = (place: SheetPlace, draft: PlaceDraft): boolean =>
  draft.value !== null && (draft.sure || warningOf(place, draft) === null)

/** Digits that show a typed value as it was typed. */
export function digitsOf(value: number | null, measure: MeasureName | null): number {
  if (value === null) return 0
  for (let digits = 0; digits < 4; digits += 1) {
    const read = Number(shown(value, measure, digits).number.replaceAll('\u2009', '').replace('−', '-'))
    const finer = Number(shown(value, measure, 4).number.replaceAll('\u2009', '').replace('−', '-'))
    if (Math.abs(read - finer) < 1e-9) return digits
  }
  return 4
}

/** What one of a few words is called. */
export function choiceWord(words: 'role' | 'fixing', value: string): string {
  const key = `take-in.${words}.${value}`
  return isWordKey(key) ? sayMessage({ key, params: {} }) : value
}

interface PlaceFieldProps {
  place: SheetPlace
  draft: PlaceDraft
  onChange: (draft: PlaceDraft) => void
  /** Where it comes from: what somebody says yes to. */
  measured: boolean
}

export function PlaceField({ place, draft, onChange, measured }: PlaceFieldProps) {
  const person = useMeasures()
  const label = sayMessage(place.label)
  const { holds } = place
  const change = (value: number | string | null) => onChange({ value, sure: false })
  if (holds === 'text')
    return (
      <TextField
        label={label}
        value={typeof draft.value === 'string' ? draft.value : ''}
        onChange={(text) => change(text.trim() === '' ? null : text)}
      />
    )
  if ('oneOf' in holds)
    return (
      <Choice
        label={label}
        options={holds.oneOf.map((value) => ({ value, label: choiceWord(holds.words, value) }))}
        value={typeof draft.value === 'string' ? draft.value : null}
        onChange={change}
      />
    )
  const value = typeof draft.value === 'number' ? draft.value : null
  const warning = warningOf(place, draft)
  return (
    <div className="place-field">
      <QuantityInput
        label={label}
        kind={holds.kind}
        digits={digitsOf(value, measureFor(holds.kind, person))}
        value={value}
        onChange={change}
        {...(place.usual ? { suggestion: sayMessage(usualBeside(place.usual)) } : {})}
        judge={() => (draft.sure ? null : warning)}
      />
      {warning && (
        <TickBox
          label={say(measured ? 'sheet.sure.measured' : 'sheet.sure')}
          detail={say('sheet.sure.note', { what: label })}
          ticked={draft.sure}
          onTick={(sure) => onChange({ ...draft, sure })}
        />
      )}
    </div>
  )
}
