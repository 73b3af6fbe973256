/** What was refused, each line a way to its field. */
import type { RefusedField } from '@legwork/engine'
import { say } from '@legwork/trade'
import { refusalText } from './form-state.tsx'
import { FieldName, fieldText } from './names.tsx'

/** `spring.legs[0].oil` as steps. */
function stepsOf(field: string): (string | number)[] {
  return [...field.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, name = '']) =>
    index === undefined ? name : Number(index),
  )
}

/** Brings the hand to a field, or to the part it would stand in. */
function goTo(field: string): void {
  const place = document.querySelector(`[data-field="${CSS.escape(field)}"]`)
  const control = place?.querySelector<HTMLElement>('input, button, select')
  const there = control ?? place
  there?.scrollIntoView({ block: 'center' })
  control?.focus({ preventScroll: true })
}

export function Refused({ calc, errors }: { calc: string; errors: readonly RefusedField[] }) {
  return (
    <div className="calc-refused">
      <p>{say('calc.refused', { n: errors.length })}</p>
      <ul>
        {errors.map((error) => (
          <li key={`${error.field} ${error.code}`}>
            <button type="button" onClick={() => goTo(error.field)} aria-label={fieldText(calc, stepsOf(error.field))}>
              <FieldName calc={calc} path={stepsOf(error.field)} />
            </button>
            <p className="book">{refusalText(error)}</p>
          </li>
        ))}
      </ul>
    </div>
  )
}
