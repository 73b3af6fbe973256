/** The jobs of one visit: fork and shock often come together. From one to the other, and a further one. */
import { type Stream, say } from '@legwork/trade'
import { useJobs, useRegisters } from '../../offline/hooks.tsx'
import { LinkButton } from '../../ui/button.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { useJobView } from './job-view.tsx'

/** Every job of the visit that is here, in the order in which they were opened. */
export function useVisitJobs(visit: string | null) {
  const jobs = useJobs({ visit })
  const { units } = useRegisters()
  return jobs
    .toSorted((one, other) => (one.state.opened?.at ?? '').localeCompare(other.state.opened?.at ?? ''))
    .map((job) => ({ ...job, unit: units.find(({ id }) => id === job.state.opened?.unit) ?? null }))
}

const hrefOf = (stream: Stream): string => `/jobs/${encodeURIComponent(stream)}`

export function VisitJobs() {
  const { state, stream, visit } = useJobView()
  const jobs = useVisitJobs(visit?.id ?? null)
  if (!visit) return null
  const open = !state.handedOver && !state.carriedOver
  if (jobs.length < 2 && !open) return null
  return (
    <SideHead place="above" title={say('visit.jobs', { n: jobs.length })} className="visit-jobs">
      {jobs.map((job) => {
        const here = job.stream === stream
        const inside = (
          <>
            <span translate="no">
              <b>{job.unit?.label}</b> {job.unit?.description}
            </span>
            <small className="book">{here ? say('visit.this-job') : say(`job.state.${job.state.state}`)}</small>
          </>
        )
        return here ? (
          <Row key={job.stream} chosen>
            {inside}
          </Row>
        ) : (
          <Row key={job.stream} href={hrefOf(job.stream)}>
            {inside}
          </Row>
        )
      })}
      {open && (
        <LinkButton kind="second" size="row" href={`/take-in?visit=${visit.id}`}>
          {say('visit.add')}
        </LinkButton>
      )}
    </SideHead>
  )
}
