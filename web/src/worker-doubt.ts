/** Draws for `doubt` beside the page, so that the page stays quick and the drawing can be stopped. */
import { runDoubt } from '@legwork/contract/calculations/index.ts'
import { barsOf, type DoubtMessage } from './pages/calculations/doubt-messages.ts'

declare const self: DedicatedWorkerGlobalScope

const say = (message: DoubtMessage): void => self.postMessage(message)

self.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  const bars: Record<string, ReturnType<typeof barsOf>> = {}
  const answer = runDoubt(data, {
    progress: (done, of) => say({ is: 'progress', share: done / of }),
    drawn(output, numbers) {
      bars[output] = barsOf(numbers)
    },
  })
  say({ is: 'done', answer, bars })
})
