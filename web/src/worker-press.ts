/** Fits of a press beside the page, so that the number pad stays quick. */
import { fitOf } from './pages/job/bench-tests/press-fit.ts'

declare const self: DedicatedWorkerGlobalScope

self.addEventListener('message', ({ data }: MessageEvent<Parameters<typeof fitOf>[0]>) => {
  self.postMessage(fitOf(data))
})
