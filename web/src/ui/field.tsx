import { type HTMLInputTypeAttribute, type ReactNode, useId } from 'react'
import './field.css'

/** What a field's control needs so that label, hint and refusal are spoken with it. */
export interface FieldControl {
  id: string
  'aria-describedby': string | undefined
  'aria-invalid': boolean | undefined
}

interface FieldProps {
  label: ReactNode
  /** What belongs to it, below the label. */
  hint?: ReactNode
  /** Usual range and the like: it stands beside the field, never inside it. */
  suggestion?: ReactNode
  /** A whole sentence: what came, what is allowed, what to do. */
  refusal?: ReactNode
  children: (control: FieldControl) => ReactNode
  className?: string
}

/** Label above, leaf to write on, suggestion outside, refusal below. */
export function Field({ label, hint, suggestion, refusal, children, className }: FieldProps) {
  const id = useId()
  const said = [hint && `${id}-hint`, suggestion && `${id}-suggestion`, refusal && `${id}-refusal`].filter(Boolean)
  return (
    <div className={['field', className].filter(Boolean).join(' ')}>
      <label htmlFor={id}>{label}</label>
      {hint && (
        <p id={`${id}-hint`} className="book">
          {hint}
        </p>
      )}
      <div className="leaf">
        {children({
          id,
          'aria-describedby': said.length > 0 ? said.join(' ') : undefined,
          'aria-invalid': refusal ? true : undefined,
        })}
        {suggestion && (
          <span id={`${id}-suggestion`} className="book suggestion">
            {suggestion}
          </span>
        )}
      </div>
      <p id={`${id}-refusal`} className="refusal" role="alert">
        {refusal}
      </p>
    </div>
  )
}

interface TextFieldProps extends Omit<FieldProps, 'children'> {
  value: string
  onChange: (value: string) => void
  type?: HTMLInputTypeAttribute
  inputMode?: 'text' | 'decimal' | 'numeric' | 'search'
  autoComplete?: string
  lines?: number
  autoFocus?: boolean
}

/** A field of plain text; more lines where they are asked for. */
export function TextField(props: TextFieldProps) {
  const { value, onChange, type = 'text', inputMode, autoComplete = 'off', lines = 1, autoFocus, ...field } = props
  return (
    <Field {...field}>
      {(control) =>
        lines > 1 ? (
          <textarea {...control} rows={lines} value={value} onChange={(event) => onChange(event.target.value)} />
        ) : (
          <input
            {...control}
            type={type}
            inputMode={inputMode}
            autoComplete={autoComplete}
            // biome-ignore lint/a11y/noAutofocus: only where the page is nothing but this field, as Search is
            autoFocus={autoFocus}
            value={value}
            onChange={(event) => onChange(event.target.value)}
          />
        )
      }
    </Field>
  )
}
