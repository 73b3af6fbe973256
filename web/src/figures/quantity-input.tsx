import { type KindName, type MeasureName, parseQuantity } from '@legwork/engine'
import { say } from '@legwork/trade'
import { type ReactNode, useState } from 'react'
import { Field } from '../ui/field.tsx'
import { measureFor, shown } from './shown.ts'
import { useMeasures } from './world.tsx'
import './quantity-input.css'

export interface QuantityInputProps {
  label: ReactNode
  kind: KindName
  /** SI; null while nothing readable stands there. */
  value: number | null
  onChange: (value: number | null) => void
  /** The measure a bare number takes, instead of the writer's own. */
  measure?: MeasureName
  digits?: number
  hint?: ReactNode
  /** Usual range and the like: beside the field, never inside it. */
  suggestion?: ReactNode
  /** A rule of the page over the value: a sentence where it does not hold. */
  judge?: (value: number) => string | null
  /** An empty field is refused once it was left. */
  required?: boolean
}

/** A sentence about what was typed and can't be taken. */
function refusalOf(text: string, kind: KindName, measure: MeasureName | null): string | null {
  const parsed = parseQuantity(text, kind, measure ?? undefined)
  if (parsed.ok) return null
  const { came, allowed, next } = parsed.error
  return say('quantity.refused', { came, allowed, next })
}

/**
 * A field for a quantity as people write it: `80psi`, `5,5 bar`, `1/2 turn`; a bare number takes the measure shown beside
 * it. What can't be read stays as it was typed and is answered by a sentence.
 */
export function QuantityInput(props: QuantityInputProps) {
  const { label, kind, value, onChange, measure: own, digits, hint, suggestion, judge, required = false } = props
  const person = useMeasures()
  const measure = own ?? measureFor(kind, person)
  const [typed, setTyped] = useState<string | null>(null)
  const [left, setLeft] = useState(false)
  const written = value === null ? '' : shown(value, measure, digits).number
  const text = typed ?? written
  const empty = text.trim() === ''
  const refusal = empty
    ? required && left
      ? say('quantity.missing')
      : null
    : (refusalOf(text, kind, measure) ?? (value === null ? null : (judge?.(value) ?? null)))

  function type(next: string): void {
    setTyped(next)
    setLeft(false)
    const parsed = next.trim() === '' ? null : parseQuantity(next, kind, measure ?? undefined)
    onChange(parsed?.ok ? parsed.value : null)
  }

  function leave(): void {
    setLeft(true)
    // Read back in the measure beside the field, so that `5,5 bar` in a psi field is seen as what it was taken for.
    if (value !== null) setTyped(null)
  }

  return (
    <Field
      label={label}
      hint={hint}
      suggestion={suggestion}
      refusal={left || typed === null ? refusal : null}
      className="quantity-field"
    >
      {(control) => (
        <span className="with-unit">
          <input
            {...control}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            enterKeyHint="next"
            required={required}
            value={text}
            onChange={(event) => type(event.target.value)}
            onBlur={leave}
            // Enter sends the form from inside the field: why it can't be taken is said then too.
            onKeyDown={(event) => event.key === 'Enter' && setLeft(true)}
          />
          {measure && (
            <span className="unit" translate="no">
              {shown(0, measure).unit}
            </span>
          )}
        </span>
      )}
    </Field>
  )
}
