/** Services proposed for a unit, each with its reason. */
import {
  intervals,
  type JobState,
  type Message,
  message,
  type ServiceId,
  type Sheet,
  servicesFor,
} from '@legwork/trade'
import type { SignId } from '@legwork/trade/faults/signs.ts'
import { isSignId } from '@legwork/trade/faults/signs-of.ts'
import { day } from '../../figures/moment.ts'
import type { LastService } from '../last-service.ts'
import type { JudgedMeasurement } from './findings.ts'

export interface Proposal {
  service: ServiceId
  reason: Message
  /** Ticked from the start. */
  wanted: boolean
}

/** Signs that the bath and the wipers answer for. */
const ofLowerLegs: readonly SignId[] = ['S06', 'S16', 'S17']

/**
 * What is proposed: the lower legs always, because bath oil wears with hours, with the strongest reason there is; the air
 * spring where the unit sits short of full length.
 */
export function proposals(
  state: JobState,
  sheet: Sheet,
  judged: readonly JudgedMeasurement[],
  asked: string | null,
  last: LastService | null = null,
): readonly Proposal[] {
  const there = state.signs.filter((sign) => sign.state === 'present').map((sign) => sign.sign)
  const sign = there.filter(isSignId).find((one) => ofLowerLegs.includes(one))
  const bad = judged.find((one) => one.finding.verdict === 'fail' || one.finding.verdict === 'watch')
  const reasons: Readonly<Record<ServiceId, Message>> = {
    'lower-legs': sign
      ? message('agree.because.sign', { sign: message(`look.sign.${sign}`) })
      : bad
        ? message('agree.because.finding', {
            what: message(`measure.${bad.what}`),
            verdict: message(`verdict.${bad.finding.verdict}`),
          })
        : last
          ? last.hours === null
            ? message('agree.because.since', { day: day(last.day), ...intervals['lower-legs'] })
            : message('agree.because.hours', {
                hours: Math.round(last.hours),
                day: day(last.day),
                ...intervals['lower-legs'],
              })
          : asked
            ? message('agree.because.asked', { words: asked })
            : message('agree.because.interval', intervals['lower-legs']),
    'air-spring': there.includes('S03')
      ? message('agree.because.sign', { sign: message('look.sign.S03') })
      : message('agree.because.spring'),
  }
  return servicesFor(sheet).map((service) => ({
    service,
    reason: reasons[service],
    wanted: service === 'lower-legs' || there.includes('S03'),
  }))
}
