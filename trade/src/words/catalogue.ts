/** Every text of the product, assembled from one file a subject. */
import { gateWords } from './gates.ts'
import { jobWords } from './job.ts'
import { stepWords } from './steps.ts'

export const catalogue = {
  ...jobWords,
  ...stepWords,
  ...gateWords,
} as const satisfies Record<string, string>
