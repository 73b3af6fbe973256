/** The line to the server: what other stations write arrives here, resumed where it stopped. */
import type { EntryChange, RegisterChange, RegistersAnswer, WorkshopLine } from '@legwork/contract'
import { type RegisterName, registerNames } from '@legwork/trade'
import { type Api, Refused } from '../api/client.ts'
import { type Change, type KeptRegister, keyOf } from './lines.ts'

export interface LiveNeeds {
  workshop: string
  api: Pick<Api, 'entries' | 'registers' | 'changes' | 'clockOffset'>
  position: () => number | null
  commit: (change: Change) => Promise<void>
  sleep: (ms: number) => Promise<void>
  source: (url: string) => EventSource
}
/** `gone`: the server answers, and does not know this workshop. */
export type Line = 'closed' | 'open' | 'gone'

const page = 500

const keptOf = (register: RegisterName, version: number, body: KeptRegister['body']): KeptRegister => ({
  key: keyOf(register, body),
  register,
  version,
  body,
})

function registersOf(answer: RegistersAnswer): KeptRegister[] {
  return registerNames.flatMap((name) => answer[name].map(({ version, body }) => keptOf(name, version, body)))
}

/** Everything the workshop has, before the first line; what changes meanwhile comes over the line afterwards. */
export async function firstFill({ workshop, api, commit }: LiveNeeds): Promise<void> {
  const registers = await api.registers(workshop)
  const { id, name, demo, home } = registers.workshop
  await commit({ registers: registersOf(registers), meta: { workshop: { id, name, demo, home } } })
  let after = 0
  for (;;) {
    const { entries, texts, position } = await api.entries(workshop, after, page)
    await commit({ entries, texts })
    if (entries.length === 0 || position <= after) break
    after = position
  }
  await commit({ meta: { position: registers.position } })
}

/** Gathers what arrives together, so that a hundred entries are one transaction and one redraw. */
function gatherer(commit: LiveNeeds['commit']) {
  let waiting: { entries: EntryChange[]; registers: RegisterChange[] } = { entries: [], registers: [] }
  let running = false
  const run = async () => {
    while (waiting.entries.length + waiting.registers.length > 0) {
      const { entries, registers } = waiting
      waiting = { entries: [], registers: [] }
      // A rider who was removed takes texts and photos along: this station lets go of its own.
      const gone = registers.flatMap((change) => change.gone ?? [])
      await commit({
        entries: entries.map(({ entry }) => entry),
        texts: [...entries.flatMap(({ texts }) => texts), ...gone],
        photosGone: gone.map(({ digest }) => digest),
        registers: registers.map(({ register, version, body }) => keptOf(register, version, body)),
        meta: { position: Math.max(...[...entries, ...registers].map(({ position }) => position)) },
      })
    }
    running = false
  }
  const start = () => {
    if (running) return
    running = true
    void Promise.resolve().then(run)
  }
  return {
    entry: (change: EntryChange) => {
      waiting.entries.push(change)
      start()
    },
    register: (change: RegisterChange) => {
      waiting.registers.push(change)
      start()
    },
  }
}

/** One line, until it breaks. */
function hold(needs: LiveNeeds, stopped: AbortSignal, tell: (line: Line) => void): Promise<void> {
  return new Promise((done) => {
    const source = needs.source(needs.api.changes(needs.workshop, needs.position() ?? 0))
    const gather = gatherer(needs.commit)
    const end = () => {
      source.close()
      stopped.removeEventListener('abort', end)
      tell('closed')
      done()
    }
    stopped.addEventListener('abort', end)
    source.addEventListener('open', () => tell('open'))
    source.addEventListener('error', end)
    // The events carry what the contract says of them: `EntryChange`, `RegisterChange`, `WorkshopLine`.
    source.addEventListener('entry', (event) => gather.entry(JSON.parse(event.data) as EntryChange))
    source.addEventListener('register', (event) => gather.register(JSON.parse(event.data) as RegisterChange))
    source.addEventListener('workshop', (event) => {
      const { id, name, demo, home } = JSON.parse(event.data) as WorkshopLine
      void needs.commit({ meta: { workshop: { id, name, demo, home } } })
    })
  })
}

/** Runs until it is stopped: fills the store once, then holds the line, and takes it up again where it broke. */
export async function runLiveLine(needs: LiveNeeds, stopped: AbortSignal, tell: (line: Line) => void): Promise<void> {
  let tries = 0
  while (!stopped.aborted) {
    try {
      const clockOffset = await needs.api.clockOffset()
      await needs.commit({ meta: { clockOffset } })
      if (needs.position() === null) await firstFill(needs)
      else await needs.api.entries(needs.workshop, needs.position() ?? 0, 1)
      tries = 0
      await hold(needs, stopped, tell)
    } catch (error) {
      tell(error instanceof Refused && error.status === 404 ? 'gone' : 'closed')
    }
    tries += 1
    await needs.sleep(Math.min(30_000, 500 * 2 ** tries))
  }
}
