/** What a line of a job's book says, short. */
import { type AnyEntry, addWords, isServiceId, isStepId, isWordKey, type Leg, type Reading, say } from '@legwork/trade'
import { faultTestWords } from '@legwork/trade/words/fault-tests.ts'
import { useQuantityWords } from '../../../figures/quantity-words.ts'
import '../bench-tests/bench-test-words.ts'
import '../job-words.ts'
import { useJobView } from '../job-view.tsx'
import { readAs } from '../read-as.ts'
import { useShownText } from '../readings.tsx'

// A test that was answered is told by its reading, and those words come with the ranking, which may not be here yet.
addWords(faultTestWords)

/** A word by a key put together from data; `instead` where the catalogue has none. */
function named(key: string, instead: string): string {
  // Words of these names have no parameters, so one of them stands for all.
  return isWordKey(key) ? say(key as 'measure.friction') : instead
}
const ofLeg = (what: string, leg: Leg | null): string => (leg ? `${what}, ${say(`leg.${leg}`)}` : what)

export function useEntrySays(): (entry: AnyEntry) => string {
  const { text } = useJobView()
  const shown = useShownText()
  const quantity = useQuantityWords()
  const words = (digest: string | null): string => (digest ? (text(digest) ?? say('book.text-gone')) : '–')
  const read = ({ value, measure }: Reading, what: string): string => {
    const { fine, share } = readAs(what)
    return shown(value, measure, fine, share)
  }
  return (entry) => {
    switch (entry.kind) {
      case 'job-opened':
        return say('entry.job-opened')
      case 'snapshot-kept': {
        const { item, reading, notKnownBecause, photos } = entry.body
        const what = say(`snapshot.${item}`)
        if (reading) return say('entry.snapshot-kept', { item: what, reading: read(reading, item) })
        if (photos.length > 0) return say('entry.snapshot-kept', { item: what, reading: String(photos.length) })
        return say('entry.snapshot-not-known', { item: what, reason: words(notKnownBecause) })
      }
      case 'chassis-checked': {
        const { part, verdict } = entry.body
        return say('entry.chassis-checked', { part: say(`part.${part}`), verdict: say(`part.${verdict}`) })
      }
      case 'sign-noted': {
        const { sign, state } = entry.body
        const name = named(`look.sign.${sign}`, named(`test.${sign}.reading`, sign))
        return say('entry.sign-noted', { sign: name, state: say(`look.sign.${state}`) })
      }
      case 'history-said': {
        const { what, value } = entry.body
        const answer =
          value === null
            ? say('history.unknown')
            : typeof value === 'number'
              ? say('entry.hours', { n: value })
              : say(value ? 'history.yes' : 'history.no')
        return say('entry.history-said', { what: say(`history.${what}`), value: answer })
      }
      case 'measured': {
        const { what, leg, reading, press, release } = entry.body
        if (press)
          return say(`entry.pressed.${press.way}`, { stroke: shown(press.stroke, 'm'), reading: read(reading, what) })
        if (release) {
          const { from, to, clicks } = release
          const timed = { from: shown(from, 'm'), to: shown(to, 'm'), reading: read(reading, what) }
          return clicks === null ? say('entry.released', timed) : say('entry.released.clicks', { ...timed, clicks })
        }
        return say('entry.measured', { what: ofLeg(named(`measure.${what}`, what), leg), reading: read(reading, what) })
      }
      case 'plan-agreed': {
        const services = entry.body.services.filter(isServiceId).map((service) => say(`service.${service}`))
        return say('entry.plan-agreed', {
          answer: say(`entry.answer.${entry.body.answer}`),
          services: services.join(', '),
        })
      }
      case 'set-up-worked-out':
        return say('entry.set-up-worked-out', { pressure: shown(entry.body.pressure, 'Pa') })
      case 'step-done': {
        const { step, leg, reading } = entry.body
        const what = ofLeg(isStepId(step) ? say(`step.${step}`) : step, leg)
        return reading ? say('entry.step-done.reading', { step: what, reading: read(reading, step) }) : what
      }
      case 'sag-measured': {
        const { fromAbove, fromBelow } = entry.body
        return say('entry.sag-measured', { above: shown(fromAbove, 'm'), below: shown(fromBelow, 'm') })
      }
      case 'trail-said': {
        const { altitude, temperature } = entry.body
        return say('entry.trail-said', {
          altitude: quantity(altitude, 'altitude', 0),
          temperature: shown(temperature, 'K'),
        })
      }
      case 'setting-written':
        // A coil is written with nothing filled by no pump.
        if (entry.body.pump === null && entry.body.pressure === 0) return say('entry.setting-written.coil')
        return say('entry.setting-written', { pressure: shown(entry.body.pressure, 'Pa') })
      case 'put-back':
        return say(`put-back.${entry.body.item}`)
      case 'gate-waived':
        return say('entry.gate-waived', { gate: entry.body.gate, reason: words(entry.body.reason) })
      case 'taken-over':
        return say('entry.taken-over')
      case 'waiting': {
        const { for: what, why } = entry.body
        if (what === null) return say('entry.waiting.over')
        return why ? `${say(`job.waits.${what}`)}: ${words(why)}` : say(`job.waits.${what}`)
      }
      case 'stopped':
        return say('entry.stopped', { why: words(entry.body.why) })
      case 'stop-lifted':
        return say('entry.stop-lifted', { why: words(entry.body.why) })
      case 'ready':
        return say('entry.ready')
      case 'handed-over':
        return say('entry.handed-over', { name: words(entry.body.receivedBy) })
      case 'called-off':
        return say('entry.called-off', { why: words(entry.body.why) })
      case 'noted':
        return words(entry.body.text)
      case 'struck':
        return say('entry.struck', { reason: words(entry.body.reason) })
      case 'ruled':
        return say(`entry.ruled.${entry.body.ruling}`, { reason: words(entry.body.reason) })
    }
  }
}
