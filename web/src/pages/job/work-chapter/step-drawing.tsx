/** The figure of a step, largest on its page, with the line that says where it comes from. */
import { say, sayMessage } from '@legwork/trade'
import type { ReactNode } from 'react'
import { WrenchDrawing } from '../../../cutaway/wrench-drawing.tsx'
import { QuantityText } from '../../../figures/figure.tsx'
import { SourceLine, WorkedOutLine } from '../../../figures/source-line.tsx'
import { LinkButton } from '../../../ui/button.tsx'
import { ByWhom } from '../by-whom.tsx'
import { chapterHref } from '../job-address.ts'
import { useJobView } from '../job-view.tsx'
import { Shown, useShownText } from '../readings.tsx'
import type { Pump, StepFigure, StepValue, Wrench } from '../step-figure.ts'
import { fillWorkings, isWorkedOut, wrenchWorkings } from './step-workings.tsx'

const millimetres = (metres: number): string => String(Math.round(metres * 1e4) / 10)

function Value({ of, size }: { of: StepValue; size: 'step' | 'second' }) {
  return (
    <div className="fig">
      <p className="label">{sayMessage(of.label)}</p>
      <p>
        <Shown value={of.value} measure={of.measure} size={size} fine={of.fine ?? false} />
      </p>
      {of.source && <SourceLine source={of.source} />}
    </div>
  )
}

interface Tools {
  wrenches: readonly Wrench[]
  onWrench: (id: string) => void
  pumps: readonly Pump[]
  onPump: (id: string) => void
}

/** Another of the shop's tools, where there is one: its figure changes at once. */
function ToolPick({ label, tools, value, onPick }: ToolPickProps) {
  if (tools.length < 2) return null
  return (
    <select
      className="tool-pick"
      aria-label={label}
      translate="no"
      value={value ?? ''}
      onChange={(event) => onPick(event.target.value)}
    >
      {tools.map((tool) => (
        <option key={tool.id} value={tool.id}>
          {tool.name}
        </option>
      ))}
    </select>
  )
}
interface ToolPickProps {
  label: string
  tools: readonly { id: string; name: string }[]
  value: string | null
  onPick: (id: string) => void
}

/** What a hand sets or pumps to: in a window as of the tool's own scale, the largest thing on the page. */
function ActOn({ value, kind, children }: { value: number; kind: 'torque' | 'pressure'; children: ReactNode }) {
  return (
    <div className="with-tool">
      <p className="scale-window">
        <QuantityText value={value} kind={kind} size="step" hand />
      </p>
      <div className="beside">{children}</div>
    </div>
  )
}

/** What comes of it, where that is another number than the one to set: small, and said not to be set. */
function Arrives({ of, children }: { of: StepValue; children: ReactNode }) {
  return (
    <div className="fig arrives">
      <p className="label">{say('work.arrives', { where: sayMessage(of.label) })}</p>
      <p>
        <Shown value={of.value} measure={of.measure} size="second" />
      </p>
      {children}
    </div>
  )
}

function Torque({ figure, tools }: { figure: Extract<StepFigure, { kind: 'torque' }>; tools: Tools }) {
  const { value, wrench, set, suits } = figure
  const text = useShownText()
  const adapter = wrench.adapterLength > 0
  return (
    <>
      {adapter && <Arrives of={value}>{value.source && <SourceLine source={value.source} />}</Arrives>}
      <div className="fig hand act-on">
        <p className="label">
          {adapter
            ? say('work.set-wrench', { wrench: wrench.name })
            : say('work.set-wrench.plain', { where: sayMessage(value.label), wrench: wrench.name })}
        </p>
        <ActOn value={set} kind="torque">
          <ToolPick label={say('work.wrench')} tools={tools.wrenches} value={wrench.id} onPick={tools.onWrench} />
          {adapter ? (
            <WorkedOutLine workings={() => wrenchWorkings(figure)} quantity={{ value: set, kind: 'torque' }} />
          ) : (
            value.source && <SourceLine source={value.source} />
          )}
        </ActOn>
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

function Air({ figure, tools }: { figure: Extract<StepFigure, { kind: 'air' }>; tools: Tools }) {
  const { state } = useJobView()
  const { value, pump, shown } = figure
  const { setUp, sheet } = state
  const isOff = pump !== null && pump.offset !== 0
  const percent = pump ? Math.round(Math.abs(pump.offset) * 1000) / 10 : 0
  const workings =
    setUp && sheet && isWorkedOut(setUp, sheet)
      ? (of: typeof pump) => () => fillWorkings(setUp, sheet, figure, of)
      : null
  const chosen = setUp && (
    <p className="source-line book">
      {say('set-up.chosen')} <ByWhom made={setUp} />
    </p>
  )
  return (
    <>
      {isOff && (
        <Arrives of={value}>
          {workings ? (
            <WorkedOutLine workings={workings(null)} quantity={{ value: value.value, kind: 'pressure' }} />
          ) : (
            chosen
          )}
        </Arrives>
      )}
      <div className="fig hand act-on">
        <p className="label">
          {isOff
            ? say('work.pump-to', { pump: pump.name })
            : say('work.pump-to.plain', {
                what: sayMessage(value.label),
                how: pump ? say('work.pump-to', { pump: pump.name }) : say('work.pump-none'),
              })}
        </p>
        <ActOn value={shown} kind="pressure">
          <ToolPick label={say('work.pump')} tools={tools.pumps} value={pump?.id ?? null} onPick={tools.onPump} />
          {pump && (
            <p className="book">
              {pump.offset === 0
                ? say('work.pump-exact', { pump: pump.name })
                : say(pump.offset > 0 ? 'work.pump-high' : 'work.pump-low', { pump: pump.name, percent })}
            </p>
          )}
          {workings ? (
            <WorkedOutLine workings={workings(pump)} quantity={{ value: shown, kind: 'pressure' }} />
          ) : (
            !isOff && chosen
          )}
        </ActOn>
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

interface StepDrawingProps extends Tools {
  figure: StepFigure
  drained: boolean
}

export function StepDrawing({ figure, drained, ...tools }: StepDrawingProps) {
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
      return <Torque figure={figure} tools={tools} />
    case 'air':
      return <Air figure={figure} tools={tools} />
    case 'missing':
      return <Missing figure={figure} />
  }
}
