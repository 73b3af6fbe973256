/** The fit of a press, worked out in a worker; nothing until the answer to these very readings is there. */
import { useEffect, useState } from 'react'
import type { PressAsked } from './press-asked.ts'
import { fitOf, type PressFitted, type PressRefused } from './press-fit.ts'

type Fit = PressFitted | PressRefused

export function usePressFit(asked: PressAsked | null): Fit | null {
  const [fitted, setFitted] = useState<{ of: string; fit: Fit } | null>(null)
  // The same readings are the same question, whoever puts it together anew.
  const question = asked && JSON.stringify(asked)
  useEffect(() => {
    if (question === null) return
    const put: PressAsked = JSON.parse(question)
    const worker = new Worker(new URL('../../../worker-press.ts', import.meta.url), { type: 'module' })
    const take = (fit: Fit) => {
      worker.terminate()
      setFitted({ of: question, fit })
    }
    worker.addEventListener('message', ({ data }: MessageEvent<Fit>) => take(data))
    // A browser that gives no worker still gets its answer, only not as smoothly.
    worker.addEventListener('error', () => take(fitOf(put)))
    worker.postMessage(put)
    return () => worker.terminate()
  }, [question])
  return fitted && fitted.of === question ? fitted.fit : null
}
