/** Codes that only the server refuses with; `docs/errors.md` says the same. */
import type { z } from 'zod'

export const serverCodes = {
  'host.wrong': 'A request that was meant for another host or port.',
  'origin.wrong': 'A write that comes from another page than Legwork’s own.',
  'path.unknown': 'Nothing answers at this address, or not to this method.',
  'body.not-json': 'A body that is no JSON, or none where one is needed.',
  'body.too-large': 'A body larger than is taken here.',
  'body.media-type': 'A body of a media type that is not taken here.',
  'workshop.unknown': 'A workshop that this server does not have.',
  'station.unknown': 'A station that is not signed in to this workshop.',
  'station.elsewhere': 'A station that is signed in to another workshop.',
  'delivery.gap': 'A line whose number leaves out one before it: the missing ones are delivered first.',
  'delivery.number-used': 'A number of a station that another line had: two tablets go by one name.',
  'entry.kind-unknown': 'An entry of a kind that this version does not know.',
  'entry.version-unknown': 'An entry of a newer version than this server reads.',
  'entry.person-unknown': 'An entry by somebody who is not of this workshop.',
  'entry.id-reused': 'A new entry under the id of another.',
  'text.digest-wrong': 'A text of another SHA-256 digest than the entry names.',
  'register.stale': 'A line of a register that was changed elsewhere since it was read.',
  'sheet.unknown': 'A sheet that is not here.',
  'sheet.revision-frozen': 'A change to a revision of a sheet that plans rest on: it takes a new revision.',
  'unit.sheet-unknown': 'A unit whose sheet is not here.',
  'rider.unknown': 'A rider who is not here, or whose name was erased.',
  'rider.removed': 'A change to a rider who was removed: nothing comes back.',
  'job.unknown': 'A job that is not here.',
  'job.not-stopped': 'A written notice of a job that is not stopped.',
  'card.no-spring': 'A start card of a unit whose sheet has no air fork’s chambers.',
  'due.no-hours': 'A calendar of due dates without the hours that they rest on.',
} as const

type Hyphened<S extends string> = S extends `${infer Head}_${infer Tail}` ? `${Head}-${Hyphened<Tail>}` : S

/** What the schema of a route, an entry or a register says: `schema.` and the kind of what is wrong. */
export const schemaCodes = {
  'schema.invalid-type': 'A value of another type, or none where one is needed.',
  'schema.invalid-value': 'A value that is not among those allowed.',
  'schema.invalid-format': 'A text that is not written as its field is, such as a day or an id.',
  'schema.too-small': 'Less, shorter or fewer than is allowed.',
  'schema.too-big': 'More, longer or larger than is allowed.',
  'schema.not-multiple-of': 'A number that is no multiple of what is counted in.',
  'schema.unrecognized-keys': 'A field that nobody asked for.',
  'schema.invalid-union': 'Neither of several forms.',
  'schema.invalid-key': 'A name in a table that is not allowed there.',
  'schema.invalid-element': 'A part of a set that is not allowed there.',
  'schema.custom': 'A value that another rule of its field forbids.',
} as const satisfies Record<`schema.${Hyphened<z.core.$ZodIssue['code']>}`, string>
