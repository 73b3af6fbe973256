/** Taking a rider out of the book for good: asked once more, done by the server, never without the network. */
import { type Rider, say } from '@legwork/trade'
import { useState } from 'react'
import { api, Refused } from '../../api/client.ts'
import { useHands, useStation } from '../../offline/hooks.tsx'
import { Button } from '../../ui/button.tsx'
import { Dialog } from '../../ui/dialog.tsx'
import { SideHead } from '../../ui/ledger.tsx'

export function EraseRider({ rider }: { rider: Rider }) {
  const station = useStation()
  const { person } = useHands()
  const [asked, setAsked] = useState(false)
  const [trouble, setTrouble] = useState<string | null>(null)
  const erase = async () => {
    if (!person) return
    setAsked(false)
    try {
      // Every station hears of it from the server, this one too.
      await api.eraseRider(station.workshop, rider.id, { person: person.id, station: station.id })
      setTrouble(null)
    } catch (refused) {
      setTrouble(refused instanceof Refused ? refused.message : say('rider.erase.no-network'))
    }
  }
  return (
    <SideHead title={say('rider.erase.title')} note={say('rider.erase.note')} place="above" className="erase-rider">
      <Button kind="second" size="row" onPress={() => setAsked(true)}>
        {say('rider.erase')}
      </Button>
      <p role="status">{trouble}</p>
      <Dialog title={say('rider.erase.ask', { name: rider.name })} isOpen={asked} onClose={() => setAsked(false)}>
        <p className="book">{say('rider.erase.cannot-be-undone')}</p>
        <Button kind="main" onPress={() => void erase()}>
          {say('rider.erase.yes')}
        </Button>
      </Dialog>
    </SideHead>
  )
}
