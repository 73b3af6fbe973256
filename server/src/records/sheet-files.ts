/** A workshop's sheets as files: one revision out; a file in as a new sheet or one more revision. */
import { randomBytes } from 'node:crypto'
import type { RegistersAnswer } from '@legwork/contract'
import { type Id, newId, type Sheet, takeInSheetFile, writeSheetFile } from '@legwork/trade'
import type { Store } from '../store/store.ts'
import { readRegisters } from './read.ts'
import { writeRegister } from './registers.ts'
import { Trouble } from './trouble.ts'

export interface SheetFileIn {
  person: Id
  file: string
  /** What other people measured counts as a handbook's value. */
  elsewhere: boolean
}

export interface SheetFileWritten {
  became: 'new' | 'revision' | 'same'
  id: Id
  name: string
  revision: string
}

const names = <Line extends { body: { id: Id; name: string } }>(lines: readonly Line[]) => ({
  named: (name: string): Id | null => lines.find(({ body }) => body.name === name || body.id === name)?.body.id ?? null,
  nameOf: (id: Id): string | null => lines.find(({ body }) => body.id === id)?.body.name ?? null,
})

function oldestFirst(registers: RegistersAnswer): readonly Sheet[] {
  return [...registers.sheets].sort((one, other) => one.version - other.version).map(({ body }) => body)
}

/**
 * One revision of a sheet as a file; the newest one unless another is asked for.
 *
 * @throws Trouble 404 for a sheet or revision that is not here
 */
export async function readSheetAsFile(
  store: Store,
  workshop: Id,
  asked: { sheet: Id; revision: string | undefined },
): Promise<{ name: string; text: string }> {
  const registers = await readRegisters(store.read, workshop)
  const revisions = oldestFirst(registers).filter(({ id }) => id === asked.sheet)
  const { revision } = asked
  const found = revision === undefined ? revisions.at(-1) : revisions.findLast((one) => one.revision === revision)
  if (!found)
    throw new Trouble(404, 'No such sheet', [
      {
        field: revision === undefined ? 'sheet' : 'revision',
        code: 'sheet.unknown',
        came: revision ?? asked.sheet,
        allowed: revisions.map((one) => one.revision).join(', ') || 'a sheet of this workshop',
        next: 'Ask for the list of sheets.',
      },
    ])
  const text = writeSheetFile(found, {
    person: names(registers.people).nameOf,
    instrument: names(registers.instruments).nameOf,
  })
  return { name: `${found.name} ${found.revision}`.replaceAll(/[^\p{L}\p{N}.-]+/gu, '-'), text }
}

/**
 * Reads a sheet's file in, all of it or nothing.
 *
 * @throws Trouble 422 with every error of the file, its line and column; 404 for a workshop that is not here
 */
export async function writeSheetFromFile(
  store: Store,
  workshop: Id,
  { person, file, elsewhere }: SheetFileIn,
  now: Date,
): Promise<SheetFileWritten> {
  return store.write(async (write) => {
    const lock = write.selectFrom('workshop').select('last_position').where('id', '=', workshop)
    const shop = await (store.kind === 'postgres' ? lock.forUpdate() : lock).executeTakeFirst()
    const registers = await readRegisters(write, workshop)
    if (!registers.people.some(({ body }) => body.id === person))
      throw new Trouble(422, 'Nobody of this workshop', [
        {
          field: 'person',
          code: 'entry.person-unknown',
          came: person,
          allowed: 'a person of this workshop',
          next: 'Say whose hands are on.',
        },
      ])
    const fresh = (): Id => newId(now.getTime(), randomBytes(10))
    const taken = takeInSheetFile(file, {
      sheets: oldestFirst(registers),
      names: { person: names(registers.people).named, instrument: names(registers.instruments).named, elsewhere },
      newId: fresh,
    })
    if (!taken.ok) throw new Trouble(422, 'The file was not read in', taken.errors)
    const { became, sheet } = taken
    const { id, name, revision } = sheet
    if (became === 'same') return { became, id, name, revision }
    const seenVersion = Math.max(0, ...registers.sheets.filter(({ body }) => body.id === id).map((one) => one.version))
    const position = (shop?.last_position ?? 0) + 1
    const at = now.toISOString()
    const line = { is: 'register', made: 'online', id: fresh(), stationNo: 1, person, madeAt: at } as const
    const outcome = await writeRegister(
      write,
      { ...line, register: 'sheets', seenVersion, body: sheet },
      { workshop, station: null, person, position, at },
    )
    if (outcome.status === 'refused') throw new Trouble(422, 'The file was not read in', outcome.errors)
    await write.updateTable('workshop').set({ last_position: position }).where('id', '=', workshop).execute()
    return { became, id, name, revision }
  })
}
