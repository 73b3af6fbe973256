/** Which workshop this browser works in. On the disk as strictly as the book: a tablet that loses power stays signed in. */
import type { Id } from '@legwork/trade'
import { type DBSchema, openDB } from 'idb'

interface ChosenSchema extends DBSchema {
  chosen: { key: string; value: Id }
}
const key = 'workshop'

const open = () =>
  openDB<ChosenSchema>('legwork-chosen', 1, {
    upgrade(db) {
      db.createObjectStore('chosen')
    },
  })

export async function chosenWorkshop(): Promise<Id | null> {
  const db = await open()
  try {
    return (await db.get('chosen', key)) ?? null
  } finally {
    db.close()
  }
}

/** Chooses a workshop, or none. */
export async function chooseWorkshop(workshop: Id | null): Promise<void> {
  const db = await open()
  try {
    const tx = db.transaction('chosen', 'readwrite', { durability: 'strict' })
    await (workshop ? tx.store.put(workshop, key) : tx.store.delete(key))
    await tx.done
  } finally {
    db.close()
  }
}
