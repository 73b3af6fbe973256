/** Where the pressure comes from: the formula and every input with its source. */
import { type Source, say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { QuantityText } from '../../figures/figure.tsx'
import { SourceMark } from '../../marks/source-mark.tsx'
import { SideHead, ValueRow } from '../../ui/ledger.tsx'
import { useJobView } from './job-view.tsx'
import { postureText } from './posture.ts'
import { useShownText } from './readings.tsx'
import { airSpringOf, type StartInputs } from './start-pressure.ts'

export function WhereFrom({
  inputs,
  pressure,
  lowerForce,
  load,
}: {
  inputs: StartInputs
  pressure: number
  lowerForce: number
  load: number
}) {
  const { rider } = useJobView()
  const text = useShownText()
  const { sheet, spacers } = inputs
  const spring = airSpringOf(sheet, spacers)
  const positive = spring.positiveVolume - spacers * (spring.spacerVolume ?? 0)
  const row = (kind: Source['kind'], name: string, value: ReactNode) => (
    <ValueRow
      name={
        <>
          <SourceMark kind={kind} /> {name}
        </>
      }
    >
      {value}
    </ValueRow>
  )
  return (
    <SideHead place="above" title={say('set-up.where-from', { pressure: text(pressure, 'Pa') })}>
      <p className="formula" translate="no">
        F = (p⁺ − p<sub>a</sub>)·A⁺ − (p⁻ − p<sub>a</sub>)·A⁻ + Σ (p<sub>L</sub> − p<sub>a</sub>)·A<sub>L</sub>
      </p>
      <p className="book">{say('set-up.formula')}</p>
      {row('rider-said', say('set-up.row.mass'), <QuantityText value={inputs.riderMass} kind="mass" />)}
      {row(
        'common-practice',
        say('set-up.row.share', { posture: postureText(rider?.posture ?? null) }),
        <QuantityText value={inputs.frontShare} kind="fraction" />,
      )}
      {row(
        'common-practice',
        say('set-up.row.front-mass'),
        <QuantityText value={inputs.frontMass} kind="mass" digits={2} />,
      )}
      {row('measured-here', say('set-up.row.head-angle'), <QuantityText value={inputs.headAngle} kind="angle" />)}
      {row('worked-out', say('set-up.row.load'), <QuantityText value={load} kind="force" digits={0} />)}
      {row('makers-sheet', say('set-up.row.positive', { n: spacers }), <QuantityText value={positive} kind="volume" />)}
      {row(
        'makers-sheet',
        say('set-up.row.negative'),
        <QuantityText value={spring.negativeVolume ?? null} kind="volume" />,
      )}
      {row(
        'makers-sheet',
        say('set-up.row.lower'),
        <QuantityText value={spring.lower?.volume ?? null} kind="volume" />,
      )}
      {row(
        'common-practice',
        say('set-up.row.sag', { percent: Math.round(inputs.sag * 100) }),
        <QuantityText value={inputs.sag * spring.stroke} kind="length" />,
      )}
      <p className="book">{say('set-up.lower-carries', { force: text(lowerForce, 'N') })}</p>
    </SideHead>
  )
}
