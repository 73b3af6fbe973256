/** Set up of a coil fork or a shock: what its spring needs at the sag that is wanted. It has no section and no rider's card. */
import { Refusal, standardAir } from '@legwork/engine'
import { type Sheet, say, targetSag } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { Stepper } from '../../../ui/stepper.tsx'
import { useJobView } from '../job-view.tsx'
import { missingForSpring } from '../sheet-fields.ts'
import { SheetFillIn } from '../sheet-fill-in.tsx'
import { type LoadAsked, loadAsked, loadOfAsked, springFor, usualSag } from './other-springs.ts'
import {
  coilRateWorkings,
  coilSagWorkings,
  otherLoadWorkings,
  otherPressureWorkings,
} from './set-up-other-workings.tsx'
import { Setting } from './set-up-setting.tsx'
import { bench } from './what-if.ts'

const { ambient } = standardAir(bench.altitude)

function SpringRows({ sheet, load, wanted }: { sheet: Sheet; load: number; wanted: number }) {
  const found = useMemo(() => {
    try {
      return springFor(sheet, load, wanted, ambient)
    } catch (trouble) {
      if (trouble instanceof Refusal) return trouble
      throw trouble
    }
  }, [sheet, load, wanted])
  const percent = Math.round(wanted * 100)
  if (found instanceof Refusal)
    return (
      <p className="refusal" role="alert" translate="no">
        {found.message}
      </p>
    )
  if (found.kind === 'air')
    return (
      <ValueRow name={say('set-up.other.pressure', { percent })}>
        <WorkedOut
          value={found.pressure}
          kind="pressure"
          size="row"
          workings={() => otherPressureWorkings(sheet, load, wanted, ambient)}
        />
      </ValueRow>
    )
  return (
    <>
      <ValueRow name={say('set-up.other.rests')}>
        <WorkedOut
          value={found.rests}
          kind="length"
          digits={1}
          size="row-small"
          workings={() => coilSagWorkings(sheet, load, ambient)}
        />
      </ValueRow>
      <ValueRow name={say('set-up.other.rate', { percent })}>
        <WorkedOut
          value={found.rate}
          kind="rate"
          digits={1}
          size="row-small"
          workings={() => coilRateWorkings(sheet, load, wanted)}
        />
      </ValueRow>
      {sheet.kind === 'shock-coil' && <p className="book">{say('set-up.other.steps')}</p>}
    </>
  )
}

function Loaded({ sheet, asked }: { sheet: Sheet; asked: LoadAsked }) {
  const [wanted, setWanted] = useState(() => usualSag(sheet))
  const usual = targetSag(sheet)
  const load = loadOfAsked(asked)
  const label = say('set-up.sag-wanted')
  const percent = (share: number) => Math.round(share * 100)
  return (
    <SideHead
      place="above"
      className="other-spring"
      title={say('set-up.other')}
      note={say('set-up.other.usual', { low: percent(usual.low), high: percent(usual.high) })}
    >
      <Stepper
        label={label}
        value={<QuantityText value={wanted} kind="fraction" />}
        less={say('set-up.less', { what: label })}
        more={say('set-up.more', { what: label })}
        onLess={() => setWanted(Math.max(0.05, percent(wanted) / 100 - 0.01))}
        onMore={() => setWanted(Math.min(0.5, percent(wanted) / 100 + 0.01))}
      />
      <ValueRow name={say('set-up.other.sag')}>
        <QuantityText value={wanted * sheet.stroke.value} kind="length" digits={1} />
      </ValueRow>
      <ValueRow name={say('set-up.other.load')}>
        <WorkedOut value={load} kind="force" digits={0} workings={() => otherLoadWorkings(asked)} />
      </ValueRow>
      <SpringRows sheet={sheet} load={load} wanted={wanted} />
      <p className="book">{say('cutaway.none')}</p>
    </SideHead>
  )
}

export function SetUpOther({ sheet }: { sheet: Sheet }) {
  const { rider, bike } = useJobView()
  const asked = useMemo(() => loadAsked(sheet, rider, bike), [sheet, rider, bike])
  const missing = missingForSpring(sheet)
  return (
    <div className="two-columns">
      <div>
        {'calculation' in asked ? (
          missing.length === 0 && <Loaded sheet={sheet} asked={asked} />
        ) : (
          <>
            <p>{say('set-up.missing', { what: asked.map((one) => say(`set-up.missing.${one}`)).join(', ') })}</p>
            <p className="book">{say('set-up.other.missing')}</p>
          </>
        )}
        {missing.length > 0 && <SheetFillIn sheet={sheet} fields={missing} />}
      </div>
      <div>
        <Setting inputs={null} spacers={sheet.spacers?.value ?? 0} taken={null} />
      </div>
    </div>
  )
}
