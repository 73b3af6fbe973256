/** Returns by clicks: mean, spread, damping, and each reading to be struck where it stands. */
import type { DampingFromReturn } from '@legwork/engine'
import { judgeMeasured, type ReleasedAt, say } from '@legwork/trade'
import { WorkedOut } from '../../../figures/workings.tsx'
import { VerdictMark } from '../../../marks/verdict-mark.tsx'
import { useJobView } from '../job-view.tsx'
import { Shown } from '../readings.tsx'
import { dampingAt, type Worked } from './return-asked.ts'
import type { KnownSetting } from './return-known.ts'
import { dampingWorkings } from './return-workings.tsx'
import { StrikeReading } from './strike-reading.tsx'

const wanted = 3

function Damping({ at, setting, found }: { at: ReleasedAt; setting: KnownSetting; found: Worked<DampingFromReturn> }) {
  if (!found.ok) return <p className="book">{say('return.refused', { because: found.because })}</p>
  const { damping, below } = found.found
  const path = damping === null ? 'below' : 'damping'
  return (
    <p>
      {say(damping === null ? 'return.below' : 'return.damping')}{' '}
      <WorkedOut
        value={damping ?? below}
        kind="damping"
        digits={0}
        workings={() => dampingWorkings(at, setting, path)}
      />
    </p>
  )
}

function Spread({ at }: { at: ReleasedAt }) {
  const { sheet } = useJobView()
  const missing = wanted - at.readings.length
  if (missing > 0) return <p className="book">{say('return.spread.more', { n: missing })}</p>
  if (at.spread === null) return null
  const { verdict } = judgeMeasured('repeat-spread', at.spread, sheet)
  return (
    <p className="verdict">
      <VerdictMark verdict={verdict} /> {say('return.spread', { spread: `${Math.round(at.spread * 100)} %` })},{' '}
      {say(`verdict.${verdict}`)}
    </p>
  )
}

export function ReturnSettings({ all, setting }: { all: readonly ReleasedAt[]; setting: KnownSetting | null }) {
  if (all.length === 0) return <p className="book">{say('return.none')}</p>
  return (
    <ol className="return-settings">
      {all.map((at) => (
        <li key={`${at.clicks} ${at.from} ${at.to}`}>
          <b>{at.clicks === null ? say('return.no-clicks') : say('return.at-clicks', { n: at.clicks })}</b>
          <p>
            <Shown value={at.time} measure="s" size="row" hand digits={3} />
          </p>
          <div>
            <Spread at={at} />
            {setting && <Damping at={at} setting={setting} found={dampingAt(at, setting)} />}
          </div>
          <p className="repeats">
            {at.readings.map((one) => (
              <StrikeReading key={one.entry} of={one} />
            ))}
          </p>
        </li>
      ))}
    </ol>
  )
}
