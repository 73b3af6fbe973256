/** The unit came alone: no rider to work it out for, so a pressure for each mass. */
import { standardAir } from '@legwork/engine'
import { type Sheet, say, targetSag } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { QuantityText } from '../../figures/quantity-text.tsx'
import { WorkedOut } from '../../figures/workings.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { usualShare } from './posture.ts'
import { pressureWorkings } from './set-up-workings.tsx'
import { cardRows } from './start-card-rows.ts'
import type { StartInputs } from './start-pressure.ts'

/** A trail bike's, where nobody measured it (common practice, no source). */
const usual = { headAngle: 65, frontMass: 5 }

export function StartCard({ sheet }: { sheet: Sheet }) {
  const wanted = targetSag(sheet)
  const [headAngle, setHeadAngle] = useState<number | null>(usual.headAngle)
  const [frontMass, setFrontMass] = useState<number | null>(usual.frontMass)
  const [sag, setSag] = useState<number | null>(0.2)
  const frontShare = (usualShare.standing.low + usualShare.standing.high) / 2
  const base: Omit<StartInputs, 'riderMass'> = useMemo(
    () => ({
      sheet,
      spacers: sheet.spacers?.value ?? 0,
      frontShare,
      frontMass: frontMass ?? usual.frontMass,
      headAngle: headAngle ?? usual.headAngle,
      sag: sag ?? 0.2,
      ambient: standardAir(0).ambient,
    }),
    [sheet, frontShare, frontMass, headAngle, sag],
  )
  const rows = useMemo(() => cardRows(base), [base])
  const percent = (share: number) => Math.round(share * 100)
  return (
    <SideHead
      place="above"
      className="start-card"
      title={say('set-up.card')}
      note={say('set-up.card.note', { share: percent(frontShare) })}
    >
      <div className="trail">
        <QuantityInput
          label={say('set-up.row.head-angle')}
          kind="angle"
          value={headAngle}
          onChange={setHeadAngle}
          judge={(value) => (value < 40 || value > 85 ? say('set-up.card.head-angle-range') : null)}
        />
        <QuantityInput
          label={say('set-up.row.front-mass')}
          kind="mass"
          value={frontMass}
          onChange={setFrontMass}
          judge={(value) => (value < 0 || value > 40 ? say('set-up.card.front-mass-range') : null)}
        />
        <QuantityInput
          label={say('set-up.sag-wanted')}
          kind="fraction"
          value={sag}
          onChange={setSag}
          hint={say('set-up.wanted', { low: percent(wanted.low), high: percent(wanted.high) })}
          judge={(value) => (value < 0.05 || value > 0.5 ? say('set-up.card.sag-range') : null)}
        />
      </div>
      <p className="book">{say('set-up.card.assumes')}</p>
      <table className="card-table">
        <thead>
          <tr>
            <th scope="col">{say('set-up.card.mass')}</th>
            <th scope="col">{say('set-up.card.load')}</th>
            <th scope="col">{say('set-up.card.pressure')}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.riderMass}>
              <th scope="row">
                <QuantityText value={row.riderMass} kind="mass" digits={0} />
              </th>
              <td>
                <QuantityText value={row.load} kind="force" digits={0} />
              </td>
              <td>
                {row.pressure === null ? (
                  <span className="book">{say('set-up.card.none')}</span>
                ) : (
                  <WorkedOut
                    value={row.pressure}
                    kind="pressure"
                    size="row-small"
                    workings={() => pressureWorkings({ ...base, riderMass: row.riderMass }, row.load)}
                  />
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </SideHead>
  )
}
