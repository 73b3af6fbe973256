/** What it could be: faults in words as signs come in, and the test that tells most in its minutes. */
import { runCalculation } from '@legwork/contract/calculations/index.ts'
import type { Diagnosis } from '@legwork/engine'
import { addWords, isWordKey, say, sayMessage, type UnitKind } from '@legwork/trade'
import { evidenceOf, type JobEvidence } from '@legwork/trade/faults/evidence-of-job.ts'
import { faultList, groupOf, isSafety, type ListedFault, nextTestOf } from '@legwork/trade/faults/fault-list.ts'
import {
  beforehandOf,
  type HistoryItem,
  intervalOf,
  type KnownHistory,
  speakingFor,
} from '@legwork/trade/faults/known-beforehand.ts'
import { isSignId } from '@legwork/trade/faults/signs-of.ts'
import { faultTestWords } from '@legwork/trade/words/fault-tests.ts'
import { faultWords } from '@legwork/trade/words/faults.ts'
import { SourceMark } from '../../../marks/source-mark.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { judgedMeasurements } from '../findings.ts'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'
import { useHistory } from '../use-history.ts'
import '../job-words.ts'
import './ranked-faults.css'

addWords({ ...faultWords, ...faultTestWords })

/** The words of data: every id of the network has its own. */
function textOf(key: string): string {
  return isWordKey(key) ? sayMessage({ key, params: {} }) : key
}
const faultText = (id: string) => textOf(`fault.${id}`)
const findingText = (id: string) => textOf(id.startsWith('T') ? `test.${id}.reading` : `look.sign.${id}`)
/** Inside a sentence a text begins small. */
const listed = (texts: readonly string[]) =>
  texts.map((text) => text.replace(/\p{Lu}(?=\p{Ll}|\s)/u, (letter) => letter.toLowerCase())).join('; ')

/** What was known beforehand, inside a sentence. */
function speaksText(item: HistoryItem, known: KnownHistory, kind: UnitKind): string {
  if (item !== 'hours-since') return say(`history.speaks.${item}`)
  const hours = known['hours-since']?.value ?? 0
  return say('history.speaks.hours-since', { hours: Math.round(hours), n: Math.round(hours / intervalOf(kind)) })
}

interface FaultProps {
  one: ListedFault
  first: boolean
  known: KnownHistory
  kind: UnitKind
}

function Fault({ one, first, known, kind }: FaultProps) {
  const { fault, likelihood, signs, safety } = one
  const speaks = [
    ...signs.map(findingText),
    ...speakingFor(groupOf(fault), known, kind).map((item) => speaksText(item, known, kind)),
  ]
  return (
    <li className={`fault ${likelihood}${first ? ' first' : ''}`}>
      <h3>{say(`fault.${likelihood}`, { fault: faultText(fault) })}</h3>
      {safety && <p className="book">{say('fault.safety')}</p>}
      {speaks.length > 0 && <p className="book">{say('fault.points', { signs: listed(speaks) })}</p>}
    </li>
  )
}

/** What a service mends anyway, in a few lines: it needs no test and no place of its own. */
function Cured({ cured }: { cured: readonly ListedFault[] }) {
  const services = [...new Set(cured.flatMap(({ curedBy }) => curedBy ?? []))]
  return services.map((service) => (
    <li key={service} className="fault">
      <h3>{say('fault.cured')}</h3>
      <p className="book">
        {(['likely', 'possible', 'unlikely'] as const).map((likelihood) => {
          const alike = cured.filter((one) => one.curedBy === service && one.likelihood === likelihood)
          const faults = listed(alike.map(({ fault }) => faultText(fault)))
          return alike.length > 0 && <span key={likelihood}>{say(`fault.cured.${likelihood}`, { faults })} </span>
        })}
        {say('fault.cured.by', { service: say(`service.${service}`) })}
      </p>
    </li>
  ))
}

/** One test, with its reading: there, not there, or not done. */
function TestChoice({ test }: { test: string }) {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const options = (['present', 'absent', 'unknown'] as const).map((value) => ({
    value,
    label: say(`look.sign.${value}`),
  }))
  return (
    <>
      <Choice
        label={findingText(test)}
        options={options}
        value={state.signs.findLast(({ sign }) => sign === test)?.state ?? null}
        onChange={(value) => void write('sign-noted', { sign: test, state: value, by: 'seen' })}
      />
      <Refused refusal={refusal} />
    </>
  )
}

function NextTest({ diagnosis }: { diagnosis: Diagnosis }) {
  const { state } = useJobView()
  const next = nextTestOf(diagnosis)
  if (!next) return <p className="book">{say('test.none')}</p>
  if (next.safety && state.chapters['look-over'].state !== 'done') {
    return <p className="next-test">{say('test.chassis-first')}</p>
  }
  const because = next.safety ? next.because.filter(isSafety) : next.because
  const faults = listed(because.map(faultText))
  return (
    <div className="next-test">
      <h3>{say('test.next')}</h3>
      <p>
        <b>{textOf(`test.${next.test}`)}</b>{' '}
        <span className="minutes" translate="no">
          {next.minutes} min
        </span>
      </p>
      <p className="book">{say(next.safety ? 'test.because.safety' : 'test.because', { faults })}</p>
      <TestChoice key={next.test} test={next.test} />
    </div>
  )
}

interface AnswerProps {
  evidence: JobEvidence
  diagnosis: Diagnosis
  known: KnownHistory
  kind: UnitKind
}

function Answer({ evidence, diagnosis, known, kind }: AnswerProps) {
  const { open, unlikely, cured } = faultList(diagnosis, evidence)
  return (
    <>
      {open.length + unlikely.length + cured.length === 0 && <p className="book">{say('fault.none-yet')}</p>}
      <ol className="fault-rows" aria-live="polite">
        {open.map((one, index) => (
          <Fault key={one.fault} one={one} first={index === 0} known={known} kind={kind} />
        ))}
        {unlikely.length > 0 && (
          <li className="fault book">
            {say('fault.unlikely.rest', { faults: listed(unlikely.map(({ fault }) => faultText(fault))) })}
          </li>
        )}
        <Cured cured={cured} />
      </ol>
      {diagnosis.ignored.length > 0 && (
        <p className="book">{say('fault.ignored', { signs: listed(diagnosis.ignored.map(findingText)) })}</p>
      )}
      <NextTest diagnosis={diagnosis} />
    </>
  )
}

/** The rider's words, what was found and what was looked for and is not there. */
function SaidAndSeen({ evidence }: { evidence: JobEvidence }) {
  const { state, text } = useJobView()
  const asked = state.opened?.asked ? text(state.opened.asked) : null
  const signs = (ids: readonly string[]) => listed(ids.filter(isSignId).map(findingText))
  const [found, missing] = [signs(evidence.present), signs(evidence.absent)]
  if (!asked && !found && !missing) return null
  return (
    <p className="book said">
      {asked && (
        <>
          <SourceMark kind="rider-said" /> <i translate="no">{say('take-in.saying', { words: asked })}</i>{' '}
        </>
      )}
      {found && say('look.found', { signs: found })} {missing && say('look.not-there', { signs: missing })}
    </p>
  )
}

export function RankedFaults() {
  const { state, sheet, unit, instruments } = useJobView()
  const known = useHistory()
  const kind = sheet?.kind ?? unit?.kind
  if (!kind) return null
  const judged = judgedMeasurements(state.measured, sheet, instruments, 'received')
  const evidence = evidenceOf(
    kind,
    state,
    judged.map(({ what, finding }) => ({ what, verdict: finding.verdict })),
  )
  const answer = runCalculation('diagnose', { kind, ...evidence, factors: { ...beforehandOf(known, kind) } })
  const done = state.signs.flatMap(({ sign }) => (sign.startsWith('T') ? [sign] : []))
  const note = (
    <>
      <SourceMark kind="common-practice" /> {say('fault.list.note')}
    </>
  )
  return (
    <SideHead place="above" title={say('fault.list')} note={note} className="signs faults">
      <SaidAndSeen evidence={evidence} />
      {answer.ok ? (
        // The output of `diagnose` is the engine's Diagnosis, held to its schema by the calculation's tests.
        <Answer {...{ evidence, known, kind }} diagnosis={answer.output as unknown as Diagnosis} />
      ) : (
        <p className="book">{say('fault.not-told')}</p>
      )}
      {done.length > 0 && (
        <details>
          <summary>{say('test.done')}</summary>
          {[...new Set(done)].map((test) => (
            <div key={test}>
              <p className="book">{textOf(`test.${test}`)}</p>
              <TestChoice test={test} />
            </div>
          ))}
        </details>
      )}
    </SideHead>
  )
}
