/** What every list of rows needs. */
import { say } from '@legwork/trade'
import { Button } from '../../ui/button.tsx'
import { blank, type Shape } from './shape.ts'

/** So many rows are drawn at once; a recorded track has thousands. */
export const mostRows = 60

/** A new row begins like the last one, so that what repeats need not be written again. */
export function likeLast(rows: readonly unknown[], of: Shape): unknown {
  const last = rows.at(-1)
  if (last === undefined || typeof last !== 'object') return blank(of) ?? ''
  return structuredClone(last)
}

/** Takes one row out; `name` says which. */
export function TakeOut({ name, onPress }: { name: string; onPress: () => void }) {
  return (
    <Button kind="second" size="row" className="take-out" name={name} onPress={onPress}>
      <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
        <path d="M5 12h14" stroke="currentColor" strokeWidth="2.4" strokeLinecap="round" />
      </svg>
    </Button>
  )
}

/** Says how many rows are not drawn. */
export function RowsHidden({ of }: { of: number }) {
  return of > mostRows ? <p className="book">{say('calc.rows-hidden', { n: of - mostRows })}</p> : null
}
