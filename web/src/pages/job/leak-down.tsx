/** The leak-down: the air settles, a first reading, a rest, and a second one beside what it should be. */
import { type RestKind, say } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { SideHead, ValueRow } from '../../ui/ledger.tsx'
import { ByWhom } from './by-whom.tsx'
import { pumpsOf, useJobView, useWriting } from './job-view.tsx'
import { useLastUsed } from './last-used.ts'
import { leakOf, leakPair } from './leak-reading.ts'
import { ReadingField, Shown, useShownText } from './readings.tsx'
import { Refused } from './refused.tsx'
import { StillRests } from './still-rests.tsx'

function ReadingForm({ what, expected }: { what: 'leak-down-start' | 'leak-down-end'; expected?: number | undefined }) {
  const { instruments, state } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const pumps = pumpsOf(instruments)
  const began = leakPair(state).start?.reading.instrument
  const [last, setPump] = useLastUsed('pump', pumps, pumps[0]?.id ?? null)
  const pump = what === 'leak-down-end' ? (began ?? last) : last
  const [value, setValue] = useState<number | null>(null)
  const how = what === 'leak-down-start' ? 'pumped' : 'attached'
  const put = async () => {
    if (value === null) return
    const reading = { value, measure: 'Pa', instrument: pump, how } as const
    if (await write('measured', { what, leg: null, phase: 'done', reading })) setValue(null)
  }
  return (
    <>
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
          label={say(`prove.${what}.reading`)}
          hint={
            expected === undefined
              ? say('prove.leak-down.how')
              : say('prove.leak-down.expected', { reading: text(expected, 'Pa') })
          }
          measure="Pa"
          value={value}
          onChange={setValue}
        />
        <Button kind="main" type="submit">
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
  const { start, end } = leakPair(state)
  const restOf = (kind: RestKind) => state.rests.find((one) => one.kind === kind)
  const settle = restOf('settle')
  const leak = restOf('leak')
  const read = instruments.find((one) => one.id === start?.reading.instrument)
  const pump = read?.kind === 'pump' ? read : null
  const asked = { sheet, spacers: state.setUp?.spacers ?? 0, pump, minutes: leak?.over?.minutes ?? 10 }
  const found = start && leakOf({ ...asked, start: start.reading.value, ...(end ? { end: end.reading.value } : {}) })
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
      {start && !end && <ReadingForm what="leak-down-end" expected={found?.expectedReading} />}
      {end && (
        <ValueRow name={<ByWhom made={end} />} note={say('prove.leak-down-end.reading')}>
          <Shown value={end.reading.value} measure="Pa" size="row" hand />
        </ValueRow>
      )}
      {end && found && (
        <p>
          {say('prove.leak-down.expected', { reading: text(found.expectedReading, 'Pa') })}{' '}
          {leak?.over?.minutes === null || leak?.over === undefined
            ? say('prove.leak-down.no-clock')
            : found.significant && found.leak > 0
              ? say('prove.leak-down.lost', {
                  lost: text(found.pressureStart - found.pressureEnd, 'Pa'),
                  minutes: Math.round(leak.over?.minutes ?? 0),
                })
              : say('prove.leak-down.tight', { minutes: Math.round(leak.over?.minutes ?? 0) })}
        </p>
      )}
    </SideHead>
  )
}
