import { useMemo } from 'react'
import { useJobs } from '../../../offline/hooks.tsx'
import { useJobView } from '../job-view.tsx'
import { type LastVisit, lastVisitOf } from './last-visit.ts'

/** As this job's unit left the last time; null where no such job is here. */
export function useLastVisit(): LastVisit | null {
  const { stream, unit } = useJobView()
  const jobs = useJobs({ unit: unit?.id ?? null })
  return useMemo(() => lastVisitOf(jobs, stream), [jobs, stream])
}
