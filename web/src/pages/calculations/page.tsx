/** One calculation: what goes in at the left, what comes out at the right. Worked out on this station. */
import {
  type Answer as Answered,
  type Calculation,
  calculations,
  describeCalculation,
} from '@legwork/contract/calculations/index.ts'
import { say } from '@legwork/trade'
import { type FormEvent, useEffect, useMemo, useState } from 'react'
import { Button, LinkButton } from '../../ui/button.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { AsJson } from './as-json.tsx'
import { CopyButton } from './copy-button.tsx'
import { Docs } from './docs.tsx'
import { DoubtFields } from './doubt-fields.tsx'
import { inputOf, isRecord, type Path, withValue } from './draft.ts'
import { Group } from './fields.tsx'
import { FindingsField } from './findings-field.tsx'
import { FormProvider } from './form-state.tsx'
import { Outcome } from './outcome.tsx'
import { shapeOf } from './shape.ts'
import { useAnswer } from './use-answer.ts'
import { useAsked } from './use-asked.ts'
import { useStickyTop } from './use-sticky-top.ts'
import './page.css'

const formId = 'calculation-form'

export function CalculationPage({ name }: { name: string }) {
  const one = Object.hasOwn(calculations, name) ? calculations[name] : undefined
  if (one) return <Worked key={name} one={one} />
  return (
    <ShopFrame place="calculations" title={say('calc.title')}>
      <p className="empty">{say('calc.unknown')}</p>
      <LinkButton kind="second" arrow="back" href="/calculations">
        {say('calc.back')}
      </LinkButton>
    </ShopFrame>
  )
}

function Worked({ one }: { one: Calculation }) {
  const [asked, ask] = useAsked(one.name)
  /** What was written since the question in the address was asked; another address brings its own. */
  const [held, setHeld] = useState<{ since: string; draft: unknown } | null>(null)
  const draft = held?.since === asked.text ? held.draft : (asked.input ?? one.example)
  // The example is worked out at once, so that the page shows what it is for; draws take a while and are asked for.
  const opened = useMemo(() => {
    const example = one.name === 'doubt' || asked.isDamaged ? null : inputOf(one.example)
    return asked.input === null && isRecord(example) ? { ...asked, input: example } : asked
  }, [asked, one])
  const answering = useAnswer(one.name, opened)
  const { answer } = answering
  const [answerPlace, stickyTop] = useStickyTop<HTMLElement>()
  const [pressed, setPressed] = useState(0)
  useEffect(() => {
    const place = answerPlace.current
    // Where it stands beside the form it is in view already.
    if (pressed > 0 && answer && place && place.getBoundingClientRect().top > innerHeight / 2) place.scrollIntoView()
  }, [pressed, answerPlace, answer])

  function submit(event?: FormEvent): void {
    event?.preventDefault()
    const input = inputOf(draft)
    if (!isRecord(input)) return
    ask(input)
    setHeld(null)
    setPressed(pressed + 1)
  }
  const isChanged = opened.input !== null && JSON.stringify(inputOf(draft)) !== JSON.stringify(opened.input)
  const change = (next: unknown) => setHeld({ since: asked.text, draft: next })
  return (
    <ShopFrame
      place="calculations"
      title={one.title}
      actions={
        <>
          <LinkButton kind="second" arrow="back" href="/calculations" className="tablet-up">
            {say('calc.back')}
          </LinkButton>
          <Button kind="main" type="submit" form={formId} arrow="forward">
            {say('calc.run')}
          </Button>
        </>
      }
    >
      <header className="calc-head">
        <h1 translate="no">{one.title}</h1>
        <p className="book" translate="no">
          {one.summary}
        </p>
      </header>
      <div className="calculation">
        <form id={formId} noValidate onSubmit={submit} className="calc-form">
          <h2>{say('calc.input')}</h2>
          {asked.input === null && held === null && <p className="book">{say('calc.example')}</p>}
          {asked.isDamaged && (
            <p className="refusal" role="alert">
              {say('calc.unreadable')}
            </p>
          )}
          <Fields one={one} draft={draft} onChange={change} answer={isChanged ? null : answer} />
          <AsJson input={inputOf(draft)} output={answer?.ok ? answer.output : null} onTake={change} />
        </form>
        <section ref={answerPlace} className="calc-answer" style={{ top: stickyTop }} aria-label={say('calc.output')}>
          <h2>{say('calc.output')}</h2>
          <p className="unseen" role="status">
            {saidOf(answer)}
          </p>
          <div>
            <Outcome one={one} asked={opened.input} answering={answering} isChanged={isChanged} />
          </div>
          {answer?.ok && (asked.isShort ? <Share /> : <p className="book">{say('calc.link.long')}</p>)}
          <Docs one={one} assumptions={answer?.ok ? sentences(answer.output.assumptions) : []} />
        </section>
      </div>
    </ShopFrame>
  )
}

/** What is said aloud when an answer is there; the page shows the rest. */
function saidOf(answer: Answered | null): string {
  if (!answer) return ''
  return answer.ok ? say('calc.done') : say('calc.refused', { n: answer.errors.length })
}

const sentences = (value: unknown): string[] =>
  Array.isArray(value) ? value.filter((one) => typeof one === 'string') : []

function Share() {
  return <CopyButton text={location.href} label={say('calc.link')} done={say('calc.link.done')} />
}

interface FieldsProps {
  one: Calculation
  draft: unknown
  onChange: (draft: unknown) => void
  answer: Answered | null
}

function Fields({ one, draft, onChange, answer }: FieldsProps) {
  const shape = useMemo(() => shapeOf(describeCalculation(one).schema), [one])
  const state = {
    calc: one.name,
    draft,
    change: (path: Path, value: unknown) => onChange(withValue(draft, path, value)),
    refusals: answer && !answer.ok ? answer.errors : [],
  }
  if (one.name === 'doubt')
    return (
      <FormProvider state={state}>
        <DoubtFields />
      </FormProvider>
    )
  if (shape.is !== 'group') return null
  const own = one.name === 'diagnose' ? ['present', 'absent'] : []
  return (
    <FormProvider state={state}>
      {own.length > 0 && <FindingsField />}
      <Group shape={{ ...shape, fields: shape.fields.filter(({ name }) => !own.includes(name)) }} path={[]} />
    </FormProvider>
  )
}
