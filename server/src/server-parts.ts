/** What every route works with. */
import type { Announcer } from './announcer.ts'
import type { Clock } from './clock.ts'
import type { Store } from './store/store.ts'

export interface Server {
  store: Store
  clock: Clock
  announcer: Announcer
}
