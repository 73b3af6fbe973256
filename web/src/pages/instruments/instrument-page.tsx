/** One instrument: what is known of it, and for a pump the measuring of its hose. */
import { type Id, type Instrument, say } from '@legwork/trade'
import { useState } from 'react'
import { useLocation } from 'wouter'
import { useRegisters, useStation, useWriteRegister } from '../../offline/hooks.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { HoseKnown, HoseMeasure } from './hose-measure.tsx'
import { InstrumentForm } from './instrument-form.tsx'
import './instruments.css'

export function NewInstrumentPage() {
  const { newId } = useStation()
  const [id] = useState(newId)
  const writeRegister = useWriteRegister()
  const [, go] = useLocation()
  const keep = async (instrument: Instrument) => {
    await writeRegister('instruments', instrument)
    go(`/instruments/${id}`)
  }
  return (
    <ShopFrame place="sheets" title={say('instruments.new')}>
      <h1>{say('instruments.new')}</h1>
      <InstrumentForm instrument={null} id={id} onKeep={(instrument) => void keep(instrument)} />
    </ShopFrame>
  )
}

export function InstrumentPage({ id }: { id: Id }) {
  const found = useRegisters().instruments.find((one) => one.id === id)
  const writeRegister = useWriteRegister()
  const keep = (instrument: Instrument) => void writeRegister('instruments', instrument)
  if (!found)
    return (
      <ShopFrame place="sheets" title={say('instruments.title')}>
        <p className="empty">{say('instrument.not-here')}</p>
      </ShopFrame>
    )
  const gauge = found.kind === 'pump' || found.kind === 'gauge' ? found : null
  return (
    <ShopFrame place="sheets" title={found.name}>
      <h1 translate="no">{found.name}</h1>
      <p className="sheet-kind">{say(`instrument.kind.${found.kind}`)}</p>
      {gauge && <HoseKnown gauge={gauge} />}
      {/* What was measured stands in the form too, as soon as it is kept. */}
      <InstrumentForm key={JSON.stringify(found)} instrument={found} id={id} onKeep={keep} />
      {gauge && <HoseMeasure gauge={gauge} onKeep={keep} />}
    </ShopFrame>
  )
}
