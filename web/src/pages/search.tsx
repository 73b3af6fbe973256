import type { SearchHit } from '@legwork/contract'
import { say } from '@legwork/trade'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { api } from '../api/client.ts'
import { useStation } from '../offline/hooks.tsx'
import { TextField } from '../ui/field.tsx'
import { Row } from '../ui/ledger.tsx'
import { ShopFrame } from './shop-frame.tsx'

const hrefOf = ({ kind, id }: SearchHit): string => {
  if (kind === 'unit') return `/units/${id}`
  if (kind === 'rider') return `/riders/${id}`
  return `/jobs/${encodeURIComponent(id.startsWith('job:') ? id : `job:${id}`)}`
}

/** Asks the server: the only page that can't do its work offline, and says so. */
export function SearchPage() {
  const { workshop } = useStation()
  const [words, setWords] = useState('')
  const asked = words.trim()
  const found = useQuery({
    queryKey: ['search', workshop, asked],
    queryFn: ({ signal }) => api.search(workshop, asked, signal),
    enabled: asked.length > 0,
    retry: false,
    networkMode: 'always',
  })
  return (
    <ShopFrame place={null} title={say('place.search')}>
      <h1>{say('place.search')}</h1>
      <TextField label={say('search.words')} value={words} onChange={setWords} inputMode="search" autoFocus />
      <div role="status">
        {found.isError && <p className="empty">{say('search.offline')}</p>}
        {found.data?.hits.length === 0 && <p className="empty">{say('search.none')}</p>}
      </div>
      {found.data?.hits.map((hit) => (
        <Row key={hit.kind + hit.id} href={hrefOf(hit)} className="list-row">
          <b translate="no">{hit.title}</b>
          <span translate="no">{hit.detail}</span>
        </Row>
      ))}
    </ShopFrame>
  )
}
