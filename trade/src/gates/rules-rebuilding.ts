/** The gates while it goes together: R13 to R21. */
import { legs } from '../journal/entry.ts'
import { restMinutes } from '../rests/rest-kinds.ts'
import { type Message, message } from '../words/words.ts'
import type { Rule } from './asked.ts'
import type { Facts } from './facts.ts'
import { notRested } from './not-rested.ts'

/**
 * 'About' a quarter or half is a fifth of the target more, the target itself a tenth to either side: filled higher and let
 * down, the negative chamber keeps what it was seated at (common practice, no source).
 */
const about = {
  quarter: { least: 0, most: 0.45 },
  half: { least: 0, most: 0.7 },
  target: { least: 0.9, most: 1.1 },
} as const

const says = (id: Rule['id'], because: Message, act: Message) => ({ gate: id, because, act })
/** The first leg whose fact is not as wanted. */
const legWithout = (facts: Facts, fact: 'foot' | 'oil', wanted: string) =>
  legs.find((leg) => facts[`${fact}.${leg}`] !== wanted)

export const rebuildingRules: readonly Rule[] = [
  {
    id: 'R13',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['fits-seals'] },
    shut: ({ soaked }) => {
      const what = notRested(soaked, restMinutes.soak)
      return what ? says('R13', message('gate.R13.shut', { what }), message('gate.R13.act')) : null
    },
  },
  {
    id: 'R14',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['fills-oil', 'seats'] },
    shut: ({ facts, acts }) => {
      const leg = acts.includes('seats')
        ? legWithout(facts, 'oil', 'filled')
        : facts.lowers === 'on-bushings'
          ? undefined
          : 'left'
      if (!leg) return null
      const which = message(`leg.${leg}`)
      return says('R14', message('gate.R14.shut', { leg: which }), message('gate.R14.act', { leg: which }))
    },
  },
  {
    id: 'R15',
    noWayRound: false,
    saidSo: true,
    guards: { acts: ['seats'] },
    shut: (asked) => {
      const leg = asked.leg ?? legs[0]
      if (asked.saidSo.includes('R15') || !leg) return null
      const which = message(`leg.${leg}`)
      return says('R15', message('gate.R15.shut', { leg: which }), message('gate.R15.act', { leg: which }))
    },
  },
  {
    id: 'R16',
    noWayRound: true,
    saidSo: false,
    guards: { acts: ['proves-travel', 'fills-air', 'adds-preload'] },
    shut: ({ facts }) => {
      const leg = legWithout(facts, 'foot', 'torqued')
      return leg
        ? says(
            'R16',
            message('gate.R16.shut', { leg: message(`leg.${leg}`) }),
            message('gate.R16.act', { leg: message(`leg.${leg}.capital`) }),
          )
        : null
    },
  },
  {
    id: 'R17',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['fills-air'] },
    shut: ({ facts, fills, pressure, target }) => {
      const due = { none: 'quarter', quarter: 'half', half: 'target', target: 'quarter' } as const
      const next = due[facts.fill]
      if (fills === null) return null
      if (facts.fill === 'target' || fills !== next) {
        const stage = message(`gate.R17.${next}`)
        return says('R17', message('gate.R17.shut', { stage }), message('gate.R17.act', { stage }))
      }
      if (pressure === null || target === null) return null
      const { least, most } = about[fills]
      const asked = { asked: { pascal: pressure }, target: { pascal: target } }
      const stage = message(`gate.R17.${fills}`)
      if (pressure > most * target)
        return says('R17', message('gate.R17.too-much', { ...asked, stage }), message('gate.R17.act', { stage }))
      return pressure < least * target
        ? says('R17', message('gate.R17.too-little', asked), message('gate.R17.too-little.act'))
        : null
    },
  },
  {
    id: 'R18',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['fills-air', 'adds-preload'] },
    shut: ({ facts }) =>
      facts.damper === 'closed' ? null : says('R18', message('gate.R18.shut'), message('gate.R18.act')),
  },
  {
    id: 'R19',
    noWayRound: true,
    saidSo: false,
    guards: { acts: ['cycles-gas-damper'] },
    shut: ({ facts }) =>
      facts.gas === 'charged' ? null : says('R19', message('gate.R19.shut'), message('gate.R19.act')),
  },
  {
    id: 'R20',
    noWayRound: true,
    saidSo: false,
    guards: { acts: ['loosens'] },
    shut: ({ facts, traits }) =>
      traits.spring === 'coil' && facts.preload !== 'off'
        ? says('R20', message('gate.R20.shut'), message('gate.R20.act'))
        : null,
  },
  {
    id: 'R21',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['torques'] },
    shut: ({ wrenchSet }) =>
      wrenchSet === null ? says('R21', message('gate.R21.shut'), message('gate.R21.act')) : null,
  },
]
