import { say } from '@legwork/trade'
import { QuantityText } from '../../figures/quantity-text.tsx'
import { useRegisters } from '../../offline/hooks.tsx'
import { LinkButton } from '../../ui/button.tsx'
import { Row } from '../../ui/ledger.tsx'
import { postureText } from '../job/posture.ts'
import { ShopFrame } from '../shop-frame.tsx'
import './riders.css'

export function RidersPage() {
  const { riders: all, units } = useRegisters()
  const riders = all.filter(({ removedOn }) => !removedOn)
  return (
    <ShopFrame
      place="riders"
      title={say('place.riders')}
      actions={
        riders.length === 0 && (
          <LinkButton kind="main" href="/take-in" arrow="forward">
            {say('bench.take-in')}
          </LinkButton>
        )
      }
    >
      <h1 className="ruled">{say('place.riders')}</h1>
      {riders.length === 0 && <p className="empty">{say('riders.empty')}</p>}
      {riders.map((rider) => (
        <Row key={rider.id} href={`/riders/${rider.id}`} className="list-row">
          <b translate="no">{rider.name}</b>
          <span>
            <span translate="no">
              {units
                .filter((unit) => unit.rider === rider.id)
                .map(({ label }) => label)
                .join(', ')}
            </span>
            {rider.posture && (
              <small className="book" translate="no">
                {postureText(rider.posture)}
              </small>
            )}
          </span>
          {rider.mass !== null && (
            <span>
              <QuantityText value={rider.mass} kind="mass" digits={0} hand /> {say('rider.with-kit')}
            </span>
          )}
        </Row>
      ))}
    </ShopFrame>
  )
}
