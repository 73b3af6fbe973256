/** Signs and tests of `diagnose`: what is there, what is not; whatever is not named was not looked for. */
import { isWordKey, say, sayMessage } from '@legwork/trade'
import { faultNetwork } from '@legwork/trade/faults/fault-network.ts'
import { Choice } from '../../ui/choice.tsx'
import { Field } from '../../ui/field.tsx'
import { isRecord } from './draft.ts'
import { useForm } from './form-state.tsx'
import { TakeOut } from './rows.tsx'
import { Section } from './section.tsx'

const texts = (value: unknown): string[] => (Array.isArray(value) ? value.filter((one) => typeof one === 'string') : [])

function said(key: string, otherwise: string): string {
  return isWordKey(key) ? sayMessage({ key, params: {} }) : otherwise
}

/** A sign as it is seen; a test with what it would show. */
function findingText(id: string): string {
  const reading = said(`test.${id}.reading`, '')
  if (reading === '') return said(`look.sign.${id}`, id)
  return say('calc.test-shows', { test: said(`test.${id}`, id), reading })
}

const isOfKind = (kinds: readonly string[] | undefined, kind: unknown) =>
  kinds === undefined || typeof kind !== 'string' || kinds.includes(kind)

export function FindingsField() {
  const { draft, change } = useForm()
  const held = isRecord(draft) ? draft : {}
  const [present, absent] = [texts(held.present), texts(held.absent)]
  const named = [...present, ...absent].sort()
  function put(id: string, where: 'present' | 'absent' | null): void {
    const others = (all: string[]) => all.filter((one) => one !== id)
    change([], {
      ...held,
      present: [...others(present), ...(where === 'present' ? [id] : [])],
      absent: [...others(absent), ...(where === 'absent' ? [id] : [])],
    })
  }
  const offered = (all: readonly { id: string; kinds?: readonly string[] }[]) =>
    all.filter(({ id, kinds }) => !named.includes(id) && isOfKind(kinds, held.kind))
  return (
    <Section path={['present']} needed label={say('calc.findings')}>
      <ul>
        {named.map((id) => (
          <li key={id} className="calc-finding">
            <span>{findingText(id)}</span>
            <Choice
              label={findingText(id)}
              quiet
              options={[
                { value: 'present', label: say('calc.there') },
                { value: 'absent', label: say('calc.not-there') },
              ]}
              value={present.includes(id) ? 'present' : 'absent'}
              onChange={(where) => put(id, where)}
            />
            <TakeOut name={say('calc.take-out.name', { name: findingText(id) })} onPress={() => put(id, null)} />
          </li>
        ))}
      </ul>
      <Field label={say('calc.findings.add')}>
        {(control) => (
          <select {...control} value="" onChange={(event) => put(event.target.value, 'present')}>
            <option value="">{say('calc.findings.choose')}</option>
            <optgroup label={say('calc.field.signs')}>
              {offered(faultNetwork.signs).map(({ id }) => (
                <option key={id} value={id}>
                  {findingText(id)}
                </option>
              ))}
            </optgroup>
            <optgroup label={say('calc.field.tests')}>
              {offered(faultNetwork.tests).map(({ id }) => (
                <option key={id} value={id}>
                  {findingText(id)}
                </option>
              ))}
            </optgroup>
          </select>
        )}
      </Field>
    </Section>
  )
}
