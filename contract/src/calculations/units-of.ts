/** Units of what comes out, read off its schema. */
import { z } from 'zod'

/** A part of a JSON Schema, as far as calculations use it. */
export interface SchemaPart {
  type?: string | string[]
  const?: unknown
  enum?: unknown[]
  default?: unknown
  description?: string
  properties?: Record<string, SchemaPart>
  required?: string[]
  additionalProperties?: boolean | SchemaPart
  items?: boolean | SchemaPart
  prefixItems?: SchemaPart[]
  minItems?: number
  maxItems?: number
  anyOf?: SchemaPart[]
  /** Of a choice by kind: a part each. Of an object asked in one of several ways: which fields each way needs. */
  oneOf?: SchemaPart[]
  /** Kind of the quantity. */
  'x-quantity'?: string
  'x-unit'?: string
  /** The one measure it is read in, where its name means that measure. */
  'x-measure'?: string
}

/** Unit of every numeric path of a schema, `[]` for each of a list, `*` for a name the question chooses. */
function unitsIn(part: SchemaPart, path = ''): [string, string][] {
  if (part['x-unit'] !== undefined) return [[path, part['x-unit']]]
  const under = (key: string) => (path === '' ? key : `${path}.${key}`)
  const found = Object.entries(part.properties ?? {}).flatMap(([key, inner]) => unitsIn(inner, under(key)))
  if (typeof part.additionalProperties === 'object') found.push(...unitsIn(part.additionalProperties, under('*')))
  const items = [...(part.prefixItems ?? []), ...(typeof part.items === 'object' ? [part.items] : [])]
  found.push(...items.flatMap((inner) => unitsIn(inner, `${path}[]`)))
  found.push(...[...(part.anyOf ?? []), ...(part.oneOf ?? [])].flatMap((inner) => unitsIn(inner, path)))
  return found
}

/** The JSON Schema of a calculation's input or output. */
export function schemaPart(schema: z.ZodType, io: 'input' | 'output'): SchemaPart {
  const { $schema: _dialect, ...made } = z.toJSONSchema(schema, {
    io,
    // The library drops the default of a field that is read from a text.
    override({ zodSchema, jsonSchema }) {
      const instead = z.globalRegistry.get(zodSchema)?.default
      if (instead !== undefined) Object.assign(jsonSchema, { default: instead })
    },
  })
  // What our schemas give is of this form; the library's own type allows every form there is.
  return made as SchemaPart
}

/** @example unitsOf(z.strictObject({ load: si('force') })) // {"load":"N"} */
export function unitsOf(output: z.ZodType): Record<string, string> {
  return Object.fromEntries(unitsIn(schemaPart(output, 'output')))
}
