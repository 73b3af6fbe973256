/** Everything read at one filling: stop by stop, both ways; each reading can be struck. */
import { type MeasuredEntry, type Pressed, pressHold, say } from '@legwork/trade'
import { SideHead } from '../../../ui/ledger.tsx'
import { useJobView, useNameOf } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'
import { StrikeReading } from './strike-reading.tsx'

/** Read this much too early, the warmth that is left shows as friction. */
const early = 0.75

function Cell({ of }: { of: MeasuredEntry | null }) {
  if (!of) return <td>{say('press.not-read')}</td>
  const held = of.press?.held ?? null
  return (
    <td>
      <StrikeReading of={of} />
      {held !== null && held < early * pressHold && (
        <small className="book">{say('press.early', { seconds: Math.round(held) })}</small>
      )}
    </td>
  )
}

export function PressReadings({ press }: { press: Pressed }) {
  const { instruments, sheet } = useJobView()
  const nameOf = useNameOf()
  const text = useShownText()
  const { filling, temperature, stops } = press
  const gauge = instruments.find((one) => one.id === filling.reading.instrument)
  const scale = instruments.find((one) => one.id === stops[0]?.pressing?.reading.instrument)
  const by = [
    gauge?.name,
    temperature && text(temperature.reading.value, 'K'),
    scale?.name,
    nameOf(filling.person),
  ].filter(Boolean)
  return (
    <SideHead
      place="above"
      title={say('press.readings')}
      note={say('press.readings.note', { pressure: text(filling.reading.value, 'Pa'), by: by.join(', ') })}
    >
      {stops.length > 0 && (
        <table className="press-readings">
          <thead>
            <tr>
              <th scope="col">{say('press.stop')}</th>
              <th scope="col">{say('press.down')}</th>
              <th scope="col">{say('press.up')}</th>
            </tr>
          </thead>
          <tbody>
            {stops.map(({ stroke, pressing, releasing }) => (
              <tr key={stroke}>
                <th scope="row" translate="no">
                  {text(stroke, 'm')}
                </th>
                <Cell of={pressing} />
                <Cell of={releasing} />
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {sheet?.springKind !== 'coil' && (
        <p className="book">
          {say('press.filling')} <StrikeReading of={filling} />
        </p>
      )}
    </SideHead>
  )
}
