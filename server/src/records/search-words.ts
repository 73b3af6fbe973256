/** Words by which a thing is found, one row a word. */
import { wordsOf } from '@legwork/trade/words/found-by.ts'
import type { Writer } from '../store/store.ts'
import type { Tables } from '../store/tables.ts'

export async function putWords(
  write: Writer,
  hand: Pick<Tables['search_word'], 'workshop' | 'person' | 'station'>,
  kind: Tables['search_word']['kind'],
  target: string,
  texts: readonly string[],
): Promise<void> {
  await write
    .deleteFrom('search_word')
    .where('workshop', '=', hand.workshop)
    .where('kind', '=', kind)
    .where('target', '=', target)
    .execute()
  const words = wordsOf(texts.join(' '))
  if (words.length > 0)
    await write
      .insertInto('search_word')
      .values(words.map((word) => ({ ...hand, kind, target, word })))
      .execute()
}
