/** Every instrument of the shop. */
import { type Instrument, instrumentKinds, say } from '@legwork/trade'
import { useRegisters } from '../../offline/hooks.tsx'
import { LinkButton } from '../../ui/button.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { kindOfStep, useShownAs } from './instrument-figures.ts'
import './instruments.css'

function useSays(): (one: Instrument) => string {
  const shownAs = useShownAs()
  const percent = (share: number) => Math.round(Math.abs(share) * 1000) / 10
  return (one) => {
    if (one.kind === 'wrench')
      return say('instrument.says.wrench', {
        low: shownAs(one.low, 'torque'),
        high: shownAs(one.high, 'torque'),
        percent: percent(one.class),
      })
    if (one.kind !== 'pump' && one.kind !== 'gauge')
      return say('instrument.says.step', { step: shownAs(one.resolution, kindOfStep(one.kind)) })
    const offset = one.offset === 0 ? 'true' : one.offset > 0 ? 'high' : 'low'
    const reads =
      offset === 'true'
        ? say('instrument.says.true')
        : say(`instrument.says.${offset}`, { percent: percent(one.offset) })
    const hose = say('instrument.says.hose', { volume: Math.round(one.hoseVolume * 1e7) / 10 })
    return [hose, ...(one.hose ? [] : [say('instrument.believed')]), reads].join(', ')
  }
}

function Lines({ instruments }: { instruments: readonly Instrument[] }) {
  const says = useSays()
  return instruments.map((one) => (
    <Row key={one.id} href={`/instruments/${one.id}`} className="list-row instrument-row">
      <b translate="no">{one.name}</b>
      <span>{says(one)}</span>
      <span>{say(`instrument.kind.${one.kind}`)}</span>
    </Row>
  ))
}

export function InstrumentsPage() {
  const { instruments } = useRegisters()
  const order = [...instruments].sort(
    (one, other) =>
      instrumentKinds.indexOf(one.kind) - instrumentKinds.indexOf(other.kind) || one.name.localeCompare(other.name),
  )
  const away = order.filter(({ putAway }) => putAway)
  return (
    <ShopFrame
      place="sheets"
      title={say('instruments.title')}
      actions={
        <LinkButton kind="second" href="/instruments/new">
          {say('instruments.new')}
        </LinkButton>
      }
    >
      <h1>{say('instruments.title')}</h1>
      <p className="book">{say('instruments.note')}</p>
      {order.length === 0 && <p className="empty">{say('instruments.empty')}</p>}
      <Lines instruments={order.filter(({ putAway }) => !putAway)} />
      {away.length > 0 && (
        <SideHead place="above" title={say('instruments.put-away')} note={say('instruments.put-away.note')}>
          <Lines instruments={away} />
        </SideHead>
      )}
    </ShopFrame>
  )
}
