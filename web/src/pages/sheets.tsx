import type { KindName } from '@legwork/engine'
import { legs, type Sheet, type SourcedNumber, say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { SheetCutaway } from '../cutaway/sheet-cutaway.tsx'
import { QuantityText } from '../figures/figure.tsx'
import { SourceLine } from '../figures/source-line.tsx'
import { useRegisters } from '../offline/hooks.tsx'
import { Row, SideHead, ValueRow } from '../ui/ledger.tsx'
import { ShopFrame } from './shop-frame.tsx'

export function SheetsPage() {
  const { sheets } = useRegisters()
  return (
    <ShopFrame place="sheets" title={say('place.sheets')}>
      <h1>{say('place.sheets')}</h1>
      {sheets.length === 0 && <p className="empty">{say('sheets.empty')}</p>}
      {sheets.map((sheet) => (
        <Row key={`${sheet.id}${sheet.revision}`} href={`/sheets/${sheet.id}`} className="list-row">
          <b translate="no">{sheet.name}</b>
          <span>{say('sheet.revision', { revision: sheet.revision })}</span>
        </Row>
      ))}
    </ShopFrame>
  )
}

/** A value with its source; an empty one says so and stays empty. */
function SheetValue({ name, held, kind }: { name: ReactNode; held: SourcedNumber | null | undefined; kind: KindName }) {
  return (
    <ValueRow name={name} note={held && <SourceLine source={held.source} />}>
      {held ? (
        <QuantityText value={held.value} kind={kind} {...(kind === 'length' ? { digits: 1 } : {})} />
      ) : (
        <span className="book">{say('sheet.empty')}</span>
      )}
    </ValueRow>
  )
}

function SheetLines({ sheet }: { sheet: Sheet }) {
  return (
    <>
      <SideHead title={say('sheet.values')} note={say('sheet.revision', { revision: sheet.revision })}>
        <SheetValue name={say('sheet.stanchion')} held={sheet.stanchion} kind="length" />
        <SheetValue name={say('sheet.stroke')} held={sheet.stroke} kind="length" />
        <SheetValue name={say('sheet.free-length')} held={sheet.freeLength} kind="length" />
        <SheetValue name={say('sheet.maximum')} held={sheet.maxPressure} kind="pressure" />
        <SheetValue name={say('sheet.spacers')} held={sheet.spacers} kind="number" />
        <SheetValue name={say('sheet.lower-volume')} held={sheet.lowerVolume} kind="volume" />
      </SideHead>
      {sheet.legs &&
        legs.map((leg) => (
          <SideHead key={leg} title={say(`leg.${leg}.title`)}>
            <SheetValue name={say('sheet.bath-oil')} held={sheet.legs?.[leg].bathOil} kind="volume" />
            <SheetValue name={say('sheet.foot-torque')} held={sheet.legs?.[leg].footTorque} kind="torque" />
          </SideHead>
        ))}
    </>
  )
}

export function SheetPage({ id }: { id: string }) {
  const revisions = useRegisters().sheets.filter((sheet) => sheet.id === id)
  const name = revisions[0]?.name
  const latest = revisions.at(-1)
  return (
    <ShopFrame place="sheets" title={name ?? say('place.sheets')}>
      {name ? <h1 translate="no">{name}</h1> : <p className="empty">{say('sheet.not-here')}</p>}
      {latest && <SheetCutaway key={latest.revision} sheet={latest} />}
      {revisions.some(({ generic }) => generic) && <p className="book">{say('sheet.generic')}</p>}
      {revisions.map((sheet) => (
        <SheetLines key={sheet.revision} sheet={sheet} />
      ))}
    </ShopFrame>
  )
}
