/** An oil as its data sheet knows it: viscosity at two temperatures, or at 40 °C with its index. */
import { type OilKnown, Refusal } from '@legwork/engine'
import { z } from 'zod'
import { count, quantity, ways } from './fields.ts'

export const oilFields = {
  points: z
    .array(z.strictObject({ temperature: quantity('temperature'), viscosity: quantity('viscosity') }))
    .max(10)
    .optional(),
  viscosity40: quantity('viscosity').optional(),
  viscosityIndex: count.optional(),
}
export const oilWays = ways(['points'], ['viscosity40', 'viscosityIndex'])

interface Given {
  readonly points?: readonly { temperature: number; viscosity: number }[] | undefined
  readonly viscosity40?: number | undefined
  readonly viscosityIndex?: number | undefined
}

/** @throws Refusal where it is given in neither way, or in both; `at` is where it stands, with its dot */
export function knownOil({ points, viscosity40, viscosityIndex }: Given, at = ''): OilKnown {
  const index = viscosity40 !== undefined && viscosityIndex !== undefined
  if (points && viscosity40 === undefined && viscosityIndex === undefined) return { points }
  if (!points && index) return { viscosity40, viscosityIndex }
  const allowed = 'two points, or viscosity40 and viscosityIndex'
  const came = points ? 'there with viscosity40 or viscosityIndex' : 'missing, and not both of the other two are there'
  const next = 'Give one of the two ways.'
  throw new Refusal([{ field: `${at}points`, code: 'wrong-form', came, allowed, next }])
}
