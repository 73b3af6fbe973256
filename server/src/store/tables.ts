/** Rows as both databases give them: dates as ISO 8601 text, JSON as text, truths as 0 and 1. */
interface Handed {
  workshop: string
  person: string
  station: string
}
interface Unhanded {
  workshop: string
  person: string | null
  station: string | null
}

interface RegisterRow extends Unhanded {
  id: string
  version: number
  body: string
  changed_at: string
}

export interface Tables {
  workshop: Unhanded & {
    id: string
    name: string
    demo: 0 | 1
    home: 0 | 1
    last_position: number
    created_at: string
    address: string | null
    phone: string | null
    terms: string | null
  }
  station: {
    id: string
    workshop: string
    person: string | null
    station: string
    name: string
    delivered_no: number
    created_at: string
  }
  people: RegisterRow & { name: string }
  riders: RegisterRow & { name: string; mass: number | null }
  bikes: RegisterRow & { head_angle: number | null }
  units: RegisterRow & { label: string; sheet: string }
  sheets: RegisterRow & { revision: string; stroke: number }
  instruments: RegisterRow & { hose_volume: number | null }
  visits: RegisterRow & { promised: string | null }
  register_history: Unhanded & {
    register: string
    id: string
    version: number
    change_id: string
    position: number
    body: string
    changed_at: string
  }
  stream: Handed & { id: string; head_seq: number; created_at: string }
  entry: Handed & {
    id: string
    position: number
    stream: string
    seq: number
    station_no: number
    made_at: string
    received_at: string
    kind: string
    version: number
    seen: number
    mode: 'now' | 'late' | 'carried-over'
    done_at: string | null
    body: string
    clock_boot: string | null
    clock_reading: number | null
  }
  entry_text: Unhanded & { digest: string; content: string | null; kept_at: string; removed_at: string | null }
  photo: Handed & { digest: string; content: Buffer | null; kept_at: string; removed_at: string | null }
  refusal: Handed & { id: string; station_no: number; errors: string; refused_at: string }
  ledger: Handed & {
    id: string
    item: string
    direction: 'in' | 'out'
    volume: number | null
    pieces: number | null
    reason: string
    stream: string | null
    written_at: string
  }
  job_card: Handed & { stream: string; number: number; card: string }
  oil_used: Handed & { stream: string; leg: 'left' | 'right'; volume: number; entry: string }
  search_word: Unhanded & { kind: 'unit' | 'rider' | 'job'; target: string; word: string }
}
