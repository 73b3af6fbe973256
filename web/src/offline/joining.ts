/** Which workshop this browser works in, and the station it is there. */
import { type Id, newId } from '@legwork/trade'
import { api } from '../api/client.ts'
import { chooseWorkshop, chosenWorkshop } from './chosen-workshop.ts'
import { Station } from './station.ts'
import { Store } from './store.ts'

/** What this computer is, for the list of stations: the shop can give it a better name later. */
function stationName(): string {
  const { platform = 'browser' } = navigator
  return platform.slice(0, 40) || 'browser'
}

/** Signs this browser in as a station of a workshop; needs the network once. */
export async function joinWorkshop(workshop: Id, hands: Id | null): Promise<void> {
  const store = await Store.open(workshop)
  try {
    const known = store.memory.meta.station
    const clockOffset = await api.clockOffset()
    const id = known?.id ?? newId(Math.round(Date.now() + clockOffset), crypto.getRandomValues(new Uint8Array(10)))
    const { station, deliveredNo } = await api.station({ id, workshop, name: known?.name ?? stationName() })
    await store.commit({
      meta: {
        station: { id, name: station.name },
        clockOffset,
        // A station that comes back to an older copy of its own store goes on after what it has sent.
        lastNo: Math.max(store.memory.meta.lastNo, deliveredNo),
        ...(hands ? { hands } : {}),
      },
    })
  } finally {
    store.close()
  }
  await chooseWorkshop(workshop)
}

export const leaveWorkshop = (): Promise<void> => chooseWorkshop(null)

/** The station this browser is in the chosen workshop; works with no network. Null before the first start. */
export async function openStation(): Promise<Station | null> {
  const workshop = await chosenWorkshop()
  if (!workshop) return null
  const store = await Store.open(workshop)
  const { station } = store.memory.meta
  if (station) return new Station(store, station.id)
  store.close()
  return null
}
