/** Lines into a delivery, and its answer into what changes here. Pure. */
import type { Delivery, DeliveryAnswer, DeliveryItem, DeliveryResult } from '@legwork/contract'
import type { AnyBookEntry, Id, Instant } from '@legwork/trade'
import { type Change, keyOf, type OutboxLine } from './lines.ts'

/** As many lines as one delivery takes. */
export const mostLines = 100

function itemOf(line: OutboxLine): DeliveryItem {
  if (line.is === 'register') {
    const { is, made, id, stationNo, person, madeAt, register, seenVersion, body } = line
    return { is, made, id, stationNo, person, madeAt, register, seenVersion, body }
  }
  const { id, stream, person, madeAt, clock = null, kind, version, seen, standing, body } = line.draft
  const { is, made, stationNo } = line
  return { is, made, id, stream, stationNo, person, madeAt, clock, kind, version, seen, standing, body }
}

export function deliveryOf(station: Id, lines: readonly OutboxLine[]): Delivery {
  const texts = new Map(lines.flatMap((line) => line.texts.map((text) => [text.digest, text] as const)))
  return { station, items: lines.map(itemOf), texts: [...texts.values()] }
}

/** The entry as the book has it, so that it is here before the live line brings it. */
function bookEntryOf(line: OutboxLine, result: DeliveryResult): AnyBookEntry[] {
  if (line.is !== 'entry' || result.seq === null || result.receivedAt === null) return []
  return [{ ...line.draft, seq: result.seq, receivedAt: result.receivedAt }]
}

/** What a line's result changes here: it leaves the outbox either way; a refused one is kept apart, to be read. */
function afterResult(line: OutboxLine, result: DeliveryResult, at: Instant): Change {
  const { stationNo } = line
  if (result.status === 'refused')
    return { left: [stationNo], refused: [{ stationNo, line, errors: result.errors, at }] }
  if (line.is === 'entry') return { left: [stationNo], entries: bookEntryOf(line, result) }
  const { register, body } = line
  // The live line brings the server's own version; until then one more than was seen keeps what was just written.
  const version = Math.max(line.seenVersion, result.overtook ?? 0) + 1
  return { left: [stationNo], registers: [{ key: keyOf(register, body), register, version, body }] }
}

/**
 * What an answer changes here.
 *
 * @param lines  as they were delivered
 * @param at     now
 */
export function afterDelivery(lines: readonly OutboxLine[], answer: DeliveryAnswer, at: Instant): Change {
  const results = new Map(answer.results.map((result) => [result.stationNo, result]))
  const changes = lines.flatMap((line) => {
    const result = results.get(line.stationNo)
    return result ? [afterResult(line, result, at)] : []
  })
  return {
    left: changes.flatMap((change) => change.left ?? []),
    entries: changes.flatMap((change) => change.entries ?? []),
    registers: changes.flatMap((change) => change.registers ?? []),
    refused: changes.flatMap((change) => change.refused ?? []),
  }
}
