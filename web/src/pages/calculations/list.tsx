import { type Calculation, calculations, groups } from '@legwork/contract/calculations/index.ts'
import { say } from '@legwork/trade'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import './list.css'

const all = Object.values(calculations)

/** The registry in its groups, empty groups left out. */
const grouped = groups
  .map((group) => ({ group, members: all.filter((one) => one.group === group) }))
  .filter(({ members }) => members.length > 0)

function CalculationRow({ one }: { one: Calculation }) {
  return (
    <Row href={`/calculations/${one.name}`} className="calculation-row">
      <b translate="no">{one.title}</b>
      <span className="book" translate="no">
        {one.summary}
      </span>
    </Row>
  )
}

/** Every calculation, group by group. They are worked out on this tablet: no job and no network needed. */
export function CalculationsPage() {
  return (
    <ShopFrame place="calculations" title={say('calc.title')}>
      <header className="calculations-head">
        <h1>{say('calc.title')}</h1>
        <p className="book">{say('calc.about')}</p>
      </header>
      {grouped.map(({ group, members }) => (
        <SideHead key={group} title={say(`calc.group.${group}`)}>
          {members.map((one) => (
            <CalculationRow key={one.name} one={one} />
          ))}
        </SideHead>
      ))}
    </ShopFrame>
  )
}
