/** The station's own database, one for each workshop: IndexedDB, every write on the disk before it is called kept. */
import type { KeptText } from '@legwork/contract'
import type { AnyBookEntry } from '@legwork/trade'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import {
  type Change,
  emptyMeta,
  type KeptRegister,
  type Meta,
  type OutboxLine,
  type OwnPhoto,
  type RefusedLine,
} from './lines.ts'

interface LocalSchema extends DBSchema {
  meta: { key: string; value: unknown }
  outbox: { key: number; value: OutboxLine }
  refused: { key: number; value: RefusedLine }
  book: { key: string; value: AnyBookEntry }
  registers: { key: string; value: KeptRegister }
  texts: { key: string; value: KeptText }
  photos: { key: string; value: OwnPhoto }
  photoBytes: { key: string; value: ArrayBuffer }
}
export type LocalDb = IDBPDatabase<LocalSchema>

const storeNames = ['meta', 'outbox', 'refused', 'book', 'registers', 'texts', 'photos', 'photoBytes'] as const
/** Relaxed durability answers before the bytes are on the disk: a tablet that loses power then loses what it called kept. */
const strictly = { durability: 'strict' } as const

export function openLocalDb(workshop: string): Promise<LocalDb> {
  return openDB<LocalSchema>(`legwork-${workshop}`, 2, {
    upgrade(db, from) {
      if (from < 2) {
        db.createObjectStore('photos', { keyPath: 'digest' })
        db.createObjectStore('photoBytes')
      }
      if (from > 0) return
      db.createObjectStore('meta')
      db.createObjectStore('outbox', { keyPath: 'stationNo' })
      db.createObjectStore('refused', { keyPath: 'stationNo' })
      db.createObjectStore('book', { keyPath: 'id' })
      db.createObjectStore('registers', { keyPath: 'key' })
      db.createObjectStore('texts', { keyPath: 'digest' })
    },
  })
}

export interface Everything {
  meta: Meta
  outbox: OutboxLine[]
  refused: RefusedLine[]
  book: AnyBookEntry[]
  registers: KeptRegister[]
  texts: KeptText[]
  /** Without their bytes. */
  photos: OwnPhoto[]
}

/** All that a station has, as it was when the transaction began. */
export async function readEverything(db: LocalDb): Promise<Everything> {
  const tx = db.transaction(storeNames)
  const [names, values, outbox, refused, book, registers, texts, photos] = await Promise.all([
    tx.objectStore('meta').getAllKeys(),
    tx.objectStore('meta').getAll(),
    tx.objectStore('outbox').getAll(),
    tx.objectStore('refused').getAll(),
    tx.objectStore('book').getAll(),
    tx.objectStore('registers').getAll(),
    tx.objectStore('texts').getAll(),
    tx.objectStore('photos').getAll(),
  ])
  await tx.done
  const said = Object.fromEntries(names.map((name, index) => [name, values[index]]))
  return { meta: { ...emptyMeta, ...said }, outbox, refused, book, registers, texts, photos }
}

function writeTransaction(db: LocalDb) {
  return db.transaction(storeNames, 'readwrite', strictly)
}
type WriteTransaction = ReturnType<typeof writeTransaction>

function putChange(tx: WriteTransaction, change: Change): void {
  const put = <Name extends (typeof storeNames)[number]>(name: Name) => tx.objectStore(name)
  const book = put('book')
  // The server's place in the book may be here before its answer, which is without it: it stays.
  for (const entry of change.entries ?? []) void book.get(entry.id).then((had) => book.put({ ...had, ...entry }))
  for (const text of change.texts ?? []) put('texts').put(text)
  for (const line of change.registers ?? []) put('registers').put(line)
  for (const line of change.kept ?? []) put('outbox').put(line)
  for (const number of change.left ?? []) put('outbox').delete(number)
  for (const line of change.refused ?? []) put('refused').put(line)
  for (const number of change.readAway ?? []) put('refused').delete(number)
  for (const photo of change.photos ?? []) put('photos').put(photo)
  for (const digest of change.photosGone ?? []) {
    put('photos').delete(digest)
    put('photoBytes').delete(digest)
  }
  for (const [name, value] of Object.entries(change.meta ?? {})) put('meta').put(value, name)
}

/** Writes a change in one transaction; it is on the disk when the promise is kept. */
export async function commitChange(db: LocalDb, change: Change): Promise<void> {
  const tx = writeTransaction(db)
  putChange(tx, change)
  await tx.done
}

/** Keeps a photo with its bytes; both are on the disk when the promise is kept. */
export async function commitPhoto(db: LocalDb, photo: OwnPhoto, bytes: ArrayBuffer): Promise<Change> {
  const tx = writeTransaction(db)
  const change: Change = { photos: [photo] }
  putChange(tx, change)
  tx.objectStore('photoBytes').put(bytes, photo.digest)
  await tx.done
  return change
}

/** Puts lines into the outbox; their numbers are given in the same transaction, so that two pages never give one twice. */
export async function appendLines(
  db: LocalDb,
  make: (firstNo: number) => readonly OutboxLine[],
  texts: readonly KeptText[],
): Promise<Change> {
  const tx = writeTransaction(db)
  const stored = await tx.objectStore('meta').get('lastNo')
  const last = typeof stored === 'number' ? stored : 0
  const kept = make(last + 1)
  const change: Change = { kept, texts, meta: { lastNo: last + kept.length } }
  putChange(tx, change)
  await tx.done
  return change
}
