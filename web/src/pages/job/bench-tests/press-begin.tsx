/** What is filled before the press, and how warm it is there. */
import { type MeasuredEntry, say } from '@legwork/trade'
import { useState } from 'react'
import { SafetySign } from '../../../marks/safety-sign.tsx'
import { Button } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { pumpsOf, useJobView, useWriting } from '../job-view.tsx'
import { useLastUsed } from '../last-used.ts'
import { ReadWithPick, useReadWith } from '../read-with.tsx'
import { ReadingField, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { trueOf } from './press-asked.ts'
import { pressureTrouble, temperatureTrouble } from './reading-range.ts'

interface PressBeginProps {
  phase: MeasuredEntry['phase']
  /** To press once more at half of the first pressure [Pa]. */
  half: number | null
  minutes: number
  onBegun: () => void
  onLeave: (() => void) | null
}

export function PressBegin({ phase, half, minutes, onBegun, onLeave }: PressBeginProps) {
  const { instruments, sheet } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const pumps = pumpsOf(instruments)
  const [pump, setPump] = useLastUsed('pump', pumps, pumps[0]?.id ?? null)
  const thermometer = useReadWith('temperature', ['thermometer'])
  const [pressure, setPressure] = useState<number | null>(null)
  const [temperature, setTemperature] = useState<number | null>(null)
  const coil = sheet?.springKind === 'coil'
  const wrongPressure = (shown: number) => {
    const trouble = pressureTrouble(shown, text)
    // The sheet's limit is for what is really in there, not for what a gauge makes of it.
    return trouble ?? pressureTrouble(trueOf(shown, pump, instruments), text, { maximum: sheet?.maxPressure?.value })
  }
  const wrongTemperature = (kelvin: number) => temperatureTrouble(kelvin, text)
  const begin = async () => {
    const filled = coil ? 0 : pressure
    if (filled === null || (!coil && wrongPressure(filled))) return
    if (temperature !== null && wrongTemperature(temperature)) return
    const at = { leg: null, phase } as const
    if (temperature !== null) {
      const read = { value: temperature, measure: 'K', instrument: thermometer.picked, how: null } as const
      if (!(await write('measured', { what: 'press-temperature', ...at, reading: read }))) return
    }
    const reading = {
      value: filled,
      measure: 'Pa',
      instrument: coil ? null : pump,
      how: coil ? null : 'pumped',
    } as const
    if (await write('measured', { what: 'press-pressure', ...at, reading })) onBegun()
  }
  return (
    <>
      <header>
        <h1>{say('press.title')}</h1>
        <p className="note">{say('press.not-begun', { minutes })}</p>
        <p>{say('press.begin.note')}</p>
        <p className="book caution">
          <SafetySign sign="warning" size={28} /> <b>{say('work.caution')}</b> {say('press.caution')}
        </p>
      </header>
      <form
        className="press-begin"
        onSubmit={(event) => {
          event.preventDefault()
          void begin()
        }}
      >
        {!coil && pumps.length > 1 && (
          <Choice
            label={say('set-up.setting.pump')}
            options={pumps.map((one) => ({ value: one.id, label: <span translate="no">{one.name}</span> }))}
            value={pump}
            onChange={setPump}
          />
        )}
        {!coil && (
          <ReadingField
            label={say('press.pressure')}
            hint={
              half === null ? say('press.pressure.how') : say('press.pressure.half', { pressure: text(half, 'Pa') })
            }
            measure="Pa"
            value={pressure}
            onChange={setPressure}
            judge={wrongPressure}
          />
        )}
        <ReadingField
          label={say('press.temperature')}
          measure="K"
          value={temperature}
          onChange={setTemperature}
          judge={wrongTemperature}
        />
        <ReadWithPick {...thermometer} />
        <div className="acts">
          {onLeave && (
            <Button kind="second" onPress={onLeave}>
              {say('page.cancel')}
            </Button>
          )}
          <Button kind="main" type="submit">
            {say('press.begin')}
          </Button>
        </div>
        <Refused refusal={refusal} />
      </form>
    </>
  )
}
