/** What is proposed for this job as its book stands. */
import { judgedMeasurements } from '../findings.ts'
import { useJobView } from '../job-view.tsx'
import { useHistory } from '../use-history.ts'
import { useLastService } from '../use-last-service.ts'
import { type Proposal, proposals } from './proposed.ts'
import '../job-words.ts'

export function useProposals(): readonly Proposal[] {
  const { state, sheet, instruments, text } = useJobView()
  const last = useLastService()
  const known = useHistory()
  if (!sheet) return []
  const asked = state.opened?.asked ? text(state.opened.asked) : null
  const judged = judgedMeasurements(state.measured, sheet, instruments, 'received')
  return proposals({ state, sheet, judged, asked, last, known })
}
