/** The setting that the unit leaves with. */
import { say } from '@legwork/trade'
import { useState } from 'react'
import { Button, LinkButton } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { ByWhom } from '../by-whom.tsx'
import { chapterHref } from '../job-address.ts'
import { pumpsOf, useJobView, useWriting } from '../job-view.tsx'
import { useLastUsed } from '../last-used.ts'
import { ReadingField, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import type { StartInputs } from '../start-pressure.ts'
import { type Offered, offeredPressure, type Taken } from './offered-pressure.ts'
import { useStartClicks } from './use-start-clicks.ts'

const bench = 293.15

interface SettingProps {
  /** Null where nothing could be worked out. */
  inputs: StartInputs | null
  spacers: number
  /** A pressure that measured sag asks for, not yet written. */
  taken: Taken | null
}

export function Setting({ inputs, spacers, taken }: SettingProps) {
  const { state, sheet, stream, instruments } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const pumps = pumpsOf(instruments)
  const coil = sheet?.springKind === 'coil'
  const shock = sheet?.kind.startsWith('shock') ?? false
  const { setting } = state
  const offered = offeredPressure(state, taken)
  const [typed, setTyped] = useState<Offered | null>(null)
  const { source } = offered
  const { pressure } = typed?.source === source ? typed : offered
  const start = useStartClicks(inputs, pressure)
  const [pump, setPump] = useLastUsed('pump', pumps, pumps[0]?.id ?? null)
  const [rebound, setRebound] = useState<number | null>(
    setting?.clicks.rebound ?? state.snapshot.rebound?.reading?.value ?? null,
  )
  const [compression, setCompression] = useState<number | null>(
    setting?.clicks.compression ?? state.snapshot.compression?.reading?.value ?? null,
  )
  return (
    <SideHead place="above" title={say('set-up.setting')} note={say('set-up.setting.note')}>
      <form
        className="setting-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (!coil && pressure === null) return
          void write('setting-written', {
            pressure: coil ? 0 : (pressure ?? 0),
            temperature: bench,
            pump: coil ? null : pump,
            spacers,
            clicks: { rebound, compression },
          })
        }}
      >
        {!coil && (
          <ReadingField
            key={source}
            label={say(shock ? 'set-up.setting.pressure-shock' : 'set-up.setting.pressure')}
            measure="Pa"
            value={pressure}
            onChange={(next) => setTyped({ source, pressure: next })}
          />
        )}
        {!coil && pumps.length > 1 && (
          <Choice
            label={say('set-up.setting.pump')}
            options={pumps.map((one) => ({ value: one.id, label: <span translate="no">{one.name}</span> }))}
            value={pump}
            onChange={setPump}
          />
        )}
        {sheet?.clicks.rebound && (
          <ReadingField
            label={say('set-up.setting.rebound')}
            measure="clicks"
            value={rebound}
            onChange={setRebound}
            suggestion={start && say('set-up.clicks.suggestion', { n: start.clicks })}
          />
        )}
        {sheet?.clicks.compression && (
          <ReadingField
            label={say('set-up.setting.compression')}
            measure="clicks"
            value={compression}
            onChange={setCompression}
          />
        )}
        <Button kind={state.setUp && !setting ? 'main' : 'second'} type="submit">
          {say('set-up.setting.act')}
        </Button>
      </form>
      <Refused refusal={refusal} />
      {setting && (
        <p>
          {coil
            ? say('set-up.setting.done-coil')
            : say('set-up.setting.done', {
                pressure: text(setting.pressure, 'Pa'),
                temperature: text(setting.temperature, 'K'),
              })}{' '}
          <ByWhom made={setting} />{' '}
          <LinkButton kind="main" arrow="forward" href={chapterHref(stream, 'hand-over')}>
            {say('set-up.to-hand-over')}
          </LinkButton>
        </p>
      )}
    </SideHead>
  )
}
