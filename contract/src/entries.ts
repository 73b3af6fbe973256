/** The body of every kind of entry, by kind; entries of an older version are lifted to the newest before they are read. */
import type { EntryBodies, EntryKind } from '@legwork/trade'
import { z } from 'zod'
import { digest, id, instant } from './delivery.ts'

const finite = z.number()
const photos = z.array(digest).readonly()
const leg = z.enum(['left', 'right'])
export const reading = z.strictObject({
  value: finite,
  measure: z.enum(['m', 'Pa', 'm³', 'N', 's', 'N·m', 'K', 'clicks', 'count', 'm²/s', '1']),
  instrument: id.nullable(),
  how: z.enum(['pumped', 'attached']).nullable(),
})
const stroke = finite.min(0).max(0.5)
const pressedAt = z.strictObject({
  of: id,
  stroke,
  way: z.enum(['pressing', 'releasing']),
  held: finite.min(0).max(3600).nullable(),
})
const releasedFrom = z.strictObject({
  from: stroke,
  to: stroke,
  clicks: z.number().min(0).max(100).nullable(),
  film: z.strictObject({ pictures: z.number().int().min(1), perSecond: finite.min(1).max(100_000) }).nullable(),
})
const gate = z.templateLiteral(['R', z.number().int().min(1).max(27)])
const plannedStep = z.strictObject({
  step: z.string().min(1),
  procedure: z.string().min(1),
  revision: z.number().int().min(1),
  legs: z.array(leg).readonly().nullable(),
  minutes: finite.min(0),
})
const clicks = z.number().min(0).max(100).nullable()
const temperature = finite.min(200).max(420)
const pressure = finite.min(-1.1e5).max(1e8)
const fraction = finite.min(0).max(1)

export const entryBodies: { [K in EntryKind]: z.ZodType<EntryBodies[K]> } = {
  'job-opened': z.strictObject({
    unit: id,
    rider: id.nullable(),
    bike: id.nullable(),
    visit: id,
    asked: digest.nullable(),
    spendAllowed: finite.min(0).nullable(),
  }),
  'snapshot-kept': z
    .strictObject({
      item: z.enum(['length', 'ring', 'photos', 'pressure', 'rebound', 'compression']),
      reading: reading.nullable(),
      photos,
      notKnownBecause: digest.nullable(),
    })
    .refine((body) => body.reading !== null || body.photos.length > 0 || body.notKnownBecause !== null, {
      error: 'a reading, photos, or why it is not known',
    }),
  'chassis-checked': z.strictObject({
    part: z.enum(['crown', 'steerer', 'stanchions', 'lower-legs', 'dropouts']),
    verdict: z.enum(['sound', 'condemned']),
    found: digest.nullable(),
    photos: photos.optional(),
  }),
  'sign-noted': z.strictObject({
    sign: z.string().regex(/^[ST]\d{2}$/),
    state: z.enum(['present', 'absent', 'unknown']),
    by: z.enum(['said', 'seen']),
  }),
  'history-said': z.discriminatedUnion('what', [
    z.strictObject({
      what: z.enum(['crashed', 'second-hand', 'serviced-lately']),
      value: z.boolean().nullable(),
    }),
    z.strictObject({ what: z.literal('hours-since'), value: finite.min(0).max(100_000).nullable() }),
  ]),
  measured: z.strictObject({
    what: z.string().min(1).max(60),
    leg: leg.nullable(),
    phase: z.enum(['received', 'during', 'done']),
    reading,
    press: pressedAt.exactOptional(),
    release: releasedFrom.exactOptional(),
  }),
  'plan-agreed': z
    .strictObject({
      /** Empty where the answer is no. */
      services: z.array(z.string()),
      sheet: z.strictObject({ id, revision: z.string().min(1) }),
      steps: z.array(plannedStep),
      answer: z.enum(['yes', 'no', 'partly']),
      declined: z.array(z.string()),
      answeredBy: z.enum(['rider', 'workshop']),
      price: finite.min(0).optional(),
    })
    .refine((body) => body.services.length > 0 || body.answer === 'no', {
      path: ['services'],
      error: 'at least one service, or the answer no',
    }),
  'set-up-worked-out': z.strictObject({
    pressure,
    band: z.tuple([pressure, pressure]),
    temperature,
    ambient: finite.min(1000).max(2e5),
    riderMass: finite.min(10).max(300),
    frontShare: fraction,
    sag: fraction,
    load: finite.min(0).max(1e4),
    spacers: finite.min(0).max(20),
  }),
  'step-done': z.strictObject({
    step: z.string().min(1),
    leg: leg.nullable(),
    reading: reading.nullable(),
    wrenchSet: finite.min(0).max(500).nullable(),
    saidSo: z.array(gate),
    used: digest.nullable().exactOptional(),
  }),
  'sag-measured': z.strictObject({
    fromAbove: finite.min(0).max(0.5),
    fromBelow: finite.min(0).max(0.5),
    instrument: id.nullable(),
  }),
  'trail-said': z.strictObject({ altitude: finite.min(-1000).max(11_000), temperature: finite.min(220).max(340) }),
  'setting-written': z.strictObject({
    pressure,
    temperature,
    pump: id.nullable(),
    spacers: finite.min(0).max(20),
    clicks: z.strictObject({ rebound: clicks, compression: clicks }),
  }),
  'put-back': z.strictObject({
    item: z.enum(['wheel', 'axle', 'caliper', 'cables', 'brake-holds', 'wheel-free']),
    reading: reading.nullable(),
  }),
  'gate-waived': z.strictObject({ gate, reason: digest }),
  'taken-over': z.strictObject({ from: id.nullable() }),
  waiting: z.strictObject({
    for: z.enum(['answer', 'part', 'specialist', 'rest', 'rider']).nullable(),
    rest: z.enum(['soak', 'settle', 'leak']).nullable(),
    until: instant.nullable(),
    why: digest.nullable(),
  }),
  stopped: z.strictObject({ gate: gate.nullable(), why: digest }),
  'stop-lifted': z.strictObject({ why: digest }),
  ready: z.strictObject({ minutes: finite.min(0).nullable() }),
  'handed-over': z.strictObject({ receivedBy: digest, initials: digest.nullable() }),
  'called-off': z.strictObject({ why: digest }),
  noted: z.strictObject({ text: digest, photos: photos.optional() }),
  struck: z.strictObject({ entry: id, reason: digest }),
  ruled: z.strictObject({ entry: id, ruling: z.enum(['stands', 'struck']), reason: digest }),
}
