/** Whose it is: a known rider, a new one, or none because the unit came alone; mass with kit, posture, hours. */
import { postures, type Rider, say, usualShare } from '@legwork/trade'
import { useState } from 'react'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { useRegisters } from '../../offline/hooks.tsx'
import { Choice } from '../../ui/choice.tsx'
import { TextField } from '../../ui/field.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { blankRider, type RiderDraft, riderDraftOf } from './take-in-draft.ts'

const most = 6

function FindRider({ chosen, onPick }: { chosen: string | null; onPick: (rider: Rider) => void }) {
  const { riders } = useRegisters()
  const [find, setFind] = useState('')
  const words = find.trim().toLowerCase()
  const few = riders.length <= most
  const found = riders
    .filter((rider) => rider.id === chosen || few || (words !== '' && rider.name.toLowerCase().includes(words)))
    .slice(0, most)
  return (
    <>
      {!few && <TextField label={say('take-in.rider.find')} value={find} onChange={setFind} inputMode="search" />}
      {found.map((rider) => (
        <Row
          key={rider.id}
          onPress={() => onPick(rider)}
          chosen={rider.id === chosen}
          name={say('take-in.rider.pick', { name: rider.name })}
        >
          <span translate="no">{rider.name}</span>
        </Row>
      ))}
      {words !== '' && found.length === 0 && <p className="book">{say('take-in.rider.none-found')}</p>}
    </>
  )
}

interface RiderPartProps {
  draft: RiderDraft
  onChange: (draft: RiderDraft) => void
  /** At home: the person is the rider. */
  home: boolean
}

export function RiderPart({ draft, onChange, home }: RiderPartProps) {
  const change = (patch: Partial<RiderDraft>) => onChange({ ...draft, ...patch })
  const usual = usualShare[draft.posture]
  const { riders } = useRegisters()
  const ways = (['known', 'new', 'none'] as const).filter((way) => way !== 'known' || riders.length > 0)
  return (
    <SideHead place="above" title={say(home ? 'take-in.rider.home' : 'take-in.rider')}>
      <Choice
        label={say('take-in.rider')}
        quiet
        options={ways.map((value) => ({ value, label: say(`take-in.rider.${value}`) }))}
        value={draft.way}
        onChange={(way) => onChange(way === 'known' ? { ...draft, way } : { ...blankRider, way })}
      />
      {draft.way === 'known' && <FindRider chosen={draft.id} onPick={(rider) => onChange(riderDraftOf(rider))} />}
      {draft.way === 'new' && (
        <TextField label={say('take-in.rider.name')} value={draft.name} onChange={(name) => change({ name })} />
      )}
      {draft.way === 'none' ? (
        <p className="book">{say('take-in.rider.none.note')}</p>
      ) : (
        <>
          <QuantityInput
            label={say('take-in.rider.mass')}
            hint={say('take-in.rider.mass.note')}
            kind="mass"
            value={draft.mass}
            onChange={(mass) => change({ mass })}
          />
          <Choice
            label={say('take-in.rider.posture')}
            options={postures.map((value) => ({ value, label: say(`take-in.posture.${value}`) }))}
            value={draft.posture}
            onChange={(posture) => change({ posture })}
          />
          <QuantityInput
            label={say('take-in.rider.share')}
            suggestion={say('take-in.usual', {
              low: usual.low * 100,
              high: usual.high * 100,
              measure: say('take-in.measure.percent'),
            })}
            kind="fraction"
            value={draft.share}
            onChange={(share) => change({ share })}
          />
          <QuantityInput
            label={say('take-in.rider.hours')}
            kind="number"
            value={draft.hours}
            onChange={(hours) => change({ hours })}
          />
        </>
      )}
    </SideHead>
  )
}
