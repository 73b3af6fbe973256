/** The fit of a press, worked out in a worker; the last one stays until the next is there. */
import { useEffect, useState } from 'react'
import type { PressAsked } from './press-asked.ts'
import { fitOf, type PressFitted } from './press-fit.ts'

export function usePressFit(asked: PressAsked | null): PressFitted | null {
  const [fitted, setFitted] = useState<{ of: string; fit: PressFitted } | null>(null)
  // The same readings are the same question, whoever puts it together anew.
  const question = asked && JSON.stringify(asked)
  useEffect(() => {
    if (question === null) return
    const put: PressAsked = JSON.parse(question)
    const worker = new Worker(new URL('../../../worker-press.ts', import.meta.url), { type: 'module' })
    const take = (fit: PressFitted) => setFitted({ of: question, fit })
    worker.addEventListener('message', ({ data }: MessageEvent<PressFitted>) => {
      take(data)
      worker.terminate()
    })
    // A browser that gives no worker still gets its answer, only not as smoothly.
    worker.addEventListener('error', () => take(fitOf(put)))
    worker.postMessage(put)
    return () => worker.terminate()
  }, [question])
  return question === null ? null : (fitted?.fit ?? null)
}
