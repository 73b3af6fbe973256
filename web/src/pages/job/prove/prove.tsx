/** Prove: length and travel by the sheet, next to what was measured as it came in. */
import { say } from '@legwork/trade'
import { useState } from 'react'
import { BottomLine } from '../../../ui/bottom-line.tsx'
import { Button, LinkButton } from '../../../ui/button.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { BenchTest, BenchTests, useBenchTest } from '../bench-tests/bench-tests.tsx'
import { MeasureForm } from '../bench-tests/measure-form.tsx'
import { ByWhom } from '../by-whom.tsx'
import { judgedMeasurements } from '../findings.ts'
import { chapterHref } from '../job-address.ts'
import { useJobView, useWriting } from '../job-view.tsx'
import { ReadWithPick, useReadWith } from '../read-with.tsx'
import { ReadingField, Shown, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { BeforeAfter } from './before-after.tsx'
import { LeakDownTest } from './leak-down.tsx'
import './prove.css'

function FreeLength() {
  const readWith = useReadWith('length', ['tape', 'caliper'])
  const { state, sheet } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const [value, setValue] = useState<number | null>(null)
  const [again, setAgain] = useState(false)
  const wanted = sheet?.freeLength?.value ?? null
  const kept = state.snapshot.length?.reading?.value ?? null
  const done = state.measured.findLast((one) => one.what === 'free-length' && one.phase === 'done')
  const hint =
    wanted !== null
      ? say('prove.length.wanted', { length: text(wanted, 'm'), allowed: text(0.002, 'm') })
      : kept !== null
        ? say('prove.length.wanted-received', { length: text(kept, 'm'), allowed: text(0.002, 'm') })
        : say('prove.length.how')
  return (
    <SideHead place="above" title={say('prove.length')} note={say('prove.length.how')}>
      {done && (
        <ValueRow name={<ByWhom made={done} />}>
          <Shown value={done.reading.value} measure="m" size="row" hand />
        </ValueRow>
      )}
      {done && !again && (
        <Button kind="second" size="row" onPress={() => setAgain(true)}>
          {say('prove.length.again')}
        </Button>
      )}
      <form
        className="keep-line"
        hidden={done !== undefined && !again}
        onSubmit={(event) => {
          event.preventDefault()
          if (value === null) return
          const reading = { value, measure: 'm', instrument: readWith.picked, how: null } as const
          void write('measured', { what: 'free-length', leg: null, phase: 'done', reading }).then((ok) => {
            if (ok) setAgain(false)
          })
        }}
      >
        <ReadingField label={say('prove.length')} hint={hint} measure="m" value={value} onChange={setValue} />
        <ReadWithPick {...readWith} />
        <Button kind="main" type="submit">
          {say('prove.length.act')}
        </Button>
      </form>
      <Refused refusal={refusal} />
    </SideHead>
  )
}

function Travel() {
  const { state, sheet } = useJobView()
  const text = useShownText()
  const step = state.steps.find((one) => one.step === 'travel-air-out' || one.step === 'travel-spring-out')
  const done = step?.done.once ?? null
  return (
    <SideHead place="above" title={say('prove.travel')} note={say('prove.travel.from-work')}>
      {done?.reading ? (
        <ValueRow
          name={<ByWhom made={done} />}
          note={
            sheet ? say('prove.travel.by-sheet', { travel: text(sheet.stroke.value, 'm') }) : say('work.travel-allowed')
          }
        >
          <Shown value={done.reading.value} measure="m" size="row" hand />
        </ValueRow>
      ) : (
        <p className="book">{say('prove.travel.none')}</p>
      )}
    </SideHead>
  )
}

export function Prove() {
  const { state, sheet, instruments, stream } = useJobView()
  const [adding, setAdding] = useState(false)
  const now = judgedMeasurements(state.measured, sheet, instruments, 'done')
  const before = judgedMeasurements(state.measured, sheet, instruments, 'received')
  const test = useBenchTest()
  if (test) return <BenchTest test={test} phase="done" />
  return (
    <>
      <div className="two-columns prove">
        <div>
          <FreeLength />
          <Travel />
          <LeakDownTest />
        </div>
        <div>
          <SideHead
            place="above"
            title={say('prove.compared')}
            note={state.facts.leakDown === 'none' ? say('prove.leak-none') : null}
          >
            <BeforeAfter before={before} after={now} />
            {adding ? (
              <MeasureForm phase="done" onDone={() => setAdding(false)} />
            ) : (
              <Button kind="second" onPress={() => setAdding(true)}>
                {say('prove.add')}
              </Button>
            )}
          </SideHead>
          <BenchTests phase="done" />
        </div>
      </div>
      {(state.chapters.prove.state === 'done' || state.next.chapter === 'set-up') && (
        <BottomLine>
          <LinkButton kind="main" arrow="forward" href={chapterHref(stream, 'set-up')}>
            {say('prove.to-set-up')}
          </LinkButton>
        </BottomLine>
      )}
    </>
  )
}
