/** Search words of units and riders. */
import type { Id, Registers } from '@legwork/trade'
import type { Writer } from '../store/store.ts'
import type { RegisterItem } from './registers.ts'
import { putWords } from './search-words.ts'

export async function projectRegister(
  write: Writer,
  workshop: Id,
  item: Pick<RegisterItem, 'register' | 'body' | 'person'>,
): Promise<void> {
  const hand = { workshop, person: item.person, station: null }
  if (item.register === 'units') {
    const unit = item.body as Registers['units'] // its schema has checked it
    await putWords(write, hand, 'unit', unit.id, [unit.label, unit.description, unit.serial ?? ''])
  }
  if (item.register === 'riders') {
    const rider = item.body as Registers['riders'] // its schema has checked it
    await putWords(write, hand, 'rider', rider.id, [rider.name])
  }
}
