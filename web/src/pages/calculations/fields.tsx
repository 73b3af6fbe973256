/** The form of any calculation: groups in groups, lists, choices, down to single lines. */
import { say } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { DoubtfulLine } from './doubtful-line.tsx'
import { isRecord, type Path } from './draft.ts'
import { isRefusedWithin, useForm, usePlace } from './form-state.tsx'
import { JsonLines, NumberLine, QuantityLine, TextLine, WordChoice, YesNo } from './leaves.tsx'
import { type Draw, ListField, PlacesField } from './lists.tsx'
import { ChoiceName, FieldName, fieldText, WayName } from './names.tsx'
import { type PartProps, Section } from './section.tsx'
import { blank, type FormField, formOf, type GroupShape, type Shape } from './shape.ts'
import { SpringFromSheet } from './spring-from-sheet.tsx'
import { SpringKey } from './spring-key.tsx'
import './fields.css'

const isSpring = (path: Path): boolean => path.at(-1) === 'spring'

/** A field of any shape. */
export function Part({ shape, ...place }: PartProps) {
  const { withDoubt } = useForm()
  switch (shape.is) {
    case 'quantity':
      return withDoubt ? (
        <DoubtfulLine {...place} kind={shape.kind} counts={shape.counts} />
      ) : (
        <QuantityLine {...place} kind={shape.kind} counts={shape.counts} />
      )
    case 'number':
      return <NumberLine {...place} unit={shape.unit} />
    case 'text':
      return <TextLine {...place} />
    case 'choice':
      return <WordChoice {...place} options={shape.options} />
    case 'yes-no':
      return <YesNo {...place} />
    case 'list':
      return <ListField {...place} shape={shape} draw={drawn} />
    case 'places':
      return <PlacesField {...place} of={shape.of} draw={drawn} />
    case 'fixed':
      return null
    case 'group':
      return (
        <Section {...place}>
          {isSpring(place.path) && <SpringFromSheet path={place.path} airOnly />}
          {isSpring(place.path) && <SpringKey />}
          <Group shape={shape} path={place.path} />
        </Section>
      )
    case 'kinds':
      return (
        <Section {...place}>
          <Kinds shape={shape} path={place.path} />
        </Section>
      )
    case 'forms':
      return <Forms {...place} options={shape.options} />
    default:
      return <JsonLines {...place} />
  }
}

/** How a list draws what stands in it; a group in a row needs no title of its own. */
const drawn: Draw = ({ isInRow, ...part }) =>
  isInRow && part.shape.is === 'group' ? <Group shape={part.shape} path={part.path} /> : <Part {...part} />

/** The fields of a group: those needed, those given; the rest behind one button. */
export function Group({ shape, path }: { shape: GroupShape; path: Path }) {
  const { refusals } = useForm()
  const { value } = usePlace(path)
  const held = isRecord(value) ? value : {}
  const [open, setOpen] = useState(false)
  const way = wayOf(shape, held)
  const others = new Set(shape.ways.flatMap((names) => (names === way ? [] : names)))
  const asked = shape.fields.filter(({ name }) => !others.has(name) || way?.includes(name))
  const isShown = ({ name, needed }: FormField) =>
    needed || way?.includes(name) || held[name] !== undefined || isRefusedWithin(refusals, [...path, name])
  const isSection = ({ shape: { is } }: FormField) => is === 'group' || is === 'kinds' || is === 'list'
  const [shown, hidden] = [asked.filter(isShown), asked.filter((field) => !isShown(field))]
  const inOrder = [...shown.filter((field) => !isSection(field)), ...shown.filter(isSection)]
  return (
    <>
      {shape.ways.length > 1 && <WayChoice shape={shape} path={path} held={held} />}
      {inOrder.map((field) => (
        <Part
          key={field.name}
          {...field}
          path={[...path, field.name]}
          needed={field.needed || Boolean(way?.includes(field.name))}
        />
      ))}
      {hidden.length > 0 && <More fields={hidden} path={path} open={open} onOpen={() => setOpen(true)} />}
    </>
  )
}

/** What may be given beside: one line of names until it is opened. */
function More({ fields, path, open, onOpen }: { fields: FormField[]; path: Path; open: boolean; onOpen: () => void }) {
  const { calc, change } = useForm()
  if (!open)
    return (
      <button type="button" className="calc-more" onClick={onOpen}>
        <b>{say('calc.more')}</b>{' '}
        <span className="book">{fields.map(({ name }) => fieldText(calc, [...path, name])).join(' · ')}</span>
      </button>
    )
  return fields.map((field) => {
    const { is } = field.shape
    const at = [...path, field.name]
    if (is !== 'group' && is !== 'kinds' && is !== 'list' && is !== 'forms')
      return <Part key={field.name} {...field} path={at} />
    return (
      <Button key={field.name} kind="second" size="row" onPress={() => change(at, blank(field.shape))}>
        {say('calc.add', { name: fieldText(calc, at) })}
      </Button>
    )
  })
}

/** The way of asking whose fields stand there; the first where none do. */
function wayOf({ ways }: GroupShape, held: Record<string, unknown>): readonly string[] | undefined {
  return ways.find((names) => names.some((name) => held[name] !== undefined)) ?? ways[0]
}

function WayChoice({ shape, path, held }: { shape: GroupShape; path: Path; held: Record<string, unknown> }) {
  const { calc, change } = useForm()
  const chosen = wayOf(shape, held)
  function choose(index: string): void {
    const way = shape.ways[Number(index)] ?? []
    const all = new Set(shape.ways.flat())
    const kept = Object.entries(held).filter(([name]) => !all.has(name) || way.includes(name))
    const begun = way.map((name) => [name, held[name] ?? blankField(shape, name)] as const)
    change(path, Object.fromEntries([...kept, ...begun]))
  }
  return (
    <Choice
      label={say('calc.way')}
      options={shape.ways.map((names, index) => ({
        value: String(index),
        label: <WayName calc={calc} path={path} names={names} />,
      }))}
      value={String(chosen ? shape.ways.indexOf(chosen) : 0)}
      onChange={choose}
    />
  )
}

/** A way that was chosen begins with its fields empty: a text of nothing is refused as missing would be. */
function blankField(shape: GroupShape, name: string): unknown {
  const field = shape.fields.find((one) => one.name === name)
  return (field && blank(field.shape)) ?? ''
}

/** One of several kinds: a choice, then the fields of the kind chosen. What both kinds have stays. */
function Kinds({ shape, path }: { shape: Extract<Shape, { is: 'kinds' }>; path: Path }) {
  const { calc } = useForm()
  const { value, change } = usePlace(path)
  const held = isRecord(value) ? value : {}
  const chosen = shape.options.find(({ word }) => word === held[shape.by]) ?? shape.options[0]
  function choose(word: string): void {
    const next = shape.options.find((option) => option.word === word)?.shape
    const kept = next?.fields.filter(({ name }) => held[name] !== undefined).map(({ name }) => [name, held[name]])
    change({ [shape.by]: word, ...(next ? Object(blank(next)) : {}), ...Object.fromEntries(kept ?? []) })
  }
  return (
    <>
      {isSpring(path) && <SpringFromSheet path={path} airOnly={false} />}
      <Choice
        label={<FieldName calc={calc} path={[...path, shape.by]} />}
        quiet
        options={shape.options.map(({ word }) => ({ value: word, label: <ChoiceName word={word} path={path} /> }))}
        value={chosen?.word ?? null}
        onChange={choose}
      />
      {isSpring(path) && chosen?.word === 'air' && <SpringKey />}
      {chosen && <Group key={chosen.word} shape={chosen.shape} path={path} />}
    </>
  )
}

/** One of several forms of the same thing: a number, a start and an end, a table. */
function Forms({ options, path, needed, instead }: Omit<PartProps, 'shape'> & { options: readonly Shape[] }) {
  const { value, change } = usePlace(path)
  const chosen = formOf(options, value)
  const shape = options[chosen]
  const nameOf = ({ is }: Shape) => {
    if (is === 'group' || is === 'kinds') return say('calc.form.group')
    return is === 'list' || is === 'places' ? say('calc.form.list') : say('calc.form.number')
  }
  return (
    <Section path={path} needed={needed}>
      <Choice
        label={say('calc.form')}
        quiet
        options={options.map((option, index) => ({ value: String(index), label: nameOf(option) }))}
        value={String(chosen)}
        onChange={(index) => {
          const next = options[Number(index)]
          change(next ? (blank(next) ?? '') : undefined)
        }}
      />
      {shape?.is === 'group' ? (
        <Group shape={shape} path={path} />
      ) : (
        shape && <Part key={chosen} shape={shape} path={path} needed={needed} instead={instead} />
      )}
    </Section>
  )
}
