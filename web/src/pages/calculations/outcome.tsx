/** What came of the question: the answer with its picture, what was refused, or how far the draws are. */
import { answerSchema, type Calculation } from '@legwork/contract/calculations/index.ts'
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { useOwnWidth } from '../../charts/use-own-width.ts'
import { Button } from '../../ui/button.tsx'
import { Answer } from './answer.tsx'
import { linesOf } from './answer-lines.ts'
import { pictures } from './pictures/index.ts'
import type { PictureProps } from './pictures/picture.ts'
import { Refused } from './refused.tsx'
import type { Answering } from './use-answer.ts'
import './pictures/picture.css'

interface OutcomeProps {
  one: Calculation
  asked: Record<string, unknown> | null
  answering: Answering
  /** Something was written since it was asked. */
  isChanged: boolean
}

export function Outcome({ one, asked, answering, isChanged }: OutcomeProps) {
  const { answer, progress, stop, isStopped, bars } = answering
  const told = useMemo(() => answerSchema(one), [one])
  if (progress !== null) return <Drawing share={progress} onStop={stop} />
  if (!answer || (!answer.ok && isChanged))
    return <p className="book">{say(isStopped ? 'calc.doubt.stopped' : 'calc.not-yet')}</p>
  if (!answer.ok) return <Refused calc={one.name} errors={answer.errors} />
  const { units: _units, assumptions: _assumptions, ...output } = answer.output
  // The ranking says the same of each cause, and more.
  const { posteriors: _posteriors, ...seen } = output
  return (
    <div className={isChanged ? 'calc-stale' : undefined} data-answered={isChanged ? 'before' : 'now'}>
      {isChanged && <p className="calc-changed">{say('calc.changed')}</p>}
      <Answer
        calc={one.name}
        lines={linesOf(seen, told)}
        picture={asked && one.name in pictures ? <Picture one={one} asked={asked} output={output} bars={bars} /> : null}
      />
    </div>
  )
}

/** Drawn as wide as its place; the lines and tables below say the same. */
function Picture({ one, asked, ...shown }: { one: Calculation } & Omit<PictureProps, 'input' | 'width'>) {
  const [place, width] = useOwnWidth(386)
  const Drawn = pictures[one.name]
  const read = useMemo(() => one.input.safeParse(asked), [one, asked])
  if (!Drawn || !read.success) return null
  return (
    <div ref={place} className="calc-picture">
      <Drawn asked={asked} input={read.data} {...shown} width={Math.min(width, 640)} />
    </div>
  )
}

/** How far the draws are, and a way to stop them. */
function Drawing({ share, onStop }: { share: number; onStop: () => void }) {
  const percent = Math.round(share * 100)
  return (
    <div className="calc-drawing">
      <p>{say('calc.doubt.drawing', { percent })}</p>
      <progress value={share} max={1} aria-label={say('calc.doubt.drawing', { percent })} />
      <Button kind="second" size="row" onPress={onStop}>
        {say('calc.doubt.stop')}
      </Button>
    </div>
  )
}
