import { say } from '@legwork/trade'
import { useStationStatus } from '../offline/hooks.tsx'

/** Overall: one rule under what is only on this station, two under what is in the shop's book. */
export function KeptOrSent() {
  const { unsent } = useStationStatus()
  return unsent > 0 ? (
    <span className="kept">{say('station.kept', { n: unsent })}</span>
  ) : (
    <span className="sent">{say('station.sent')}</span>
  )
}
