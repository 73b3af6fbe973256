/** The sag of the setting, the band that friction leaves it in, and the sag that is wanted. */
import type { Sag } from '@legwork/engine'
import { middleShare, type Posture, postureOf, postures, say } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { SourceMark } from '../../../marks/source-mark.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { Stepper } from '../../../ui/stepper.tsx'
import { useJobView } from '../job-view.tsx'
import { postureText } from '../posture.ts'
import { loadOf, type StartInputs } from '../start-pressure.ts'
import { frictionWorkings, loadWorkings, sagWorkings } from './set-up-workings.tsx'
import { type Standing, sagOf } from './what-if.ts'

interface SagBandProps {
  inputs: StartInputs
  standing: Standing
  load: { along: number; across: number }
  sag: Sag
  /** Of the bushings under the side load, [low, high]; null where the sheet gives none. */
  friction: readonly [number, number] | null
  wanted: { low: number; high: number }
  onSag: (share: number) => void
}

interface OtherPosturesProps {
  inputs: StartInputs
  standing: Standing
  posture: Posture
}

/** The same pressure under the same rider who sits or stands otherwise: why a posture is named before sag is read. */
function OtherPostures({ inputs, standing, posture }: OtherPosturesProps) {
  const others = postures.filter((one) => one !== posture)
  return others.map((other) => {
    const frontShare = middleShare(other)
    const { load } = loadOf({ ...inputs, frontShare })
    const name = say('set-up.sag.other', { posture: postureText(other), share: Math.round(frontShare * 100) })
    return (
      <ValueRow
        key={other}
        name={
          <>
            <SourceMark kind="common-practice" /> {name}
          </>
        }
      >
        <WorkedOut
          value={sagOf(standing, load, 0).stroke}
          kind="length"
          digits={1}
          workings={() => sagWorkings(inputs.sheet, standing, load, 0, 'stroke')}
        />
      </ValueRow>
    )
  })
}

export function SagBand({ inputs, standing, load, sag, friction, wanted, onSag }: SagBandProps) {
  const { rider } = useJobView()
  const posture = rider?.posture ?? null
  const named = postureOf(posture)
  const { sheet } = inputs
  const { bushings } = sheet
  const most = friction?.[1] ?? 0
  const length = (path: 'stroke' | 'low' | 'high', value: number) => (
    <WorkedOut
      value={value}
      kind="length"
      digits={1}
      workings={() => sagWorkings(sheet, standing, load.along, most, path)}
    />
  )
  const percent = (share: number) => Math.round(share * 100)
  const label = say('set-up.sag-wanted')
  return (
    <SideHead
      place="above"
      title={say('set-up.sag')}
      note={
        <>
          {say('set-up.wanted.posture', { low: percent(wanted.low), high: percent(wanted.high) })}{' '}
          {named !== 'standing' && say('set-up.wanted.other', { posture: postureText(named) })}
        </>
      }
    >
      <Stepper
        label={label}
        value={<QuantityText value={inputs.sag} kind="fraction" />}
        less={say('set-up.less', { what: label })}
        more={say('set-up.more', { what: label })}
        onLess={() => onSag(Math.max(0.05, Math.round(inputs.sag * 100 - 1) / 100))}
        onMore={() => onSag(Math.min(0.5, Math.round(inputs.sag * 100 + 1) / 100))}
      />
      <ValueRow name={say('set-up.sag-rests')}>{length('stroke', sag.stroke)}</ValueRow>
      <OtherPostures inputs={inputs} standing={standing} posture={named} />
      <ValueRow name={say('set-up.side-load')}>
        <WorkedOut
          value={load.across}
          kind="force"
          digits={0}
          workings={() => loadWorkings(inputs, posture, 'sideLoad')}
        />
      </ValueRow>
      {friction && bushings ? (
        <>
          <ValueRow name={say('set-up.bushing-friction')}>
            {([0, 1] as const).map((index) => (
              <WorkedOut
                key={index}
                value={friction[index]}
                kind="force"
                digits={0}
                workings={() => frictionWorkings(bushings, load.across, index)}
              />
            ))}
          </ValueRow>
          <ValueRow name={say('set-up.sag-least')}>{length('low', sag.low)}</ValueRow>
          <ValueRow name={say('set-up.sag-most')}>{length('high', sag.high)}</ValueRow>
        </>
      ) : (
        <p className="book">{say('set-up.bushing-friction.none')}</p>
      )}
    </SideHead>
  )
}
