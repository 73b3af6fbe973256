/** The shop of the model's stories: sheets, units and people in its registers, and the lines of a job begun so far. */
import {
  demoSheet,
  demoUnits,
  type EntryBodies,
  type EntryKind,
  type Id,
  type JobContext,
  type Role,
  type Sheet,
} from '@legwork/trade'
import { WrittenJob } from '@legwork/trade/journal/written-job.ts'
import { Shop } from '../shop-for-tests.ts'
import { openSqlite } from '../store/sqlite/open-sqlite.ts'
import type { Beginning, Story } from './story.ts'

const psi = 6894.757293168
const measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' } as const

/** A line of a job before anybody has made it. */
export type Written = { [K in EntryKind]: { kind: K; body: EntryBodies[K] } }[EntryKind]

/** Up to which step of the plan a beginning has worked; null for all of it. */
const workedTo: Partial<Record<NonNullable<Beginning>, string | null>> = {
  'foot-off': 'foot-off',
  'lowers-on': 'lowers-on',
  'foot-torque': 'foot-torque',
  filling: 'fill-half',
  filled: null,
}

/** The lines of a job begun so far, after its opening; worked out once. */
export function beginningOf(sheet: Sheet, service: string, beginning: Beginning): readonly Written[] {
  const key = `${sheet.id} ${service} ${beginning}`
  const lines = begun.get(key) ?? beginOf(sheet, service, beginning)
  begun.set(key, lines)
  return lines
}
const begun = new Map<string, readonly Written[]>()

function beginOf(sheet: Sheet, service: string, beginning: Beginning): readonly Written[] {
  const job = new WrittenJob(sheet).open()
  if (beginning !== null) {
    job.keepSnapshot().lookOver()
    job.plan([service])
    const last = workedTo[beginning]
    if (last !== undefined) job.workUntil(last)
  }
  // Kind and body come from one entry.
  return job.entries.slice(1).map(({ kind, body }) => ({ kind, body }) as Written)
}

export interface ModelShop {
  shop: Shop
  people: { owner: Id; technician: Id; junior: Id }
  pump: Id
  of: (unit: Story['unit']) => { unit: Id; sheet: Sheet; context: Omit<JobContext, 'now'> }
}

/** In memory: a story is about order, and thousands of them would be a long wait for a disk. */
export async function openModelShop(): Promise<ModelShop> {
  const create = async () => ({ open: () => openSqlite(':memory:'), url: null, drop: async () => undefined })
  const shop = await Shop.open({ create }, new Date('2026-01-05T08:00:00Z'))
  const station = await shop.station()
  const technician = { id: shop.freshId(), name: 'Bram', initials: 'B.', role: 'technician', measures } as const
  const junior = { id: shop.freshId(), name: 'Sunniva', initials: 'S.', role: 'junior', measures } as const
  await shop.deliver(station, [shop.register(1, 'people', technician), shop.register(2, 'people', junior)])
  const roles = new Map<Id, Role>([
    [shop.owner, 'owner'],
    [technician.id, technician.role],
    [junior.id, junior.role],
  ])
  const units = new Map<string, ReturnType<ModelShop['of']>>()
  let no = 2
  for (const key of ['U01', 'U07', 'U08'] as const) {
    const demo = demoUnits.find((one) => one.key === key)
    if (!demo) throw new Error(`no demo unit ${key}`)
    const plain = demoSheet(demo, shop.freshId())
    const { source } = plain.stroke
    // The yardstick has one maximum for all; the cap's torque is empty on the demo sheets.
    const spring = { ...plain.spring, capTorque: { value: 25, source } }
    const sheet: Sheet = { ...plain, spring, maxPressure: { value: 140 * psi, source } }
    const { kind, description } = demo
    const unit = {
      id: shop.freshId(),
      label: key,
      kind,
      description,
      serial: null,
      rider: null,
      bike: null,
      sheet: sheet.id,
    }
    await shop.deliver(station, [shop.register(++no, 'sheets', sheet), shop.register(++no, 'units', unit)])
    const sheetAt: JobContext['sheetAt'] = (id, revision) =>
      id === sheet.id && revision === sheet.revision ? sheet : undefined
    const roleOf = (person: Id): Role | null => roles.get(person) ?? null
    units.set(key, { unit: unit.id, sheet, context: { unit, currentSheet: sheet, sheetAt, roleOf } })
  }
  return {
    shop,
    people: { owner: shop.owner, technician: technician.id, junior: junior.id },
    pump: shop.freshId(),
    of(key) {
      const found = units.get(key)
      if (!found) throw new Error(`no unit ${key}`)
      return found
    },
  }
}
