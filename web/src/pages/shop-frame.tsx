import { say } from '@legwork/trade'
import { type ReactNode, useState } from 'react'
import { Link } from 'wouter'
import { useHands, useHome, useRegisters, useStation } from '../offline/hooks.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { Frame } from '../ui/frame.tsx'
import type { EdgePlace } from '../ui/thumb-edge.tsx'
import { KeptOrSent } from './kept-or-sent.tsx'
import './shop-frame.css'

export type Place = 'bench' | 'units' | 'riders' | 'sheets' | 'calculations' | null

/** The shop's places on the edge of a page. */
function usePlaces(here: Place): EdgePlace[] {
  const { units, riders, sheets } = useRegisters()
  const place = (name: NonNullable<Place>, href: string, detail: ReactNode): EdgePlace => ({
    name: say(`place.${name}`),
    href,
    state: here === name ? 'now' : 'place',
    detail,
  })
  const count = (n: number) => <span translate="no">{n}</span>
  const home = useHome()
  return [
    place('bench', '/', say('place.today')),
    place('units', '/units', count(units.length)),
    ...(home ? [] : [place('riders', '/riders', count(riders.filter(({ removedOn }) => !removedOn).length))]),
    place('sheets', '/sheets', count(new Set(sheets.map(({ id }) => id)).size)),
    place('calculations', '/calculations', null),
  ]
}

interface ShopFrameProps {
  place: Place
  title: string
  children: ReactNode
  actions?: ReactNode
}

/** A page of the shop: workshop, search, hands and book in the title block, the places on the edge. */
export function ShopFrame({ place: here, title, children, actions }: ShopFrameProps) {
  const { person } = useHands()
  const { workshop } = useStation().store.memory.meta
  const home = useHome()
  const places = usePlaces(here)
  const [open, setOpen] = useState(false)
  return (
    <Frame
      title={title}
      block={{
        home: { label: say('app.name'), href: '/' },
        cells: [
          {
            label: say(home ? 'place.home' : 'place.workshop'),
            value: <span translate="no">{workshop?.name}</span>,
            grow: true,
          },
          {
            label: (
              <>
                <span className="wide-words">{say('place.search.label')}</span>
                <span className="narrow-words">{say('place.search.find')}</span>
              </>
            ),
            value: say('place.search'),
            href: '/search',
            phone: 'show',
          },
          {
            // At home the hands are always the same; what they read in may change.
            label: say(home ? 'place.measures' : 'place.hands'),
            value: person ? <span translate="no">{person.name}</span> : say('place.nobody'),
            href: '/hands',
          },
          { label: say('place.book'), value: <KeptOrSent />, href: '/station', phone: 'show' },
        ],
      }}
      edge={{ label: say('place.all'), of: 'places', places }}
      actions={
        <>
          <Button kind="second" className="phone-only" onPress={() => setOpen(true)}>
            {say('place.places')}
          </Button>
          {actions}
        </>
      }
    >
      {children}
      <Dialog title={say('place.places')} isOpen={open} onClose={() => setOpen(false)}>
        {[...places, { name: say('place.hands'), href: '/hands', state: 'place' as const }].map((place) => (
          <Link key={place.href} href={place.href} className="row place-row" onClick={() => setOpen(false)}>
            {place.name}
          </Link>
        ))}
      </Dialog>
    </Frame>
  )
}
