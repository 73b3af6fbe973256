/** Look over: the chassis first, what was measured, signs, what was before; beside it what it could be. */
import { say } from '@legwork/trade'
import { useState } from 'react'
import { BottomLine } from '../../../ui/bottom-line.tsx'
import { Button, LinkButton } from '../../../ui/button.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { BenchTest, BenchTests, useBenchTest } from '../bench-tests/bench-tests.tsx'
import { MeasureForm } from '../bench-tests/measure-form.tsx'
import { judgedMeasurements } from '../findings.ts'
import { chapterHref } from '../job-address.ts'
import { useJobView } from '../job-view.tsx'
import { Chassis, ChassisSound } from './chassis.tsx'
import { FaultRanking } from './fault-ranking.tsx'
import { History } from './history.tsx'
import { MeasuredRows } from './measured-rows.tsx'
import { Signs } from './signs.tsx'
import '../job-words.ts'

function Measured({ adding, onDone }: { adding: boolean; onDone: () => void }) {
  const { state, sheet, instruments } = useJobView()
  const judged = judgedMeasurements(state.measured, sheet, instruments, 'received')
  const bySheet = judged.some((one) => one.finding.source?.kind === 'makers-sheet')
  const sound = state.chapters['look-over'].state === 'done'
  const source =
    bySheet && sheet
      ? say('look.limits.sheet', { name: sheet.name, revision: sheet.revision })
      : say('look.limits.practice')
  return (
    <SideHead
      place="above"
      title={say('look.measured')}
      note={judged.length > 0 && say('look.measured.limits', { source })}
      className="measured-head"
    >
      {adding && <MeasureForm phase="received" onDone={onDone} />}
      <MeasuredRows judged={judged} none={say('look.measured.none-yet')}>
        {sound && <ChassisSound />}
      </MeasuredRows>
    </SideHead>
  )
}

export function LookOver() {
  const { state, stream } = useJobView()
  const [adding, setAdding] = useState(false)
  const sound = state.chapters['look-over'].state === 'done'
  const test = useBenchTest()
  if (test) return <BenchTest test={test} phase="received" />
  return (
    <>
      <div className="two-columns look-over">
        <div>
          {!sound && <Chassis />}
          {(sound || state.measured.length > 0) && <Measured adding={adding} onDone={() => setAdding(false)} />}
          {sound && <BenchTests phase="received" />}
          <Signs />
          <History />
        </div>
        <div>
          <FaultRanking />
        </div>
      </div>
      {sound && !adding && (
        <BottomLine>
          <Button kind="second" onPress={() => setAdding(true)}>
            {say('look.add')}
          </Button>
          <LinkButton kind="main" arrow="forward" href={chapterHref(stream, 'plan')}>
            {say('look.to-plan')}
          </LinkButton>
        </BottomLine>
      )}
    </>
  )
}
