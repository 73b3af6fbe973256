/** The figure of a step, largest on its page, with the line that says where it comes from. */
import { type Source, say, sayMessage } from '@legwork/trade'
import { WrenchDrawing } from '../../cutaway/wrench-drawing.tsx'
import { QuantityText } from '../../figures/figure.tsx'
import { SourceLine } from '../../figures/source-line.tsx'
import { LinkButton } from '../../ui/button.tsx'
import { chapterHref } from './job-address.ts'
import { useJobView } from './job-view.tsx'
import { Shown, useShownText } from './readings.tsx'
import type { StepFigure, StepValue } from './step-figure.ts'

const workedOut: Source = {
  kind: 'worked-out',
  document: null,
  revision: null,
  page: null,
  person: null,
  at: null,
  instrument: null,
}
const millimetres = (metres: number): string => String(Math.round(metres * 1e4) / 10)

function Value({ of, size }: { of: StepValue; size: 'step' | 'second' }) {
  return (
    <div className="fig">
      <p className="label">{sayMessage(of.label)}</p>
      <p>
        <Shown value={of.value} measure={of.measure} size={size} />
      </p>
      {of.source && <SourceLine source={of.source} />}
    </div>
  )
}

function Torque({ figure }: { figure: Extract<StepFigure, { kind: 'torque' }> }) {
  const { value, wrench, set, suits } = figure
  const adapter = wrench.adapterLength > 0
  const text = useShownText()
  return (
    <>
      <Value of={value} size="step" />
      <div className="fig hand act-on">
        <p className="label">{say('work.set-wrench', { wrench: wrench.name })}</p>
        <p>
          <QuantityText value={set} kind="torque" size="second" hand />
        </p>
        <SourceLine
          source={workedOut}
          workings={{
            title: say('work.set-wrench', { wrench: wrench.name }),
            formula: adapter
              ? say('work.wrench-sum', {
                  wanted: value.value.toFixed(1),
                  length: millimetres(wrench.length),
                  adapter: millimetres(wrench.adapterLength),
                })
              : say('work.wrench-plain'),
            inputs: [
              {
                name: sayMessage(value.label),
                shown: <Shown value={value.value} measure="N·m" />,
                ...(value.source ? { source: value.source } : {}),
              },
              {
                name: say('work.wrench-grip', { wrench: wrench.name }),
                shown: <Shown value={wrench.length} measure="m" />,
              },
              { name: say('work.wrench-adapter'), shown: <Shown value={wrench.adapterLength} measure="m" /> },
            ],
            leavesOut: [say('work.wrench-leaves-out')],
          }}
        />
        {!suits && (
          <p className="refusal">
            {say('work.wrench-out', { wrench: wrench.name, low: wrench.low, high: wrench.high })}
          </p>
        )}
      </div>
      <div className="wrench-drawing">
        <WrenchDrawing
          wrench={wrench}
          label={say('work.wrench-drawing', { wrench: wrench.name, set: text(set, 'N·m') })}
          words={{
            length: `${millimetres(wrench.length)} mm, ${wrench.name}`,
            adapter: millimetres(wrench.adapterLength),
          }}
        />
      </div>
    </>
  )
}

function Air({ figure }: { figure: Extract<StepFigure, { kind: 'air' }> }) {
  const { value, pump, shown } = figure
  const percent = pump ? Math.round(Math.abs(pump.offset) * 1000) / 10 : 0
  return (
    <>
      <Value of={value} size="step" />
      <div className="fig hand act-on">
        <p className="label">{pump ? say('work.pump-to', { pump: pump.name }) : say('work.pump-none')}</p>
        <p>
          <QuantityText value={shown} kind="pressure" size="second" hand />
        </p>
        {pump && (
          <p className="book">
            {pump.offset === 0
              ? say('work.pump-exact', { pump: pump.name })
              : say(pump.offset > 0 ? 'work.pump-high' : 'work.pump-low', { pump: pump.name, percent })}
          </p>
        )}
      </div>
    </>
  )
}

function Missing({ figure }: { figure: Extract<StepFigure, { kind: 'missing' }> }) {
  const { stream } = useJobView()
  const setUp = figure.what.key === 'work.set-up-first'
  return (
    <div className="fig missing">
      <p className="large">{setUp ? say('refused.needs-set-up') : say('work.missing', { what: figure.what })}</p>
      {setUp && (
        <LinkButton kind="second" arrow="forward" href={chapterHref(stream, 'set-up')}>
          {say('work.set-up-link')}
        </LinkButton>
      )}
    </div>
  )
}

export function StepDrawing({ figure, drained }: { figure: StepFigure; drained: boolean }) {
  switch (figure.kind) {
    case 'none':
      return null
    case 'value':
      return <Value of={figure.value} size="step" />
    case 'legs':
      return (
        <>
          <Value of={figure.left} size={drained ? 'second' : 'step'} />
          <Value of={figure.right} size={drained ? 'second' : 'step'} />
        </>
      )
    case 'torque':
      return <Torque figure={figure} />
    case 'air':
      return <Air figure={figure} />
    case 'missing':
      return <Missing figure={figure} />
  }
}
