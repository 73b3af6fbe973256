/** The gates before anything is opened: R1 to R7. */
import type { Blocked } from '../journal/job-state.ts'
import { type Message, message } from '../words/words.ts'
import type { Asked, Rule } from './asked.ts'

const says = (id: Rule['id'], because: Message, act: Message) => ({ gate: id, because, act })

/** Once, and with the pump whose hose took some of it. */
function pressureShut({ reading, readBefore }: Asked): Blocked | null {
  if (readBefore) return says('R2', message('gate.R2.once'), message('gate.R2.once.act'))
  return reading?.instrument === null ? says('R2', message('gate.R2.pump'), message('gate.R2.pump.act')) : null
}

export const preparingRules: readonly Rule[] = [
  {
    id: 'R1',
    noWayRound: true,
    saidSo: false,
    guards: { entries: ['plan-agreed', 'step-done'] },
    shut: ({ facts, traits }) => {
      const bad = traits.parts.find((part) => facts[`chassis.${part}`] === 'condemned')
      if (bad)
        return says(
          'R1',
          message('gate.R1.condemned', { part: message(`part.${bad}`) }),
          message('gate.R1.act', { part: message(`part.${bad}`) }),
        )
      const part = traits.parts.find((one) => facts[`chassis.${one}`] !== 'sound')
      return part
        ? says(
            'R1',
            message('gate.R1.shut', { part: message(`part.${part}`) }),
            message('gate.R1.act', { part: message(`part.${part}`) }),
          )
        : null
    },
  },
  {
    id: 'R2',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['lets-air-out', 'turns-adjuster', 'loosens'], entries: ['snapshot-kept'] },
    shut: (asked) => {
      const { facts, traits, snapshotItem, reading } = asked
      // What is not known may be said at any time; a reading waits for what it would change.
      if (snapshotItem && !reading) return null
      if (snapshotItem && facts.springSide === 'worked-on')
        return says('R2', message('gate.R2.too-late'), message('gate.R2.too-late.act'))
      const before = { length: 0, ring: 0, photos: 0, pressure: 3, rebound: 4, compression: 4 }
      const wanted = snapshotItem
        ? traits.snapshot.filter((item) => before[item] < before[snapshotItem])
        : traits.snapshot
      const item = wanted.find((one) => facts[`snapshot.${one}`] === 'none')
      if (item)
        return says(
          'R2',
          message('gate.R2.shut', { item: message(`snapshot.${item}`) }),
          message('gate.R2.act', { item: message(`snapshot.${item}`) }),
        )
      return snapshotItem === 'pressure' ? pressureShut(asked) : null
    },
  },
  {
    id: 'R3',
    noWayRound: true,
    saidSo: false,
    guards: { acts: ['loosens'] },
    shut: ({ facts, traits }) =>
      traits.spring === 'air' && facts.pressure !== 'released'
        ? says('R3', message('gate.R3.shut', { state: message(`gate.R3.${facts.pressure}`) }), message('gate.R3.act'))
        : null,
  },
  {
    id: 'R4',
    noWayRound: true,
    saidSo: false,
    guards: { acts: ['loosens'] },
    shut: ({ facts, traits }) =>
      traits.spring === 'air' && facts.trapped !== 'none'
        ? says('R4', message('gate.R4.shut'), message('gate.R4.act'))
        : null,
  },
  {
    id: 'R5',
    noWayRound: false,
    saidSo: true,
    guards: { acts: ['lets-air-out', 'jumps-out'] },
    shut: ({ saidSo }) => (saidSo.includes('R5') ? null : says('R5', message('gate.R5.shut'), message('gate.R5.act'))),
  },
  {
    id: 'R6',
    noWayRound: true,
    saidSo: false,
    guards: { acts: ['opens-gas'] },
    shut: ({ facts }) =>
      facts.gas === 'released' ? null : says('R6', message('gate.R6.shut'), message('gate.R6.act')),
  },
  {
    id: 'R7',
    noWayRound: false,
    saidSo: false,
    guards: { acts: ['cycles', 'strips-damper'] },
    shut: ({ facts, traits }) =>
      traits.compression && facts.lever !== 'open' ? says('R7', message('gate.R7.shut'), message('gate.R7.act')) : null,
  },
]
