/** What a finished leak-down says: what it should have shown, what was really in it, the share that was lost, judged. */
import type { LeakDown } from '@legwork/engine'
import { judgeMeasured, say } from '@legwork/trade'
import { LimitStrip } from '../../../charts/limit-strip.tsx'
import { WorkedOut, type Workings } from '../../../figures/workings.tsx'
import { VerdictMark } from '../../../marks/verdict-mark.tsx'
import { ValueRow } from '../../../ui/ledger.tsx'
import { stripOf } from '../bench-tests/strip-of.ts'
import { useJobView } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'
import type { Pump } from '../step-figure.ts'
import { LeakCurve } from './leak-curve.tsx'
import { gaugeStep, leakShare } from './leak-reading.ts'

interface LeakFoundProps {
  found: LeakDown
  /** How long it rested; null where no clock was running. */
  minutes: number | null
  pump: Pump | null
  /** As the gauge showed them [Pa]. */
  read: { start: number; end: number }
  should: () => Workings
  inside: () => Workings
}

const percent = (share: number): string => (share * 100).toFixed(1)

/** The share of its pressure that it lost, against the limit for that rest. */
function Lost({ found, minutes, pump }: Pick<LeakFoundProps, 'found' | 'minutes' | 'pump'>) {
  const { sheet } = useJobView()
  const text = useShownText()
  const lost = minutes === null ? null : leakShare(found, minutes, pump)
  if (!lost) return null
  const finding = judgeMeasured(lost.what, lost.share, sheet, lost.halfWidth)
  const strip = stripOf(lost.share, finding.zones, lost.halfWidth)
  return (
    <div className="leak-lost">
      <LimitStrip
        {...strip}
        format={percent}
        label={say('look.strip', {
          reading: `${percent(lost.share)} %`,
          verdict: say(`verdict.${finding.verdict}`),
          limits: strip.limits.map(percent).join(', '),
        })}
      />
      <p className="verdict">
        <VerdictMark verdict={finding.verdict} /> {say(`verdict.${finding.verdict}`)}:{' '}
        {say('prove.leak-down.share', { percent: percent(lost.share) })}
      </p>
      {finding.verdict === 'cannot-tell' && pump && (
        <p className="book">{say('prove.leak-down.cannot', { step: text(pump.resolution, 'Pa') })}</p>
      )}
    </div>
  )
}

export function LeakFound({ found, minutes, pump, read, should, inside }: LeakFoundProps) {
  const text = useShownText()
  const rested = Math.round(minutes ?? 0)
  return (
    <>
      <ValueRow name={<b>{say('prove.leak-down.should')}</b>}>
        <WorkedOut value={found.expectedReading} kind="pressure" size="row" workings={should} />
      </ValueRow>
      <ValueRow name={say('prove.leak-down.inside')} note={say('prove.leak-down.inside.note')}>
        <WorkedOut value={found.pressureEnd} kind="pressure" digits={1} size="row" workings={inside} />
      </ValueRow>
      <p>
        {minutes === null
          ? say('prove.leak-down.no-clock')
          : found.significant && found.leak > 0
            ? say('prove.leak-down.lost', {
                lost: text(found.pressureStart - found.pressureEnd, 'Pa'),
                minutes: rested,
              })
            : say('prove.leak-down.tight', { minutes: rested })}
      </p>
      <Lost found={found} minutes={minutes} pump={pump} />
      {minutes !== null && minutes > 0 && (
        <LeakCurve found={found} {...read} minutes={minutes} resolution={pump?.resolution ?? gaugeStep} />
      )}
    </>
  )
}
