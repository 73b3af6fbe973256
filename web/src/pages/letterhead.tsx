/** What stands at the head of the papers. The server prints them, so it is written there and needs the network. */
import { say } from '@legwork/trade'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { api, type Letterhead, Refused } from '../api/client.ts'
import { useHome, useStation } from '../offline/hooks.tsx'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/field.tsx'
import { SideHead } from '../ui/ledger.tsx'
import './letterhead.css'

const orNull = (text: string): string | null => (text.trim() === '' ? null : text.trim())

function LetterheadForm({ head, home }: { head: Letterhead; home: boolean }) {
  const { workshop } = useStation()
  const [name, setName] = useState(head.name)
  const [address, setAddress] = useState(head.address ?? '')
  const [phone, setPhone] = useState(head.phone ?? '')
  const [terms, setTerms] = useState(head.terms ?? '')
  const [kept, setKept] = useState(false)
  const [failed, setFailed] = useState<string | null>(null)
  const keep = async () => {
    setFailed(null)
    setKept(false)
    try {
      await api.letterhead(workshop, {
        name: name.trim() || head.name,
        address: orNull(address),
        phone: orNull(phone),
        terms: orNull(terms),
      })
      setKept(true)
    } catch (error) {
      setFailed(error instanceof Refused ? error.message : say('letterhead.no-network'))
    }
  }
  return (
    <form
      className="letterhead"
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <TextField label={say('letterhead.name')} value={name} onChange={setName} autoComplete="organization" />
      <TextField
        label={say('letterhead.address')}
        value={address}
        onChange={setAddress}
        autoComplete="street-address"
      />
      <TextField label={say('letterhead.phone')} value={phone} onChange={setPhone} type="tel" autoComplete="tel" />
      {!home && (
        <TextField
          label={say('letterhead.terms')}
          hint={say('letterhead.terms.hint')}
          value={terms}
          onChange={setTerms}
          lines={3}
        />
      )}
      <div className="acts">
        <Button kind="second" type="submit">
          {say('letterhead.act')}
        </Button>
      </div>
      <p role="status" className="said">
        {kept ? say('letterhead.done') : null}
      </p>
      {failed && (
        <p className="refusal" role="alert">
          {failed}
        </p>
      )}
    </form>
  )
}

export function LetterheadPart() {
  const { workshop } = useStation()
  const home = useHome()
  const { data, isError } = useQuery({
    queryKey: ['letterhead', workshop],
    queryFn: () => api.workshops(),
    retry: false,
  })
  const line = data?.workshops.find(({ id }) => id === workshop)
  return (
    <SideHead title={say('letterhead.title')}>
      <p className="said book">{say('letterhead.note')}</p>
      {line && <LetterheadForm head={line} home={home} />}
      {isError && <p className="said">{say('letterhead.no-network')}</p>}
    </SideHead>
  )
}
