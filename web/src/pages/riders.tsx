import { say } from '@legwork/trade'
import { QuantityText } from '../figures/figure.tsx'
import { useRegisters } from '../offline/hooks.tsx'
import { Row } from '../ui/ledger.tsx'
import { ShopFrame } from './shop-frame.tsx'

export function RidersPage() {
  const { riders, units } = useRegisters()
  return (
    <ShopFrame place="riders" title={say('place.riders')}>
      <h1>{say('place.riders')}</h1>
      {riders.length === 0 && <p className="empty">{say('riders.empty')}</p>}
      {riders.map((rider) => (
        <Row key={rider.id} className="list-row">
          <b translate="no">{rider.name}</b>
          <span translate="no">
            {units
              .filter((unit) => unit.rider === rider.id)
              .map(({ label }) => label)
              .join(', ')}
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
