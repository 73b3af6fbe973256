/** What an entry says, in one line of the book. */
import {
  type AnyEntry,
  type Digest,
  isServiceId,
  isStepId,
  isWordKey,
  type Message,
  message,
  say,
  sayMessage,
} from '@legwork/trade'
import { useMeasures } from '../../figures/world.tsx'
import { isMeasurable, measurable } from './findings.ts'
import { useJobView } from './job-view.tsx'
import { readingText } from './readings.tsx'
import { isSign } from './signs.tsx'

/** A text of the catalogue by a name that comes from data; the name itself where there is none. */
function named(prefix: string, name: string): Message | string {
  const key = `${prefix}.${name}`
  // Only asked for keys without parameters.
  return isWordKey(key) ? ({ key, params: {} } satisfies Message) : name
}

type Reader = {
  text: (digest: Digest) => string
  reading: typeof readingText
  measures: Parameters<typeof readingText>[2]
}

function stepMessage(entry: Extract<AnyEntry, { kind: 'step-done' }>, { reading, measures }: Reader): Message {
  const { step: id, leg, reading: read } = entry.body
  const step = isStepId(id) ? message(`step.${id}`) : id
  const value = read ? reading(read.value, read.measure, measures) : null
  if (leg && value) return message('entry.step-done.leg-reading', { step, leg: message(`leg.${leg}`), reading: value })
  if (leg) return message('entry.step-done.leg', { step, leg: message(`leg.${leg}`) })
  return value ? message('entry.step-done.reading', { step, reading: value }) : message('entry.step-done', { step })
}

function measuredMessage(entry: Extract<AnyEntry, { kind: 'measured' }>, { reading, measures }: Reader): Message {
  const { what: name, leg, reading: read } = entry.body
  const what = named('measure', name)
  const fine = isMeasurable(name) && measurable[name].fine
  const value = reading(read.value, read.measure, measures, fine)
  return leg
    ? message('entry.measured.leg', { what, leg: message(`leg.${leg}`), reading: value })
    : message('entry.measured', { what, reading: value })
}

function entryMessage(entry: AnyEntry, reader: Reader): Message {
  const { text, reading, measures } = reader
  const pressure = (value: number) => reading(value, 'Pa', measures)
  switch (entry.kind) {
    case 'snapshot-kept': {
      const { item, reading: read, notKnownBecause } = entry.body
      const what = message(`snapshot.${item}`)
      return notKnownBecause !== null
        ? message('entry.snapshot-not-known', { item: what, reason: text(notKnownBecause) })
        : message('entry.snapshot-kept', {
            item: what,
            reading: read ? reading(read.value, read.measure, measures) : '–',
          })
    }
    case 'chassis-checked':
      return message('entry.chassis-checked', {
        part: message(`part.${entry.body.part}`),
        verdict: message(`part.${entry.body.verdict}`),
      })
    case 'sign-noted': {
      const { sign, state } = entry.body
      return message('entry.sign-noted', {
        sign: isSign(sign) ? message(`look.sign.${sign}`) : sign,
        state: message(`look.sign.${state}`),
      })
    }
    case 'measured':
      return measuredMessage(entry, reader)
    case 'plan-agreed': {
      const services = entry.body.services.map((one) => (isServiceId(one) ? say(`service.${one}`) : one)).join('; ')
      return message('entry.plan-agreed', { answer: message(`agree.answer.${entry.body.answer}`), services })
    }
    case 'set-up-worked-out':
      return message('entry.set-up-worked-out', { pressure: pressure(entry.body.pressure) })
    case 'step-done':
      return stepMessage(entry, reader)
    case 'sag-measured':
      return message('entry.sag-measured', {
        above: reading(entry.body.fromAbove, 'm', measures),
        below: reading(entry.body.fromBelow, 'm', measures),
      })
    case 'setting-written':
      return message('entry.setting-written', { pressure: pressure(entry.body.pressure) })
    case 'put-back':
      return message('entry.put-back', { item: message(`put-back.${entry.body.item}`) })
    case 'gate-waived':
      return message('entry.gate-waived', { gate: named('gate', entry.body.gate), reason: text(entry.body.reason) })
    case 'waiting':
      return entry.body.for ? message(`job.waits.${entry.body.for}`) : message('entry.waiting.over')
    case 'stopped':
    case 'stop-lifted':
    case 'called-off':
      return message(`entry.${entry.kind}`, { why: text(entry.body.why) })
    case 'handed-over':
      return message('entry.handed-over', { name: text(entry.body.receivedBy) })
    case 'noted':
      return message('entry.noted', { text: text(entry.body.text) })
    case 'struck':
      return message('entry.struck', { reason: text(entry.body.reason) })
    case 'ruled':
      return message(`entry.ruled.${entry.body.ruling}`, { reason: text(entry.body.reason) })
    case 'job-opened':
    case 'taken-over':
    case 'ready':
      return message(`entry.${entry.kind}`)
  }
}

export function useEntryText(): (entry: AnyEntry) => string {
  const { text } = useJobView()
  const measures = useMeasures()
  const reader: Reader = { text: (digest) => text(digest) ?? say('book.text-gone'), reading: readingText, measures }
  return (entry) => sayMessage(entryMessage(entry, reader))
}
