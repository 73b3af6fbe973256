/** The gates before filling and before the unit leaves: R22 to R27. */
import type { Blocked } from '../journal/job-state.ts'
import { restMinutes } from '../rests/rest-kinds.ts'
import type { Rested } from '../rests/rested.ts'
import { type Message, message } from '../words/words.ts'
import type { Rule } from './asked.ts'
import { notRested } from './not-rested.ts'

const says = (id: Rule['id'], because: Message, act: Message) => ({ gate: id, because, act })
const mm = (metre: number): number => Math.round(metre * 1e4) / 10
const sideOf = (off: number | null) => ((off ?? 0) < 0 ? 'short' : 'over')
const leaving = ['ready', 'handed-over'] as const

const shut = (what: Message, act: Message) => says('R22', message('gate.R22.shut', { what }), act)
/** A leak-down wanted so soon after the filling, or by a clock that can't tell; null where the air has settled. */
export function tooEarly(settled: Rested): Blocked | null {
  const what = notRested(settled, restMinutes.settle)
  return what && shut(what, message(settled.minutes === null ? 'gate.R22.again' : 'gate.R22.start'))
}
/** A leak-down read again so soon that it would tell nothing. */
function tooShort(ran: Rested | null): Blocked | null {
  const what = notRested(ran, restMinutes.leak)
  return what && says('R22', message('gate.R22.short', { what }), message('gate.R22.short.act'))
}

export const finishingRules: readonly Rule[] = [
  {
    id: 'R22',
    noWayRound: false,
    saidSo: false,
    guards: { entries: ['measured', ...leaving] },
    shut: ({ entry, facts, leakDown }) => {
      if (entry === 'measured') {
        const { act, rested } = leakDown
        if (act === 'begins') return rested && tooEarly(rested)
        return act === 'ends' && facts.leakDown === 'running' ? tooShort(rested) : null
      }
      if (facts.leakDown === 'running') return shut(message('gate.R22.running'), message('gate.R22.act'))
      return facts.fill !== 'none' && facts.leakDown !== 'finished'
        ? shut(message('gate.R22.none'), message('gate.R22.begin'))
        : null
    },
  },
  {
    id: 'R23',
    noWayRound: false,
    saidSo: false,
    guards: { entries: leaving },
    shut: ({ facts }) =>
      facts.springSide === 'worked-on' && facts.setting !== 'written'
        ? says('R23', message('gate.R23.shut'), message('gate.R23.act'))
        : null,
  },
  {
    id: 'R24',
    noWayRound: true,
    saidSo: false,
    guards: { entries: ['plan-agreed'] },
    shut: ({ missing: [first] }) =>
      first === undefined ? null : says('R24', message('gate.R24.shut', { value: first }), message('gate.R24.act')),
  },
  {
    id: 'R25',
    noWayRound: true,
    saidSo: false,
    guards: { entries: leaving },
    shut: ({ facts, traits }) => {
      const off = facts.brake === 'away' || facts.brake === 'back'
      const item = off ? traits.putBack.find((one) => facts[`put-back.${one}`] !== 'yes') : undefined
      return item
        ? says(
            'R25',
            message('gate.R25.shut', { item: message(`put-back.${item}`) }),
            message('gate.R25.act', { item: message(`put-back.${item}`) }),
          )
        : null
    },
  },
  {
    id: 'R26',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['fills-air', 'adds-preload'], entries: leaving },
    shut: ({ entry, facts, off }) => {
      if (entry === 'step-done') {
        if (facts.travel === 'unmeasured')
          return says('R26', message('gate.R26.travel'), message('gate.R26.travel.act'))
        return facts.travel === 'outside'
          ? says(
              'R26',
              message(`gate.R26.travel-${sideOf(off.travel)}`, { off: mm(Math.abs(off.travel ?? 0)) }),
              message('gate.R26.travel.act'),
            )
          : null
      }
      if (facts.springSide === 'untouched' || facts.length === 'within') return null
      const act = message('gate.R26.length.act')
      if (facts.length === 'unmeasured') return says('R26', message('gate.R26.length'), act)
      if (facts.length === 'cannot-tell') return says('R26', message('gate.R26.length-unjudged'), act)
      const allowed = mm(off.lengthAllowed)
      return says(
        'R26',
        message(`gate.R26.length-${sideOf(off.length)}`, { off: mm(Math.abs(off.length ?? 0)), allowed }),
        act,
      )
    },
  },
  {
    id: 'R27',
    noWayRound: true,
    saidSo: false,
    guards: { acts: ['fills-air'], entries: ['set-up-worked-out', 'setting-written', 'measured'] },
    shut: ({ entry, traits, pressure, target, maximum }) => {
      if (traits.spring === 'coil') return null
      const isFilled = entry === 'step-done' || (entry === 'measured' && pressure !== null)
      if (maximum === null)
        return isFilled ? says('R27', message('gate.R27.unknown'), message('gate.R27.unknown.act')) : null
      const asked = Math.max(pressure ?? 0, entry === 'step-done' ? (target ?? 0) : 0)
      return asked > maximum
        ? says(
            'R27',
            message('gate.R27.shut', { maximum: { pascal: maximum }, asked: { pascal: asked } }),
            message('gate.R27.act'),
          )
        : null
    },
  },
]
