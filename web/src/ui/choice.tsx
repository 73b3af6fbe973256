import { type ReactNode, useId } from 'react'
import './choice.css'

export interface ChoiceOption<Value extends string> {
  value: Value
  label: ReactNode
  detail?: ReactNode
}

interface ChoiceProps<Value extends string> {
  label: ReactNode
  options: readonly ChoiceOption<Value>[]
  /** Null where nothing is chosen yet. */
  value: Value | null
  onChange: (value: Value) => void
  /** The label is spoken only. */
  quiet?: boolean
}

/** One of a few: cells in a row, each 56 px, the chosen one washed in violet with a solid ring. */
export function Choice<Value extends string>({ label, options, value, onChange, quiet }: ChoiceProps<Value>) {
  const name = useId()
  return (
    <fieldset className="choice">
      <legend className={quiet ? 'unseen' : undefined}>{label}</legend>
      <div>
        {options.map((option) => (
          <label key={option.value}>
            <input type="radio" name={name} checked={option.value === value} onChange={() => onChange(option.value)} />
            <span>
              {option.label}
              {option.detail && <small>{option.detail}</small>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
