import { type Instrument, newId, say } from '@legwork/trade'
import { useState } from 'react'
import { api, Refused } from '../api/client.ts'
import { QuantityInput } from '../figures/quantity-input.tsx'
import { plainMeasures } from '../figures/world.tsx'
import { Logo } from '../marks/logo.tsx'
import { joinWorkshop, openStation } from '../offline/joining.ts'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/field.tsx'
import { StartDrawing } from './start-drawing.tsx'
import './start.css'

const freshId = () => newId(Date.now(), crypto.getRandomValues(new Uint8Array(10)))

/** Initials of a name: `Odalys Fennimarch` → `O. F.`. */
export const initialsOf = (name: string): string =>
  name
    .trim()
    .split(/\s+/)
    .slice(0, 3)
    .map((word) => `${[...word][0]?.toUpperCase() ?? ''}.`)
    .join(' ')

/** Does a first act; what went wrong, in words. */
function useFirstAct() {
  const [working, setWorking] = useState(false)
  const [failed, setFailed] = useState<string | null>(null)
  const act = async (run: () => Promise<void>) => {
    setWorking(true)
    setFailed(null)
    try {
      await run()
      location.assign('/')
    } catch (error) {
      const why = error instanceof Refused ? error.message : say('start.no-network')
      setFailed(say('start.failed', { why }))
      setWorking(false)
    }
  }
  return { act, working, failed }
}

type FirstAct = ReturnType<typeof useFirstAct>

/** At home the shop is the person's own bench: one name is enough. */
function StartForm({ first, home, onBack }: { first: FirstAct; home: boolean; onBack: () => void }) {
  const [shop, setShop] = useState('')
  const [name, setName] = useState('')
  const [hose, setHose] = useState<number | null>(null)
  const [low, setLow] = useState<number | null>(null)
  const [high, setHigh] = useState<number | null>(null)
  const [length, setLength] = useState<number | null>(null)
  const [missing, setMissing] = useState(false)

  async function begin(): Promise<void> {
    const person = { name: name.trim(), initials: initialsOf(name), role: 'owner' as const, measures: plainMeasures }
    const shopName = home ? say('start.home.shop', { name: name.trim() }) : shop.trim()
    const started = await api.startWorkshop({ name: shopName, home, person })
    await joinWorkshop(started.workshop.id, started.person.id)
    const instruments: Instrument[] = []
    if (hose !== null)
      instruments.push({
        id: freshId(),
        name: say('start.my-pump'),
        note: say('start.my-pump.note'),
        kind: 'pump',
        hoseVolume: hose,
        offset: 0,
        resolution: 6894.757,
      })
    if (low !== null && high !== null && length !== null)
      instruments.push({
        id: freshId(),
        name: say('start.my-wrench'),
        note: say('start.my-wrench.note'),
        kind: 'wrench',
        low,
        high,
        class: 0.04,
        length,
        adapterLength: 0,
      })
    if (instruments.length === 0) return
    const station = await openStation()
    await station?.writeRegisters(
      started.person.id,
      instruments.map((body) => ({ register: 'instruments', body })),
    )
    station?.close()
  }

  return (
    <form
      className="start-form"
      onSubmit={(event) => {
        event.preventDefault()
        const complete = (home || shop.trim() !== '') && name.trim() !== ''
        setMissing(!complete)
        if (complete) void first.act(begin)
      }}
    >
      {home ? (
        <p className="book">{say('start.home.detail')}</p>
      ) : (
        <TextField label={say('start.shop-name')} value={shop} onChange={setShop} autoComplete="organization" />
      )}
      <TextField label={say('start.your-name')} value={name} onChange={setName} autoComplete="name" />
      <QuantityInput
        label={say('start.pump')}
        hint={say('start.pump.hint')}
        suggestion={say('start.pump.usual')}
        kind="volume"
        value={hose}
        onChange={setHose}
      />
      <fieldset>
        <legend>{say('start.wrench')}</legend>
        <p className="book">{say('start.wrench.hint')}</p>
        <QuantityInput label={say('start.wrench.low')} kind="torque" value={low} onChange={setLow} />
        <QuantityInput label={say('start.wrench.high')} kind="torque" value={high} onChange={setHigh} />
        <QuantityInput label={say('start.wrench.length')} kind="length" value={length} onChange={setLength} />
      </fieldset>
      {missing && (
        <p className="refusal" role="alert">
          {say(home ? 'start.needs-name' : 'start.needs-names')}
        </p>
      )}
      <div className="acts">
        <Button kind="second" onPress={onBack}>
          {say('start.back')}
        </Button>
        <Button kind="main" type="submit" arrow="forward">
          {say('start.begin')}
        </Button>
      </div>
    </form>
  )
}

/** The first page: two ways in, each one tap. */
export function StartPage() {
  const first = useFirstAct()
  const [form, setForm] = useState<'shop' | 'home' | null>(null)
  const lookAround = () =>
    first.act(async () => {
      const { workshop } = await api.demo()
      await joinWorkshop(workshop.id, null)
    })
  return (
    <main className="start" aria-label={say('start.title')}>
      <header>
        <Logo height={46} />
        <h1>{say('app.name')}</h1>
      </header>
      <p className="subtitle">{say('app.subtitle')}</p>
      <div role="status">{first.working && <p className="book">{say('start.working')}</p>}</div>
      {first.failed && (
        <p className="refusal" role="alert">
          {first.failed}
        </p>
      )}
      {form ? (
        <StartForm first={first} home={form === 'home'} onBack={() => setForm(null)} />
      ) : (
        <>
          <StartDrawing />
          <div className="ways">
            <div>
              <Button kind="main" size="way" arrow="forward" onPress={() => setForm('shop')}>
                {say('start.workshop')}
              </Button>
              <p className="book">{say('start.workshop.note')}</p>
            </div>
            <div>
              <Button kind="second" size="way" arrow="forward" onPress={lookAround}>
                {say('start.demo')}
              </Button>
              <p className="book">{say('start.demo.note')}</p>
            </div>
          </div>
          <div className="at-home">
            <Button kind="second" onPress={() => setForm('home')}>
              {say('start.home')}
            </Button>
            <p className="book">{say('start.home.detail')}</p>
          </div>
        </>
      )}
    </main>
  )
}
