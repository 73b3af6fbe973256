/** A new unit, by measuring it: kind, stanchion, travel, spring, damper, each leg, and the sheet it begins with. */
import { type Leg, legs, say } from '@legwork/trade'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { useRegisters } from '../../offline/hooks.tsx'
import { Choice } from '../../ui/choice.tsx'
import { TextField } from '../../ui/field.tsx'
import { genericFor, sheetsLike } from './new-unit-sheet.ts'
import { bodiesOf, dampersOf, fixings, isFork, type NewUnit, type SheetWay, unitKinds } from './take-in-draft.ts'

const otherBodies = ['upside-down', 'one-legged'] as const
const otherDampers = ['electric'] as const

type Change = (patch: Partial<NewUnit>) => void

function LegPart({ made, leg, change }: { made: NewUnit; leg: Leg; change: Change }) {
  const spring = made.springLeg === leg
  return (
    <Choice
      label={say('take-in.foot', {
        leg: say(`leg.${leg}.title`),
        role: say(spring ? 'take-in.role.spring' : 'take-in.role.damper'),
      })}
      options={fixings.map((value) => ({ value, label: say(`take-in.fixing.${value}`) }))}
      value={made.fixing[leg]}
      onChange={(fixing) => change({ fixing: { ...made.fixing, [leg]: fixing } })}
    />
  )
}

function ForkPart({ made, change }: { made: NewUnit; change: Change }) {
  return (
    <>
      <Choice
        label={say('take-in.spring-leg')}
        options={legs.map((value) => ({ value, label: say(`leg.${value}`) }))}
        value={made.springLeg}
        onChange={(springLeg) => change({ springLeg })}
      />
      {legs.map((leg) => (
        <LegPart key={leg} made={made} leg={leg} change={change} />
      ))}
    </>
  )
}

function SheetPart({ made, change }: { made: NewUnit; change: Change }) {
  const { sheets } = useRegisters()
  const here = sheetsLike(
    made,
    sheets.filter(({ generic }) => !generic),
  )
  const generic = made.stroke === null ? [] : genericFor(made)
  const ways: SheetWay[] = [
    'maker',
    ...(here.length > 0 ? (['here'] as const) : []),
    ...(generic.length > 0 ? (['generic'] as const) : []),
  ]
  return (
    <>
      <Choice
        label={say('take-in.sheet-way')}
        options={ways.map((value) => ({
          value,
          label: say(`take-in.sheet-way.${value}`),
          detail: say(`take-in.sheet-way.${value}.note`),
        }))}
        value={ways.includes(made.sheetWay) ? made.sheetWay : null}
        onChange={(sheetWay) => change({ sheetWay, sheetChosen: null })}
      />
      {made.sheetWay === 'maker' && (
        <>
          <TextField
            label={say('take-in.sheet-name')}
            hint={say('take-in.sheet-note')}
            value={made.sheetName}
            onChange={(sheetName) => change({ sheetName })}
          />
          <TextField
            label={say('take-in.sheet-revision')}
            value={made.sheetRevision}
            onChange={(sheetRevision) => change({ sheetRevision })}
          />
        </>
      )}
      {made.sheetWay === 'here' && (
        <Choice
          label={say('take-in.sheet-here')}
          options={here.map((sheet) => ({
            value: sheet.id,
            label: (
              <span translate="no">{say('page.sheet-revision', { name: sheet.name, revision: sheet.revision })}</span>
            ),
          }))}
          value={made.sheetChosen}
          onChange={(sheetChosen) => change({ sheetChosen })}
        />
      )}
      {made.sheetWay === 'generic' && (
        <Choice
          label={say('take-in.sheet-generic')}
          options={generic.map((size) => ({
            value: size.key,
            label: say('take-in.generic-size', {
              kind: say(`take-in.kind.${size.kind}`),
              stanchion: size.stanchion === null ? '' : `${Math.round(size.stanchion * 1000)} mm `,
              travel: Math.round(size.stroke * 1000),
            }),
          }))}
          value={made.sheetChosen}
          onChange={(sheetChosen) => change({ sheetChosen })}
        />
      )}
    </>
  )
}

export function NewUnitPart({ made, onChange }: { made: NewUnit; onChange: (made: NewUnit) => void }) {
  const change: Change = (patch) => onChange({ ...made, ...patch })
  const fork = isFork(made.kind)
  return (
    <>
      <Choice
        label={say('take-in.kind')}
        options={unitKinds.map((value) => ({ value, label: say(`take-in.kind.${value}`) }))}
        value={made.kind}
        onChange={(kind) => {
          const [body = 'single-crown'] = bodiesOf(kind)
          const [damper = 'sealed-cartridge'] = dampersOf(kind)
          change({ kind, body, damper, notCovered: null, sheetWay: 'maker', sheetChosen: null })
        }}
      />
      {!fork && <p className="book">{say('page.kind-not-covered')}</p>}
      <TextField
        label={say('take-in.label')}
        hint={say('take-in.label.note')}
        value={made.label}
        onChange={(label) => change({ label })}
      />
      <TextField label={say('take-in.serial')} value={made.serial} onChange={(serial) => change({ serial })} />
      {fork && (
        <QuantityInput
          label={say('take-in.stanchion')}
          kind="length"
          value={made.stanchion}
          onChange={(stanchion) => change({ stanchion })}
        />
      )}
      <QuantityInput
        label={say(fork ? 'take-in.travel' : 'take-in.stroke')}
        kind="length"
        value={made.stroke}
        onChange={(stroke) => change({ stroke })}
      />
      <Choice
        label={say('take-in.body')}
        options={[...bodiesOf(made.kind), ...(fork ? otherBodies : [])].map((value) => ({
          value,
          label: say(`take-in.body.${value}`),
        }))}
        value={made.notCovered && made.notCovered !== 'electric' ? made.notCovered : made.body}
        onChange={(body) =>
          change(body === 'upside-down' || body === 'one-legged' ? { notCovered: body } : { body, notCovered: null })
        }
      />
      <Choice
        label={say('take-in.damper')}
        options={[...dampersOf(made.kind), ...(fork ? otherDampers : [])].map((value) => ({
          value,
          label: say(`take-in.damper.${value}`),
        }))}
        value={made.notCovered === 'electric' ? made.notCovered : made.damper}
        onChange={(damper) => change(damper === 'electric' ? { notCovered: damper } : { damper, notCovered: null })}
      />
      {made.notCovered && (
        <p className="refusal" role="status">
          {say('take-in.not-covered')}
        </p>
      )}
      {fork && <ForkPart made={made} change={change} />}
      <SheetPart made={made} change={change} />
    </>
  )
}
