/** What this station itself knows of the words that are looked for: at once, and without the network. */
import type { SearchHit } from '@legwork/contract'
import type { Rider, Stream, Unit } from '@legwork/trade'
import { beginsIn } from '@legwork/trade/words/found-by.ts'

export interface KnownJob {
  stream: Stream
  number: string | null
  unit: Unit | undefined
  rider: Rider | undefined
  asked: string | null
}

interface Known {
  units: readonly Unit[]
  riders: readonly Rider[]
  jobs: readonly KnownJob[]
}

const most = 30

/**
 * Units, riders and jobs, in this order, whose words begin with those looked for.
 *
 * @param looked  words in any order; nothing finds nothing
 */
export function foundHere(looked: string, { units, riders, jobs }: Known): readonly SearchHit[] {
  const ownerOf = (unit: Unit): string => riders.find(({ id }) => id === unit.rider)?.name ?? ''
  return [
    ...units
      .filter((unit) => beginsIn(looked, [unit.label, unit.description, unit.serial ?? '', ownerOf(unit)].join(' ')))
      .map(({ id, label, description }): SearchHit => ({ kind: 'unit', id, title: label, detail: description })),
    ...riders
      .filter(({ name, removedOn }) => !removedOn && beginsIn(looked, name))
      .map(({ id, name, posture }): SearchHit => ({ kind: 'rider', id, title: name, detail: posture ?? '' })),
    ...jobs
      .filter(({ number, unit, rider, asked }) =>
        beginsIn(looked, [number ?? '', unit?.label ?? '', rider?.name ?? '', asked ?? ''].join(' ')),
      )
      .map(
        ({ stream, number, unit }): SearchHit => ({
          kind: 'job',
          id: stream,
          title: number ?? '–',
          detail: unit ? `${unit.label} ${unit.description}` : '',
        }),
      ),
  ].slice(0, most)
}

/** What the server found beside it, each thing once; what is here stands first. */
export function withMore(here: readonly SearchHit[], more: readonly SearchHit[]): readonly SearchHit[] {
  const names = new Set(here.map(({ kind, id }) => `${kind} ${id}`))
  return [...here, ...more.filter(({ kind, id }) => !names.has(`${kind} ${id}`))]
}
