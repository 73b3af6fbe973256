import { type Source, say } from '@legwork/trade'
import { clock, day } from './moment.ts'
import { useFigureWorld } from './world.tsx'

/** Document, revision and page, or who, when and with what: whatever the source says of itself. */
export function SourceDetails({ source }: { source: Source }) {
  const { nameOf } = useFigureWorld()
  const { document, revision, page, person, at, instrument } = source
  const said: string[] = []
  if (document) said.push(document)
  if (revision) said.push(say('source.revision', { revision }))
  if (page) said.push(say('source.page', { page }))
  if (person) said.push(nameOf(person) ?? say('source.somebody'))
  if (instrument) said.push(nameOf(instrument) ?? say('source.some-instrument'))
  if (at) said.push(`${day(at)}, ${clock(at)}`)
  return said.length > 0 ? <span translate="no">{`: ${said.join(', ')}`}</span> : null
}
