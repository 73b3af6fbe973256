/** Look over: the chassis first, signs, measurements judged. */
import { say } from '@legwork/trade'
import { useState } from 'react'
import { Button, LinkButton } from '../../ui/button.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { Chassis } from './chassis.tsx'
import { FaultRanking } from './fault-ranking.tsx'
import { judgedMeasurements } from './findings.ts'
import { chapterHref } from './job-address.ts'
import { useJobView } from './job-view.tsx'
import { MeasureForm } from './measure-form.tsx'
import { MeasuredRows } from './measured-rows.tsx'
import { Signs } from './signs.tsx'

export function LookOver() {
  const { state, sheet, instruments, stream } = useJobView()
  const [adding, setAdding] = useState(false)
  const judged = judgedMeasurements(state.measured, sheet, instruments, 'received')
  const limits = judged.some((one) => one.finding.source?.kind === 'makers-sheet')
  const chassisDone = state.chapters['look-over'].state === 'done'
  return (
    <div className="two-columns look-over">
      <div>
        <Chassis />
        <Signs />
        <SideHead
          place="above"
          title={say('look.measured')}
          note={say('look.measured.limits', {
            source:
              limits && sheet
                ? say('look.limits.sheet', { name: sheet.name, revision: sheet.revision })
                : say('look.limits.practice'),
          })}
        >
          <MeasuredRows judged={judged} />
          {adding ? (
            <MeasureForm phase="received" onDone={() => setAdding(false)} />
          ) : (
            <Button kind="second" onPress={() => setAdding(true)}>
              {say('look.add')}
            </Button>
          )}
        </SideHead>
      </div>
      <div>
        <FaultRanking />
        {chassisDone && (
          <div className="bottom">
            <LinkButton kind="main" arrow="forward" href={chapterHref(stream, 'plan')}>
              {say('look.to-plan')}
            </LinkButton>
          </div>
        )}
      </div>
    </div>
  )
}
