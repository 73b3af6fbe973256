/** The leak-down: the air settles, a first reading, a rest, and a second one beside what it should be. */
import { type RestKind, say } from '@legwork/trade'
import { useState } from 'react'
import { WorkedOut, type Workings } from '../../../figures/workings.tsx'
import { Button } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { pressureTrouble, temperatureTrouble } from '../bench-tests/reading-range.ts'
import { ByWhom } from '../by-whom.tsx'
import { pumpsOf, useJobView, useWriting } from '../job-view.tsx'
import { useLastUsed } from '../last-used.ts'
import { ReadWithPick, useReadWith } from '../read-with.tsx'
import { ReadingField, Shown, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { StillRests } from '../still-rests.tsx'
import { LeakFound } from './leak-found.tsx'
import { benchTemperature, leakOf, leakPair, leakQuestion } from './leak-reading.ts'
import { insideWorkings, leakWorkings } from './leak-workings.tsx'

interface ReadingFormProps {
  what: 'leak-down-start' | 'leak-down-end'
  /** What it should show at this temperature; nothing for the first reading. */
  expectedAt?: (temperature: number | null) => { reading: number; workings: () => Workings } | null
}

function ReadingForm({ what, expectedAt }: ReadingFormProps) {
  const { instruments, state } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const pumps = pumpsOf(instruments)
  const began = leakPair(state).start?.reading.instrument
  const [last, setPump] = useLastUsed('pump', pumps, pumps[0]?.id ?? null)
  const pump = what === 'leak-down-end' ? (began ?? last) : last
  const thermometer = useReadWith('temperature', ['thermometer'])
  const [value, setValue] = useState<number | null>(null)
  const [temperature, setTemperature] = useState<number | null>(null)
  const expected = expectedAt?.(temperature) ?? null
  const how = what === 'leak-down-start' ? 'pumped' : 'attached'
  const wrongPressure = (pascal: number) => pressureTrouble(pascal, text, { empty: what === 'leak-down-end' })
  const wrongTemperature = (kelvin: number) => temperatureTrouble(kelvin, text)
  const put = async () => {
    if (value === null || wrongPressure(value) || (temperature !== null && wrongTemperature(temperature))) return
    const reading = { value, measure: 'Pa', instrument: pump, how } as const
    if (temperature !== null) {
      const read = { value: temperature, measure: 'K', instrument: thermometer.picked, how: null } as const
      if (!(await write('measured', { what: `${what}-temperature`, leg: null, phase: 'done', reading: read }))) return
    }
    if (await write('measured', { what, leg: null, phase: 'done', reading })) setValue(null)
  }
  return (
    <>
      {expected !== null && (
        <ValueRow name={<b>{say('prove.leak-down.should')}</b>} note={say('prove.leak-down.should.note')}>
          <WorkedOut value={expected.reading} kind="pressure" size="row-large" workings={expected.workings} />
        </ValueRow>
      )}
      <form
        className="keep-line"
        onSubmit={(event) => {
          event.preventDefault()
          void put()
        }}
      >
        {what === 'leak-down-start' && pumps.length > 1 && (
          <Choice
            label={say('set-up.setting.pump')}
            options={pumps.map((one) => ({ value: one.id, label: <span translate="no">{one.name}</span> }))}
            value={pump}
            onChange={setPump}
          />
        )}
        <ReadingField
          label={say('prove.leak-down.temperature')}
          hint={say('prove.leak-down.temperature.how', { bench: text(benchTemperature, 'K') })}
          measure="K"
          value={temperature}
          onChange={setTemperature}
          judge={wrongTemperature}
        />
        <ReadWithPick {...thermometer} />
        <ReadingField
          label={say(`prove.${what}.reading`)}
          hint={
            expected === null
              ? say('prove.leak-down.how')
              : say('prove.leak-down.expected', { reading: text(expected.reading, 'Pa') })
          }
          measure="Pa"
          value={value}
          onChange={setValue}
          judge={wrongPressure}
        />
        <Button kind="second" type="submit">
          {say(`prove.${what}.act`)}
        </Button>
      </form>
      <Refused refusal={refusal} />
    </>
  )
}

export function LeakDownTest() {
  const { state, sheet, instruments } = useJobView()
  const text = useShownText()
  const { start, end, startTemperature, endTemperature } = leakPair(state)
  const restOf = (kind: RestKind) => state.rests.find((one) => one.kind === kind)
  const settle = restOf('settle')
  const leak = restOf('leak')
  const read = instruments.find((one) => one.id === start?.reading.instrument)
  const pump = read?.kind === 'pump' ? read : null
  const asked = {
    sheet,
    spacers: state.setting?.spacers ?? state.setUp?.spacers ?? sheet?.spacers?.value ?? 0,
    pump,
    minutes: leak?.over?.minutes ?? 10,
  }
  const from = startTemperature?.reading.value ?? null
  const readAt = (temperature: number | null, reading?: number) =>
    start &&
    leakOf({
      ...asked,
      start: start.reading.value,
      startTemperature: from,
      endTemperature: temperature,
      ...(reading === undefined ? {} : { end: reading }),
    })
  const expectedAt = (temperature: number | null) => {
    const put =
      start &&
      leakQuestion({ ...asked, start: start.reading.value, startTemperature: from, endTemperature: temperature })
    const reading = readAt(temperature)?.expectedReading
    return put && reading !== undefined ? { reading, workings: () => leakWorkings(put, pump) } : null
  }
  const readAgain = end && { ...asked, end: end.reading.value, endTemperature: endTemperature?.reading.value ?? null }
  const put =
    start && readAgain ? leakQuestion({ ...readAgain, start: start.reading.value, startTemperature: from }) : null
  const found = end && readAt(endTemperature?.reading.value ?? null, end.reading.value)
  const atStart = readAt(from)
  const isAsked = start && leakQuestion({ ...asked, start: start.reading.value, startTemperature: from })
  const isRefused = isAsked && !(end ? found : atStart)
  const taken = start ? start.reading.value - (atStart?.expectedReading ?? start.reading.value) : null
  if (state.facts.fill === 'none' && !start) return null
  return (
    <SideHead place="above" title={say('prove.leak-down')} note={say('prove.leak-down.note')}>
      {!start && settle && <StillRests rest={settle} />}
      {!start && <ReadingForm what="leak-down-start" />}
      {start && (
        <ValueRow name={<ByWhom made={start} />} note={say('prove.leak-down-start.reading')}>
          <Shown value={start.reading.value} measure="Pa" size="row" hand />
        </ValueRow>
      )}
      {start && !end && leak && <StillRests rest={leak} />}
      {start && !end && taken !== null && (
        <p className="book">{say('prove.leak-down.hose', { loss: text(taken, 'Pa') })}</p>
      )}
      {start && !end && <ReadingForm what="leak-down-end" expectedAt={expectedAt} />}
      {end && (
        <ValueRow name={<ByWhom made={end} />} note={say('prove.leak-down-end.reading')}>
          <Shown value={end.reading.value} measure="Pa" size="row" hand />
        </ValueRow>
      )}
      {isRefused && <p className="refusal">{say('bench-test.leak-refused')}</p>}
      {start && end && found && put && (
        <LeakFound
          found={found}
          minutes={leak?.over?.minutes ?? null}
          pump={pump}
          read={{ start: start.reading.value, end: end.reading.value }}
          should={() => leakWorkings(put, pump)}
          inside={() => insideWorkings(put, pump)}
        />
      )}
    </SideHead>
  )
}
