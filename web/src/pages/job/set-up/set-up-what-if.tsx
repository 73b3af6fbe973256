/** Before and after of a what-if, next to the curves that show it. */
import { Refusal } from '@legwork/engine'
import { type Sheet, say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { endForceWorkings, endWorkings, sagWorkings } from './set-up-workings.tsx'
import { fastExponent, type Outcome, type Standing } from './what-if.ts'

export interface Compared {
  standing: Standing
  outcome: Outcome
}

function Line({ name, cells }: { name: string; cells: readonly [ReactNode, ReactNode | null] }) {
  const [before, after] = cells
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{before}</td>
      {after !== null && <td>{after}</td>}
    </tr>
  )
}

interface WhatIfTableProps {
  sheet: Sheet
  load: number
  before: Compared
  /** Null while nothing is changed; a refusal where the fork can't be so. */
  after: Compared | Refusal | null
}

/** Sag, force near the end, stroke and gauge, as it is and then. */
export function WhatIfTable({ sheet, load, before, after: answer }: WhatIfTableProps) {
  const after = answer instanceof Refusal ? null : answer
  const both = (cell: (of: Compared) => ReactNode): readonly [ReactNode, ReactNode | null] => [
    cell(before),
    after && cell(after),
  ]
  return (
    <SideHead place="above" title={say('set-up.what-if')} note={say('set-up.what-if.note')} className="what-if">
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">{say('set-up.what-if.before')}</th>
            {after && <th scope="col">{say('set-up.what-if.after')}</th>}
          </tr>
        </thead>
        <tbody>
          <Line
            name={say('set-up.sag-rests')}
            cells={both(({ standing, outcome }) => (
              <WorkedOut
                value={outcome.sag.stroke}
                kind="length"
                digits={1}
                workings={() => sagWorkings(sheet, standing, load, 0, 'stroke')}
              />
            ))}
          />
          <Line
            name={say('set-up.what-if.share')}
            cells={both(({ standing, outcome }) => (
              <WorkedOut
                value={outcome.sag.fraction}
                kind="fraction"
                digits={1}
                workings={() => sagWorkings(sheet, standing, load, 0, 'fraction')}
              />
            ))}
          />
          <Line
            name={say('set-up.end-force')}
            cells={both(({ standing, outcome }) => (
              <WorkedOut
                value={outcome.endForce}
                kind="force"
                digits={0}
                workings={() => endForceWorkings(sheet, standing, outcome.sag.stroke, fastExponent)}
              />
            ))}
          />
          <Line
            name={say('set-up.what-if.ends')}
            cells={both(({ standing, outcome }) => (
              <WorkedOut
                value={outcome.fullStroke}
                kind="length"
                digits={1}
                workings={() => endWorkings(sheet, standing)}
              />
            ))}
          />
          <Line
            name={say('set-up.what-if.gauge')}
            cells={both(({ outcome }) => <QuantityText value={outcome.pressure} kind="pressure" />)}
          />
        </tbody>
      </table>
      {answer === null && <p className="book">{say('set-up.what-if.same')}</p>}
      {answer instanceof Refusal && (
        <p className="refusal" role="alert" translate="no">
          {answer.message}
        </p>
      )}
    </SideHead>
  )
}
