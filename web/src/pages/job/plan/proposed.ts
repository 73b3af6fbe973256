/** Services proposed for a unit, each with its reasons: what was found, measured, ridden, asked for. */
import {
  type Interval,
  intervals,
  type JobState,
  type Message,
  message,
  type ServiceId,
  type Sheet,
  servicesFor,
} from '@legwork/trade'
import type { KnownHistory } from '@legwork/trade/faults/known-beforehand.ts'
import type { SignId } from '@legwork/trade/faults/signs.ts'
import { isSignId } from '@legwork/trade/faults/signs-of.ts'
import { day } from '../../../figures/moment.ts'
import type { LastService } from '../../last-service.ts'
import type { JudgedMeasurement, Measurable } from '../findings.ts'

export interface Proposal {
  service: ServiceId
  /** The strongest first; never empty. */
  reasons: readonly Message[]
  /** Ticked from the start. */
  wanted: boolean
}

interface Answers {
  /** Signs that the service answers for. */
  signs: readonly SignId[]
  /** Measurements that it mends where they are watched or fail. */
  measured: readonly Measurable[]
}

/** What speaks for a service (common practice, no source). */
const answersTo: Readonly<Record<ServiceId, Answers>> = {
  'lower-legs': { signs: ['S05', 'S06', 'S16', 'S17'], measured: ['friction', 'breakaway', 'clearance'] },
  'air-spring': { signs: ['S01', 'S02', 'S03', 'S04'], measured: ['short-of-length', 'leak-24-h'] },
}

export interface ProposedFrom {
  state: JobState
  sheet: Sheet
  judged: readonly JudgedMeasurement[]
  /** In the rider's words. */
  asked: string | null
  last: LastService | null
  known: KnownHistory
}

/** Hours since the last service against what it lasts; nothing where they are within it. */
function hoursReason({ last, known }: ProposedFrom, { low, high }: Interval): readonly Message[] {
  const hours = known['hours-since']
  if (hours?.from === 'said') {
    const said = Math.round(hours.value)
    return hours.value >= low ? [message('agree.because.hours-said', { hours: said, low, high })] : []
  }
  if (!last) return []
  if (last.hours === null) return [message('agree.because.since', { day: day(last.day), low, high })]
  return [message('agree.because.hours', { hours: Math.round(last.hours), day: day(last.day), low, high })]
}

function found({ state, judged }: ProposedFrom, service: ServiceId): readonly Message[] {
  const { signs, measured } = answersTo[service]
  const there = signs.filter((sign) => state.signs.findLast((one) => one.sign === sign)?.state === 'present')
  const bad = judged.filter(
    ({ what, finding }) => measured.includes(what) && (finding.verdict === 'fail' || finding.verdict === 'watch'),
  )
  return [
    ...there.filter(isSignId).map((sign) => message('agree.because.sign', { sign: message(`look.sign.${sign}`) })),
    ...bad.map(({ what, finding }) =>
      message('agree.because.finding', {
        what: message(`measure.${what}`),
        verdict: message(`verdict.${finding.verdict}`),
      }),
    ),
  ]
}

/**
 * What is proposed: the lower legs always, because bath oil wears with hours; the air spring where something speaks for it.
 */
export function proposals(from: ProposedFrom): readonly Proposal[] {
  const { asked, sheet } = from
  return servicesFor(sheet).map((service) => {
    const seen = found(from, service)
    if (service === 'air-spring')
      return {
        service,
        reasons: seen.length > 0 ? seen : [message('agree.because.spring')],
        wanted: seen.length > 0,
      }
    const reasons = [
      ...seen,
      ...hoursReason(from, intervals['lower-legs']),
      ...(asked ? [message('agree.because.asked', { words: asked })] : []),
    ]
    return {
      service,
      reasons: reasons.length > 0 ? reasons : [message('agree.because.interval', intervals['lower-legs'])],
      wanted: true,
    }
  })
}
