/** The gates while it comes apart: R8 to R12. */
import { legs } from '../journal/entry.ts'
import { type Message, message } from '../words/words.ts'
import type { Rule } from './asked.ts'

const says = (id: Rule['id'], because: Message, act: Message) => ({ gate: id, because, act })

export const strippingRules: readonly Rule[] = [
  {
    id: 'R8',
    noWayRound: false,
    saidSo: true,
    guards: { acts: ['taps'] },
    shut: ({ saidSo }) => (saidSo.includes('R8') ? null : says('R8', message('gate.R8.shut'), message('gate.R8.act'))),
  },
  {
    id: 'R9',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['uses-oil'] },
    shut: ({ facts }) =>
      facts.brake === 'at-fork' || facts.brake === 'back'
        ? says('R9', message('gate.R9.shut'), message('gate.R9.act'))
        : null,
  },
  {
    id: 'R10',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['drains'] },
    shut: (asked) => {
      const leg = asked.leg ?? legs[0]
      if (asked.reading?.measure === 'm³' || !leg) return null
      const which = message(`leg.${leg}`)
      return says('R10', message('gate.R10.shut', { leg: which }), message('gate.R10.act', { leg: which }))
    },
  },
  {
    id: 'R11',
    noWayRound: false,
    saidSo: true,
    guards: { acts: ['pulls-lowers'] },
    shut: ({ saidSo }) =>
      saidSo.includes('R11') ? null : says('R11', message('gate.R11.shut'), message('gate.R11.act')),
  },
  {
    id: 'R12',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['cleans', 'fits-seals'] },
    shut: ({ facts, acts }) =>
      (acts.includes('cleans') && facts.seals !== 'out') || (acts.includes('fits-seals') && facts.cleaned !== 'yes')
        ? says('R12', message('gate.R12.shut'), message('gate.R12.act'))
        : null,
  },
]
