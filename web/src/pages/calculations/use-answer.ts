/** The answer to what was asked. All are worked out at once, but for `doubt`, which is drawn in a worker. */
import { type Answer, runCalculation } from '@legwork/contract/calculations/index.ts'
import { useEffect, useMemo, useState } from 'react'
import type { Bars, DoubtMessage } from './doubt-messages.ts'
import type { Asked } from './use-asked.ts'

export interface Answering {
  answer: Answer | null
  /** Share of the draws that are done, while they go on. */
  progress: number | null
  stop: () => void
  isStopped: boolean
  /** Draws of each answer of `doubt`. */
  bars: Readonly<Record<string, Bars>>
}

interface Drawing {
  of: Asked
  progress: number | null
  answer: Answer | null
  bars: Answering['bars']
  isStopped: boolean
}

const atOnce = (name: string, { input }: Asked): Answer | null => (input ? runCalculation(name, input) : null)

/** `asked` is the same object for the same question. */
export function useAnswer(name: string, asked: Asked): Answering {
  const isDrawn = name === 'doubt'
  const worked = useMemo(() => (isDrawn ? null : atOnce(name, asked)), [name, asked, isDrawn])
  const [drawing, setDrawing] = useState<Drawing | null>(null)
  const [end, setEnd] = useState<{ now: () => void } | null>(null)
  useEffect(() => {
    if (!isDrawn || !asked.input) return
    const begun: Drawing = { of: asked, progress: 0, answer: null, bars: {}, isStopped: false }
    setDrawing(begun)
    const worker = new Worker(new URL('../../worker-doubt.ts', import.meta.url), { type: 'module' })
    worker.addEventListener('message', ({ data }: MessageEvent<DoubtMessage>) => {
      if (data.is === 'progress') return setDrawing({ ...begun, progress: data.share })
      setDrawing({ ...begun, progress: null, answer: data.answer, bars: data.bars })
      worker.terminate()
    })
    // A browser that gives no worker still gets its answer, only not as smoothly.
    worker.addEventListener('error', () => setDrawing({ ...begun, progress: null, answer: atOnce(name, asked) }))
    worker.postMessage(asked.input)
    setEnd({
      now() {
        worker.terminate()
        setDrawing({ ...begun, progress: null, isStopped: true })
      },
    })
    return () => worker.terminate()
  }, [name, asked, isDrawn])
  const own = drawing?.of === asked ? drawing : null
  return {
    answer: isDrawn ? (own?.answer ?? null) : worked,
    progress: own?.progress ?? null,
    stop: () => end?.now(),
    isStopped: own?.isStopped ?? false,
    bars: own?.bars ?? {},
  }
}
