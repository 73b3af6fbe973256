/** Lines of the registers. */
import { checkSheet, type RegisterName, type Registers } from '@legwork/trade'
import { z } from 'zod'
import { id, instant } from './delivery.ts'

const text = z.string().min(1).max(200)
const source = z.strictObject({
  kind: z.enum(['makers-sheet', 'measured-here', 'worked-out', 'handbook', 'common-practice', 'rider-said']),
  document: text.nullable(),
  revision: text.nullable(),
  page: text.nullable(),
  person: id.nullable(),
  at: instant.nullable(),
  instrument: id.nullable(),
})
const sourced = (value: z.ZodNumber) => z.strictObject({ value, source })
const length = sourced(z.number().min(0).max(2))
const volume = sourced(z.number().min(0).max(0.01))
const any = sourced(z.number())

export const measures = z.strictObject({
  pressure: z.enum(['psi', 'bar']),
  torque: z.enum(['N·m', 'in·lbf']),
  temperature: z.enum(['°C', '°F']),
  length: z.enum(['mm', 'in']),
})
export const person = z.strictObject({
  id,
  name: text,
  initials: z.string().min(1).max(12),
  role: z.enum(['owner', 'technician', 'junior', 'desk', 'reader']),
  measures,
})

const torque = sourced(z.number().min(0).max(100))
const legSheet = z.strictObject({
  role: z.enum(['spring', 'damper', 'both']),
  fixing: z.enum(['hollow-bolt', 'nut-on-shaft', 'bolt-behind-knob', 'captive-bolt']).nullable(),
  sources: z.strictObject({ role: source.exactOptional(), fixing: source.exactOptional() }).exactOptional(),
  bathOil: volume.nullable(),
  bathOilViscosity: sourced(z.number().min(0).max(0.01)).nullable(),
  washer: z.strictObject({ value: text, source }).nullable(),
  footTorque: torque.nullable(),
})
const kind = z.enum(['fork-air', 'fork-coil', 'shock-air', 'shock-coil'])
const named = { id, name: text, note: z.string().max(500).nullable(), putAway: z.literal(true).exactOptional() }
const zeroOrMore = z.number().min(0)
const hoseVolume = zeroOrMore.max(1e-3)
const hoseGauge = {
  hoseVolume,
  offset: z.number().min(-0.5).max(0.5),
  resolution: zeroOrMore.max(1e6),
  hose: z
    .strictObject({
      readings: z.array(zeroOrMore.max(2e7)).min(2).max(20).readonly(),
      volume: z.number().min(1e-7).max(0.01),
      unit: id.nullable(),
      band: z.tuple([hoseVolume, hoseVolume]).readonly(),
      person: id,
      at: instant,
    })
    .exactOptional(),
}

/** What a schema can't say of a sheet: ranges of its kind, dimensions that can't be together. */
function asSheet(sheet: unknown, context: z.RefinementCtx): void {
  const check = checkSheet(sheet)
  for (const { field, code, allowed } of check.ok ? [] : check.errors)
    context.addIssue({ code: 'custom', path: field.split('.'), message: allowed, params: { code } })
}

export const registerBodies: { [R in RegisterName]: z.ZodType<Registers[R]> } = {
  people: person,
  riders: z.strictObject({
    id,
    name: text,
    mass: z.number().min(10).max(300).nullable(),
    posture: text.nullable(),
    frontShare: z.number().min(0).max(1).nullable(),
    hoursPerWeek: z.number().min(0).max(100).nullable(),
    contact: z.string().max(200).nullable(),
    pump: z
      .strictObject({ offset: z.number().min(-0.5).max(0.5), hoseVolume: z.number().min(0).max(5e-5) })
      .exactOptional(),
    removedOn: instant.exactOptional(),
  }),
  bikes: z.strictObject({
    id,
    rider: id.nullable(),
    name: text,
    headAngle: z.number().min(40).max(85).nullable(),
    frontMass: z.number().min(0).max(60).nullable(),
    leverage: z.number().min(0.5).max(6).nullable(),
    rearSprungMass: z.number().min(0).max(300).nullable(),
  }),
  units: z.strictObject({
    id,
    label: z.string().min(1).max(20),
    kind,
    description: text,
    serial: z.string().max(80).nullable(),
    rider: id.nullable(),
    bike: id.nullable(),
    sheet: id,
  }),
  sheets: z
    .strictObject({
      id,
      name: text,
      revision: z.string().min(1).max(20),
      generic: z.boolean(),
      kind,
      body: z.enum(['single-crown', 'dual-crown', 'in-line', 'piggyback']),
      damper: z.enum(['open-bath', 'sealed-cartridge', 'bladder-cartridge', 'in-line-ifp', 'piggyback-ifp']),
      stanchion: length.nullable(),
      stroke: sourced(z.number().min(0.01).max(0.5)),
      spring: z.record(z.string(), any),
      springKind: z.enum(['air', 'coil']),
      spacers: sourced(z.number().min(0).max(20)).nullable(),
      lowerVolume: volume.nullable(),
      maxPressure: sourced(z.number().min(1e4).max(1e8)).nullable(),
      freeLength: length.nullable(),
      bushings: z.strictObject({ a: length, b: length }).nullable(),
      clicks: z.strictObject({
        rebound: sourced(z.number().min(0).max(100)).nullable(),
        compression: sourced(z.number().min(0).max(100)).nullable(),
      }),
      legs: z.strictObject({ left: legSheet, right: legSheet }).nullable(),
      torques: z
        .strictObject({
          axle: torque.nullable().exactOptional(),
          caliper: torque.nullable().exactOptional(),
          lowerClamp: torque.nullable().exactOptional(),
          upperClamp: torque.nullable().exactOptional(),
        })
        .exactOptional(),
      limits: z.record(
        z.string(),
        z.strictObject({
          watch: z.number().exactOptional(),
          fail: z.number().exactOptional(),
          watchBelow: z.number().exactOptional(),
          failBelow: z.number().exactOptional(),
          source,
        }),
      ),
    })
    .superRefine(asSheet),
  instruments: z.discriminatedUnion('kind', [
    z.strictObject({ ...named, kind: z.literal('pump'), ...hoseGauge }),
    z.strictObject({ ...named, kind: z.literal('gauge'), ...hoseGauge }),
    z.strictObject({
      ...named,
      kind: z.literal('wrench'),
      low: zeroOrMore,
      high: z.number().min(0.1).max(500),
      class: z.number().min(0).max(0.5),
      length: z.number().min(0.01).max(2),
      adapterLength: zeroOrMore.max(1),
    }),
    z.strictObject({
      ...named,
      kind: z.enum(['tape', 'caliper', 'scale', 'thermometer', 'measuring-cylinder', 'other']),
      resolution: zeroOrMore,
    }),
  ]),
  visits: z.strictObject({
    id,
    rider: id.nullable(),
    promised: z.iso.date().nullable(),
    leftWith: z.string().max(500).nullable(),
  }),
}
