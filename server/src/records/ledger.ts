/** The ledger: ins and outs of the store, append-only. */
import { id } from '@legwork/contract'
import type { Id } from '@legwork/trade'
import { z } from 'zod'
import type { Reader, Store } from '../store/store.ts'
import { Trouble } from './trouble.ts'

/** Either a volume [m³] or pieces. */
export const ledgerLine = z
  .strictObject({
    id,
    station: id,
    person: id,
    item: z.string().min(1).max(120),
    direction: z.enum(['in', 'out']),
    volume: z.number().min(0).max(1).nullable(),
    pieces: z.number().int().min(0).max(100_000).nullable(),
    reason: z.string().min(1).max(200),
    stream: z.string().nullable(),
  })
  .refine((line) => (line.volume === null) !== (line.pieces === null), {
    path: ['volume'],
    error: 'either a volume or pieces, not both',
  })
export type LedgerLine = z.infer<typeof ledgerLine>
export const ledgerLines = z.object({ lines: z.array(ledgerLine.safeExtend({ writtenAt: z.string() })) })

export async function readLedger(read: Reader, workshop: Id): Promise<(LedgerLine & { writtenAt: string })[]> {
  const rows = await read
    .selectFrom('ledger')
    .selectAll()
    .where('workshop', '=', workshop)
    .orderBy('written_at')
    .orderBy('id')
    .execute()
  return rows.map(({ workshop: _, written_at, ...line }) => ({ ...line, writtenAt: written_at }))
}

/** Writes one line; the same id again changes nothing. */
export async function writeLedger(store: Store, workshop: Id, line: LedgerLine, now: Date): Promise<LedgerLine> {
  return store.write(async (write) => {
    const known = await write.selectFrom('ledger').select('id').where('id', '=', line.id).executeTakeFirst()
    if (known) return line
    const station = await write
      .selectFrom('station')
      .select('id')
      .where('id', '=', line.station)
      .where('workshop', '=', workshop)
      .executeTakeFirst()
    if (!station)
      throw new Trouble(404, 'No such station', [
        {
          field: 'station',
          code: 'station.unknown',
          came: line.station,
          allowed: 'a station signed in to this workshop',
          next: 'Sign the station in first.',
        },
      ])
    await write
      .insertInto('ledger')
      .values({ ...line, workshop, written_at: now.toISOString() })
      .execute()
    return line
  })
}
