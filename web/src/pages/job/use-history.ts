/** What is known of this job's unit from before it came. */
import { type KnownHistory, knownHistory } from '@legwork/trade/faults/known-beforehand.ts'
import { useNow } from '../../offline/hooks.tsx'
import { useJobView } from './job-view.tsx'
import { useLastService } from './use-last-service.ts'

const dayLong = 86_400_000

export function useHistory(): KnownHistory {
  const { state } = useJobView()
  const last = useLastService()
  const now = useNow()
  const days = last ? Math.floor((Date.parse(now) - Date.parse(last.day)) / dayLong) : null
  return knownHistory(state.history, last && days !== null ? { hours: last.hours, days } : null)
}
