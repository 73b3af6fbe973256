import type { SearchHit } from '@legwork/contract'
import { say } from '@legwork/trade'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { api } from '../../api/client.ts'
import { useJobs, useRegisters, useStation } from '../../offline/hooks.tsx'
import { TextField } from '../../ui/field.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { foundHere, type KnownJob, withMore } from './found-here.ts'
import './search.css'

const hrefOf = ({ kind, id }: SearchHit): string => {
  if (kind === 'unit') return `/units/${id}`
  if (kind === 'rider') return `/riders/${id}`
  return `/jobs/${encodeURIComponent(id.startsWith('job:') ? id : `job:${id}`)}`
}

function useKnownJobs(): readonly KnownJob[] {
  const { memory } = useStation().store
  const { units, riders } = useRegisters()
  return useJobs().flatMap(({ stream, state: { opened } }) =>
    opened
      ? [
          {
            stream,
            number: memory.jobNumber(stream),
            unit: units.find(({ id }) => id === opened.unit),
            rider: riders.find(({ id }) => id === opened.rider),
            asked: opened.asked ? (memory.texts.get(opened.asked)?.text ?? null) : null,
          },
        ]
      : [],
  )
}

/** What this station knows stands there with each letter; the server's book adds what it finds beside that. */
export function SearchPage() {
  const { workshop } = useStation()
  const { units, riders } = useRegisters()
  const jobs = useKnownJobs()
  const [words, setWords] = useState('')
  const asked = words.trim()
  const found = useQuery({
    queryKey: ['search', workshop, asked],
    queryFn: ({ signal }) => api.search(workshop, asked, signal),
    enabled: asked.length > 0,
    retry: false,
    networkMode: 'always',
  })
  const hits = withMore(foundHere(asked, { units, riders, jobs }), found.data?.hits ?? [])
  return (
    <ShopFrame place={null} title={say('place.search')}>
      <h1>{say('place.search')}</h1>
      <TextField
        label={say('search.words')}
        hint={say('search.hint')}
        value={words}
        onChange={setWords}
        inputMode="search"
        autoFocus
      />
      <div role="status" className="search-says">
        {asked !== '' && hits.length > 0 && <p className="book">{say('search.found', { n: hits.length })}</p>}
        {asked !== '' && hits.length === 0 && !found.isFetching && <p className="empty">{say('search.none')}</p>}
        {found.isError && <p className="book">{say('search.offline')}</p>}
      </div>
      {(['unit', 'rider', 'job'] as const).map((kind) => {
        const these = hits.filter((hit) => hit.kind === kind)
        return (
          these.length > 0 && (
            <SideHead key={kind} title={say(`search.${kind}s`)}>
              {these.map((hit) => (
                <Row key={hit.id} href={hrefOf(hit)} className="hit-row">
                  <b translate="no">{hit.title}</b>
                  <span translate="no">{hit.detail}</span>
                </Row>
              ))}
            </SideHead>
          )
        )
      })}
    </ShopFrame>
  )
}
