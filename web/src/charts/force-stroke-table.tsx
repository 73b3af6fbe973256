/** The table behind the curves. */
import { say } from '@legwork/trade'
import { QuantityText } from '../figures/quantity-text.tsx'
import { curveRows } from './curve-rows.ts'
import type { Curve } from './force-stroke-geometry.ts'

function Force({ value }: { value: number | null }) {
  return (
    <td>{value === null ? <span translate="no">–</span> : <QuantityText value={value} kind="force" digits={0} />}</td>
  )
}

export function ForceStrokeTable({ slow, fast, before }: { slow: Curve; fast: Curve; before: Curve | null }) {
  return (
    <table>
      <caption className="book">{say('set-up.chart')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('set-up.chart.stroke')}</th>
          <th scope="col">{say('set-up.chart.slow')}</th>
          <th scope="col">{say('set-up.chart.fast')}</th>
          {before && <th scope="col">{say('set-up.chart.before')}</th>}
        </tr>
      </thead>
      <tbody>
        {curveRows(slow, fast, before).map((row) => (
          <tr key={row.stroke}>
            <th scope="row">
              <QuantityText value={row.stroke} kind="length" />
            </th>
            <Force value={row.slow} />
            <Force value={row.fast} />
            {before && <Force value={row.before} />}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
