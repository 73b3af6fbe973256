/** Lines of the registers: written with a version, every version kept. */
import type { FieldError, registerItem } from '@legwork/contract'
import { fieldErrors, registerBodies } from '@legwork/contract'
import type { Id, RegisterName, Registers, Sheet } from '@legwork/trade'
import type { z } from 'zod'
import type { Writer } from '../store/store.ts'
import { removedOn } from './removed-rider.ts'

export type RegisterItem = z.infer<typeof registerItem>
export type RegisterOutcome =
  | { status: 'written'; version: number; overtook: number | null }
  | { status: 'refused'; errors: FieldError[] }

export interface RegisterPlace {
  workshop: Id
  station: Id | null
  person: Id | null
  position: number
  at: string
}

/** What the database watches by column, beside the body. */
export function watchedColumns(register: RegisterName, body: Registers[RegisterName]): Record<string, unknown> {
  const has = (name: string): unknown => Reflect.get(body, name) ?? null
  switch (register) {
    case 'people':
      return { name: has('name') }
    case 'riders':
      return { name: has('name'), mass: has('mass') }
    case 'bikes':
      return { head_angle: has('headAngle') }
    case 'units':
      return { label: has('label'), sheet: has('sheet') }
    case 'sheets': {
      const sheet = body as Sheet // `register` says so
      return { revision: sheet.revision, stroke: sheet.stroke.value }
    }
    case 'instruments':
      return { hose_volume: has('hoseVolume') }
    case 'visits':
      return { promised: has('promised') }
  }
}

async function sheetIsFrozen(write: Writer, workshop: Id, sheet: Sheet): Promise<boolean> {
  const rows = await write
    .selectFrom('register_history')
    .select('body')
    .where('workshop', '=', workshop)
    .where('register', '=', 'sheets')
    .where('id', '=', sheet.id)
    .execute()
  const text = JSON.stringify(sheet)
  return rows.some((row) => (JSON.parse(row.body) as Sheet).revision === sheet.revision && row.body !== text)
}

/** Writes one line; `position` is taken only when the outcome is `written`. */
export async function writeRegister(write: Writer, item: RegisterItem, place: RegisterPlace): Promise<RegisterOutcome> {
  const { register } = item
  const checked = registerBodies[register].safeParse(item.body)
  if (!checked.success) return { status: 'refused', errors: fieldErrors(checked.error, item.body, register) }
  const body = checked.data
  const { workshop, station, person, position, at } = place
  const current = await write
    .selectFrom(register)
    .select('version')
    .where('workshop', '=', workshop)
    .where('id', '=', body.id)
    .executeTakeFirst()
  const version = current?.version ?? 0
  if (register === 'riders' && (await removedOn(write, workshop, body.id)) !== null)
    return refused(
      'riders.id',
      'rider.removed',
      body.id,
      'a rider who was not removed',
      'Take the rider in anew if they came back and agree to it.',
    )
  if (item.made === 'online' && item.seenVersion !== version)
    return refused(
      `${register}.version`,
      'register.stale',
      String(item.seenVersion),
      String(version),
      'Look at the newer line, then write yours again.',
    )
  if (register === 'sheets' && (await sheetIsFrozen(write, workshop, body as Sheet)))
    return refused(
      'sheets.revision',
      'sheet.revision-frozen',
      (body as Sheet).revision,
      'a revision that is not taken',
      'Give the changed sheet a new revision: plans rest on the old one.',
    )
  if (register === 'units') {
    const unit = body as Registers['units'] // `register` says so
    const sheet = await write
      .selectFrom('sheets')
      .select('id')
      .where('workshop', '=', workshop)
      .where('id', '=', unit.sheet)
      .executeTakeFirst()
    if (!sheet)
      return refused(
        'units.sheet',
        'unit.sheet-unknown',
        unit.sheet,
        'a sheet of this workshop',
        'Write the sheet first.',
      )
  }
  const text = JSON.stringify(body)
  const line = {
    workshop,
    station,
    person,
    id: body.id,
    version: version + 1,
    body: text,
    changed_at: at,
    ...watchedColumns(register, body),
  }
  // The columns are those of `register`; Kysely cannot see that name and columns go together.
  if (version === 0)
    await write
      .insertInto(register)
      .values(line as never)
      .execute()
  else
    await write
      .updateTable(register)
      .set(line as never)
      .where('workshop', '=', workshop)
      .where('id', '=', body.id)
      .execute()
  await write
    .insertInto('register_history')
    .values({
      workshop,
      station,
      person,
      register,
      id: body.id,
      version: version + 1,
      change_id: item.id,
      position,
      body: text,
      changed_at: at,
    })
    .execute()
  return { status: 'written', version: version + 1, overtook: item.seenVersion < version ? version : null }
}

function refused(field: string, code: string, came: string, allowed: string, next: string): RegisterOutcome {
  return { status: 'refused', errors: [{ field, code, came, allowed, next }] }
}
