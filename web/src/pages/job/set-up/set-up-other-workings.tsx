/** How the figures of a coil fork's or a shock's Set up were worked out. */
import { type Sheet, type SourceKind, say, springOf } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import type { Workings } from '../../../figures/workings.tsx'
import { springRows } from '../spring-rows.tsx'
import { coilQuestion, type LoadAsked } from './other-springs.ts'

type Row = Workings['inputs'][number]

const plain = (kind: SourceKind) =>
  ({ kind, document: null, revision: null, page: null, person: null, at: null, instrument: null }) as const

const loadRow = (load: number): Row => ({
  name: say('set-up.other.load'),
  shown: <QuantityText value={load} kind="force" digits={0} />,
  source: plain('worked-out'),
})
const sagRow = (wanted: number): Row => ({
  name: say('set-up.sag-wanted'),
  shown: <QuantityText value={wanted} kind="fraction" />,
  source: plain('common-practice'),
})

/** The damper's gas pushes a shaft out; where the sheet has none of it, that is said. */
const leftOut = (sheet: Sheet): readonly string[] => [
  say('set-up.other.leaves-out.friction'),
  ...(sheet.kind.startsWith('shock') && !sheet.spring.damperGasPressure ? [say('set-up.other.leaves-out.gas')] : []),
]

function massRow(name: string, value: number, kind: SourceKind): Row {
  return { name, shown: <QuantityText value={value} kind="mass" digits={1} />, source: plain(kind) }
}

export function otherLoadWorkings(asked: LoadAsked): Workings {
  const shock = asked.calculation === 'shock-load'
  return {
    title: say('set-up.other.load'),
    formula: shock ? 'm·g·leverage' : '(m·share + m_bike)·g·sin(head angle)',
    inputs: shock
      ? [
          massRow(say('set-up.missing.rear-mass'), asked.input.rearSprungMass, 'measured-here'),
          {
            name: say('set-up.missing.leverage'),
            shown: <QuantityText value={asked.input.leverage} kind="number" digits={2} />,
            source: plain('makers-sheet'),
          },
        ]
      : [
          massRow(say('set-up.row.mass'), asked.input.riderMass, 'rider-said'),
          {
            name: say('set-up.other.share'),
            shown: <QuantityText value={asked.input.frontShare} kind="fraction" />,
            source: plain('common-practice'),
          },
          massRow(say('set-up.row.front-mass'), asked.input.bikeFrontMass, 'common-practice'),
          {
            name: say('set-up.row.head-angle'),
            shown: <QuantityText value={asked.input.headAngle} kind="angle" />,
            source: plain('measured-here'),
          },
        ],
    leavesOut: [say(shock ? 'set-up.other.leaves-out.leverage' : 'set-up.leaves-out.posture')],
    asked: { calculation: asked.calculation, input: asked.input, path: 'load' },
  }
}

export function otherPressureWorkings(sheet: Sheet, load: number, sag: number, ambient: number): Workings {
  const spring = springOf(sheet)
  return {
    title: say('set-up.where-from-plain'),
    formula: say('set-up.formula.balance'),
    inputs: [loadRow(load), sagRow(sag), ...(spring.kind === 'air' ? springRows(sheet, spring) : [])],
    leavesOut: [...leftOut(sheet), say('set-up.leaves-out.ideal')],
    asked: { calculation: 'pressure-for-sag', input: { spring, load, sag, ambient }, path: 'pressure' },
  }
}

/** Rate and preload of the coil that is in it. */
function coilRows(sheet: Sheet): Row[] {
  const { rate, preload } = sheet.spring
  return [
    ...(rate
      ? [
          {
            name: say('set-up.other.fitted'),
            shown: <QuantityText value={rate.value} kind="rate" digits={1} />,
            source: rate.source,
          },
        ]
      : []),
    ...(preload
      ? [
          {
            name: say('set-up.other.preload'),
            shown: <QuantityText value={preload.value} kind="length" digits={1} />,
            source: preload.source,
          },
        ]
      : []),
  ]
}

export function coilSagWorkings(sheet: Sheet, load: number, ambient: number): Workings {
  return {
    title: say('set-up.other.rests'),
    formula: 'rate·(x + preload) + F_gas(x) = load',
    inputs: [loadRow(load), ...coilRows(sheet)],
    leavesOut: leftOut(sheet),
    asked: { calculation: 'sag', input: { spring: springOf(sheet), load, ambient }, path: 'stroke' },
  }
}

export function coilRateWorkings(sheet: Sheet, load: number, wanted: number): Workings {
  return {
    title: say('set-up.other.rate', { percent: Math.round(wanted * 100) }),
    formula: 'rate = (load − F_gas(sag))/(sag + preload)',
    inputs: [loadRow(load), sagRow(wanted), ...coilRows(sheet)],
    leavesOut: leftOut(sheet),
    asked: { calculation: 'coil-rate', input: coilQuestion(sheet, load, wanted), path: 'rate' },
  }
}
