/** Whose it is: a known rider, a new one, or none because the unit came alone; mass with kit, posture, hours. */
import { postures, type Rider, say, usualShare } from '@legwork/trade'
import { useState } from 'react'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { useRegisters } from '../../offline/hooks.tsx'
import { Button } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { TextField } from '../../ui/field.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { blankRider, type RiderDraft, riderDraftOf } from './take-in-draft.ts'

const most = 6

function FindRider({ chosen, onPick }: { chosen: string | null; onPick: (rider: Rider | null) => void }) {
  const { riders } = useRegisters()
  const [find, setFind] = useState('')
  const words = find.trim().toLowerCase()
  const few = riders.length <= most
  const own = riders.find((rider) => rider.id === chosen)
  if (own)
    return (
      <div className="picked">
        <Row chosen>
          <b translate="no">{own.name}</b>
        </Row>
        <Button kind="second" size="row" onPress={() => onPick(null)}>
          {say('take-in.rider.another')}
        </Button>
      </div>
    )
  const found = riders
    .filter((rider) => few || (words !== '' && rider.name.toLowerCase().includes(words)))
    .slice(0, most)
  return (
    <>
      {!few && <TextField label={say('take-in.rider.find')} value={find} onChange={setFind} inputMode="search" />}
      {found.map((rider) => (
        <Row key={rider.id} onPress={() => onPick(rider)} name={say('take-in.rider.pick', { name: rider.name })}>
          <span translate="no">{rider.name}</span>
        </Row>
      ))}
      {words !== '' && found.length === 0 && <p className="book">{say('take-in.rider.none-found')}</p>}
    </>
  )
}

/** How the rider stands, and how much is ridden: open for a new rider, folded where it is known. */
function Habits({ draft, change }: { draft: RiderDraft; change: (patch: Partial<RiderDraft>) => void }) {
  const usual = usualShare[draft.posture]
  const fields = (
    <>
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
  )
  if (draft.way !== 'known') return fields
  return (
    <details key={draft.id}>
      <summary>
        {say('take-in.rider.habits', {
          posture: say(`take-in.posture.${draft.posture}`),
          share: draft.share === null ? '–' : `${Math.round(draft.share * 100)} %`,
          hours: draft.hours ?? '–',
        })}
      </summary>
      {fields}
    </details>
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
  const { riders } = useRegisters()
  const asks = draft.way === 'new' || (draft.way === 'known' && draft.id !== null)
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
      {draft.way === 'known' && (
        <FindRider
          chosen={draft.id}
          onPick={(rider) => onChange(rider ? riderDraftOf(rider) : { ...blankRider, way: 'known' })}
        />
      )}
      {draft.way === 'new' && (
        <TextField label={say('take-in.rider.name')} value={draft.name} onChange={(name) => change({ name })} />
      )}
      {draft.way === 'none' && <p className="book">{say('take-in.rider.none.note')}</p>}
      {asks && (
        <>
          <QuantityInput
            label={say('take-in.rider.mass')}
            hint={say('take-in.rider.mass.note')}
            kind="mass"
            value={draft.mass}
            onChange={(mass) => change({ mass })}
          />
          <Habits draft={draft} change={change} />
        </>
      )}
    </SideHead>
  )
}
