import { say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { Button } from '../../ui/button.tsx'
import { type Path, pathText } from './draft.ts'
import { useForm, usePlace } from './form-state.tsx'
import { FieldName, fieldText } from './names.tsx'
import type { Shape } from './shape.ts'

/** A part of the form and where it stands. */
export interface PartProps {
  shape: Shape
  path: Path
  needed: boolean
  instead: unknown
  label?: ReactNode
}

/** A titled part of the form; one that is not needed can be left out again. */
export function Section({
  path,
  needed,
  label,
  children,
}: Omit<PartProps, 'shape' | 'instead'> & { children: ReactNode }) {
  const { calc } = useForm()
  const { change, refusal } = usePlace(path)
  return (
    <section className="calc-section" data-field={pathText(path)}>
      <div className="head">
        <h3>{label ?? <FieldName calc={calc} path={path} />}</h3>
        {!needed && (
          <Button
            kind="second"
            size="row"
            name={say('calc.take-out.name', { name: fieldText(calc, path) })}
            onPress={() => change(undefined)}
          >
            {say('calc.take-out')}
          </Button>
        )}
      </div>
      {refusal && (
        <p className="refusal" role="alert">
          {refusal}
        </p>
      )}
      <div className="inside">{children}</div>
    </section>
  )
}
