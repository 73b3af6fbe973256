/** A line of the demo workshop's paper book. */
import type { WaitsFor } from '../journal/entry.ts'
import type { ServiceId } from '../procedures/procedures.ts'

export interface DemoMeasure {
  what: string
  leg?: 'left' | 'right'
  phase: 'received' | 'during' | 'done'
  value: number
  measure: 'm' | 'Pa' | 'm³' | 'N' | 's'
}

export interface DemoJob {
  key: string
  day: number
  unit: string
  asked: string
  signs: readonly string[]
  measured: readonly DemoMeasure[]
  found: string
  done: string
  /** Gauge [Pa]; null where no pressure was set. */
  pressure: number | null
  minutes: { quoted: number; actual: number }
  /** What of it was a service by its procedure; left out where it was none. */
  services?: readonly ServiceId[]
  ends: 'handed-over' | 'stopped' | { waits: WaitsFor }
}
