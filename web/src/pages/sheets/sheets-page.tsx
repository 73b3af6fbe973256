/** Every sheet of the shop; the way to its instruments, and in for a file. */
import { say } from '@legwork/trade'
import { useRegisters } from '../../offline/hooks.tsx'
import { LinkButton } from '../../ui/button.tsx'
import { Row } from '../../ui/ledger.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { useAllSheets } from './revisions.ts'
import './sheets.css'

export function SheetsPage() {
  const newest = [...new Map(useAllSheets().map((sheet) => [sheet.id, sheet])).values()]
  const { units } = useRegisters()
  return (
    <ShopFrame
      place="sheets"
      title={say('place.sheets')}
      actions={
        <>
          <LinkButton kind="second" href="/instruments">
            {say('sheets.instruments')}
          </LinkButton>
          <LinkButton kind="second" href="/sheets/read-in">
            {say('sheets.read-in')}
          </LinkButton>
        </>
      }
    >
      <h1>{say('place.sheets')}</h1>
      {newest.length === 0 && <p className="empty">{say('sheets.empty')}</p>}
      {newest
        .sort((one, other) => one.name.localeCompare(other.name))
        .map((sheet) => (
          <Row key={sheet.id} href={`/sheets/${sheet.id}`} className="list-row sheet-row">
            <b translate="no">{sheet.name}</b>
            <span>
              {say('sheet.revision', { revision: sheet.revision })}
              {sheet.generic && <small className="book">{say('sheet.generic')}</small>}
            </span>
            <span translate="no">
              {units
                .filter((unit) => unit.sheet === sheet.id)
                .map(({ label }) => label)
                .join(', ')}
            </span>
          </Row>
        ))}
      <p className="book">{say('sheets.file-note')}</p>
    </ShopFrame>
  )
}
