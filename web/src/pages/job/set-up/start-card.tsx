/** The unit came alone: no rider to work it out for, so a pressure for each mass. */
import { Refusal, standardAir } from '@legwork/engine'
import { type CardRow, cardRows, middleShare, type Sheet, say, targetSag, usualBike } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { QuantityInput } from '../../../figures/quantity-input.tsx'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { Button, LinkButton } from '../../../ui/button.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { ByWhom } from '../by-whom.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { type StartInputs, workedOut } from '../start-pressure.ts'
import { cardBikeJudges, heldBike } from './card-bike.ts'
import { loadWorkings, pressureWorkings } from './set-up-workings.tsx'
import { bench } from './what-if.ts'

interface CardLineProps {
  row: CardRow
  base: Omit<StartInputs, 'riderMass'>
  onFill: (inputs: StartInputs, pressure: number) => void
}

function CardLine({ row, base, onFill }: CardLineProps) {
  const { riderMass, load, pressure } = row
  const inputs: StartInputs = { ...base, riderMass }
  const text = useShownText()
  return (
    <tr>
      <th scope="row">
        <QuantityText value={riderMass} kind="mass" digits={0} />
      </th>
      <td>
        <WorkedOut value={load} kind="force" digits={0} workings={() => loadWorkings(inputs, 'standing', 'load')} />
      </td>
      <td>
        {pressure === null ? (
          <span className="book">{say('set-up.card.none')}</span>
        ) : (
          <WorkedOut
            value={pressure}
            kind="pressure"
            size="row-small"
            workings={() => pressureWorkings(inputs, load)}
          />
        )}
      </td>
      <td>
        {pressure !== null && (
          <Button
            kind="second"
            size="row"
            name={say('set-up.card.fill-name', { pressure: text(pressure, 'Pa') })}
            onPress={() => onFill(inputs, pressure)}
          >
            {say('set-up.card.fill')}
          </Button>
        )}
      </td>
    </tr>
  )
}

function Rows({ base, onFill }: Omit<CardLineProps, 'row'>) {
  const { sent, paperHref } = useJobView()
  const { headAngle, frontMass, sag } = base
  const rows = useMemo(() => cardRows(base), [base])
  return (
    <>
      <table className="card-table">
        <thead>
          <tr>
            <th scope="col">{say('set-up.card.mass')}</th>
            <th scope="col">{say('set-up.card.load')}</th>
            <th scope="col">{say('set-up.card.pressure')}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <CardLine key={row.riderMass} row={row} base={base} onFill={onFill} />
          ))}
        </tbody>
      </table>
      {sent ? (
        <div className="acts">
          <LinkButton kind="second" size="row" href={paperHref('start-card.pdf', { headAngle, frontMass, sag })}>
            {say('set-up.card.pdf')}
          </LinkButton>
        </div>
      ) : (
        <p className="book">{say('hand.papers.offline')}</p>
      )}
    </>
  )
}

export function StartCard({ sheet }: { sheet: Sheet }) {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const wanted = targetSag(sheet)
  const [headAngle, setHeadAngle] = useState<number | null>(usualBike.headAngle)
  const [frontMass, setFrontMass] = useState<number | null>(usualBike.frontMass)
  const [sag, setSag] = useState<number | null>(0.2)
  const [trouble, setTrouble] = useState<string | null>(null)
  const frontShare = middleShare('standing')
  const base = useMemo((): Omit<StartInputs, 'riderMass'> | null => {
    const bike = heldBike({ headAngle, frontMass, sag })
    return bike && { ...bike, sheet, spacers: sheet.spacers?.value ?? 0, frontShare, ambient: standardAir(0).ambient }
  }, [sheet, frontShare, frontMass, headAngle, sag])
  const percent = (share: number) => Math.round(share * 100)
  const fill = (inputs: StartInputs, pressure: number) => {
    const { riderMass, frontShare: share, sag: wantedSag, ambient, spacers } = inputs
    const worked = workedOut(inputs)
    setTrouble(worked instanceof Refusal ? worked.message : null)
    if (worked instanceof Refusal) return
    const { band, load } = worked
    void write('set-up-worked-out', {
      pressure,
      band,
      temperature: bench.temperature,
      ambient,
      riderMass,
      frontShare: share,
      sag: wantedSag,
      load,
      spacers,
    })
  }
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
          judge={cardBikeJudges.headAngle}
          required
        />
        <QuantityInput
          label={say('set-up.row.front-mass')}
          kind="mass"
          value={frontMass}
          onChange={setFrontMass}
          judge={cardBikeJudges.frontMass}
          required
        />
        <QuantityInput
          label={say('set-up.sag-wanted')}
          kind="fraction"
          value={sag}
          onChange={setSag}
          hint={say('set-up.wanted', { low: percent(wanted.low), high: percent(wanted.high) })}
          judge={cardBikeJudges.sag}
          required
        />
      </div>
      <p className="book">{say('set-up.card.assumes')}</p>
      {base ? <Rows base={base} onFill={fill} /> : <p className="book">{say('set-up.card.waits')}</p>}
      {trouble !== null && (
        <p className="refusal" role="alert" translate="no">
          {trouble}
        </p>
      )}
      <Refused refusal={refusal} />
      {state.setUp && (
        <p className="written">
          {say('set-up.written', { pressure: text(state.setUp.pressure, 'Pa') })} <ByWhom made={state.setUp} />
        </p>
      )}
    </SideHead>
  )
}
