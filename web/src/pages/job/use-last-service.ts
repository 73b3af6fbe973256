/** The last service of this job's unit, before this job. */
import { useJobs, useNow } from '../../offline/hooks.tsx'
import { type LastService, lastService } from '../last-service.ts'
import { useJobView } from './job-view.tsx'

export function useLastService(): LastService | null {
  const { stream, unit, rider } = useJobView()
  const others = useJobs({ unit: unit?.id ?? null }).filter((job) => job.stream !== stream)
  return lastService(others, unit?.id ?? null, rider?.hoursPerWeek ?? null, useNow())
}
