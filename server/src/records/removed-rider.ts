/** What is gone with a rider who was removed, and what stays away for good. */
import type { KeptText } from '@legwork/contract'
import type { Digest, Id, Rider, Stream } from '@legwork/trade'
import type { Reader, Writer } from '../store/store.ts'

/** The instant of removal, null for a rider who is there or was never here. */
export async function removedOn(read: Reader, workshop: Id, rider: Id): Promise<string | null> {
  const row = await read
    .selectFrom('riders')
    .select('body')
    .where('workshop', '=', workshop)
    .where('id', '=', rider)
    .executeTakeFirst()
  // The schema of its register has seen the body.
  return row ? ((JSON.parse(row.body) as Rider).removedOn ?? null) : null
}

/** Digests that a body names, of texts and photos alike. */
export const digestsIn = (body: string): Digest[] => body.match(/(?<=")[0-9a-f]{64}(?=")/g) ?? []

/** A rider's jobs. */
export async function jobsOf(read: Reader, workshop: Id, rider: Id): Promise<Stream[]> {
  const opened = await read
    .selectFrom('entry')
    .select('stream')
    .where('workshop', '=', workshop)
    .where('kind', '=', 'job-opened')
    .where('body', 'like', `%"${rider}"%`)
    .execute()
  return opened.map((job) => job.stream as Stream) // its CHECK says so
}

/** Of these digests those that no entry outside of these jobs names: the same words in another rider's job are that rider's too. */
export async function onlyIn(
  read: Reader,
  workshop: Id,
  jobs: readonly Stream[],
  digests: readonly Digest[],
): Promise<Digest[]> {
  const only: Digest[] = []
  for (const digest of digests) {
    const elsewhere = await read
      .selectFrom('entry')
      .select('id')
      .where('workshop', '=', workshop)
      .where('body', 'like', `%"${digest}"%`)
      .where('stream', 'not in', jobs.length > 0 ? [...jobs] : [''])
      .limit(1)
      .executeTakeFirst()
    if (!elsewhere) only.push(digest)
  }
  return only
}

/** Takes texts out; their digests and the instant stay. Those gone already keep theirs. */
export async function removeTexts(write: Writer, workshop: Id, digests: readonly Digest[], at: string): Promise<void> {
  for (const digest of digests)
    await write
      .updateTable('entry_text')
      .set({ content: null, removed_at: at })
      .where('workshop', '=', workshop)
      .where('digest', '=', digest)
      .where('removed_at', 'is', null)
      .execute()
}

/** Texts and photos that were removed at that instant. */
export async function goneAt(read: Reader, workshop: Id, at: string): Promise<KeptText[]> {
  const of = (table: 'entry_text' | 'photo') =>
    read
      .selectFrom(table)
      .select('digest')
      .where('workshop', '=', workshop)
      .where('removed_at', '=', at)
      .orderBy('digest')
      .execute()
  const rows = [...(await of('entry_text')), ...(await of('photo'))]
  return rows.map(({ digest }) => ({ digest, text: null, removedOn: at }))
}
