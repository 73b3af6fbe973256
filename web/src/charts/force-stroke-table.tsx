/** The table behind the curves, and the readings that stand on them. */
import { say } from '@legwork/trade'
import { QuantityText } from '../figures/quantity-text.tsx'
import { curveRows } from './curve-rows.ts'
import type { Curve } from './force-stroke-geometry.ts'
import type { ForceReading } from './force-stroke-props.ts'

function Force({ value }: { value: number | null }) {
  return (
    <td>{value === null ? <span translate="no">–</span> : <QuantityText value={value} kind="force" digits={0} />}</td>
  )
}

interface ForceStrokeTableProps {
  slow: Curve
  fast: Curve
  before: Curve | null
  lastVisit: Curve | null
  readings: readonly ForceReading[]
}

export function ForceStrokeTable({ slow, fast, before, lastVisit, readings }: ForceStrokeTableProps) {
  return (
    <>
      <table>
        <caption className="book">{say('set-up.chart')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('set-up.chart.stroke')}</th>
            <th scope="col">{say('set-up.chart.slow')}</th>
            <th scope="col">{say('set-up.chart.fast')}</th>
            {before && <th scope="col">{say('set-up.chart.before')}</th>}
            {lastVisit && <th scope="col">{say('set-up.chart.last-visit')}</th>}
          </tr>
        </thead>
        <tbody>
          {curveRows(slow, fast, before, lastVisit).map((row) => (
            <tr key={row.stroke}>
              <th scope="row">
                <QuantityText value={row.stroke} kind="length" />
              </th>
              <Force value={row.slow} />
              <Force value={row.fast} />
              {before && <Force value={row.before} />}
              {lastVisit && <Force value={row.lastVisit} />}
            </tr>
          ))}
        </tbody>
      </table>
      {readings.length > 0 && <Readings readings={readings} />}
    </>
  )
}

function Readings({ readings }: { readings: readonly ForceReading[] }) {
  return (
    <table>
      <caption className="book">{say('set-up.chart.readings')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('set-up.chart.stroke')}</th>
          <th scope="col">{say('set-up.chart.way')}</th>
          <th scope="col">{say('set-up.chart.when')}</th>
          <th scope="col">{say('cutaway.force')}</th>
        </tr>
      </thead>
      <tbody>
        {readings.map(({ stroke, force, way, when }) => (
          <tr key={`${when}${way}${stroke}`}>
            <th scope="row">
              <QuantityText value={stroke} kind="length" digits={1} />
            </th>
            <td>{say(`set-up.chart.${way}`)}</td>
            <td>{when === 'today' ? say('set-up.chart.today') : say('set-up.last-visit')}</td>
            <Force value={force} />
          </tr>
        ))}
      </tbody>
    </table>
  )
}
