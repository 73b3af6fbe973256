import { expect, it } from 'vitest'
import { lacksOf } from './open-job.ts'
import { blankRider, blankUnit, type NotCovered } from './take-in-draft.ts'

const rider = { ...blankRider, name: 'Mateus' }
const unit = { ...blankUnit, label: 'U99', stroke: 0.15, sheetName: 'X', sheetRevision: 'A' }

it.each<NotCovered>(['upside-down', 'one-legged', 'electric'])(
  'a fork that is %s is not taken in as another kind',
  (notCovered) => {
    expect(lacksOf({ unit, rider })).toEqual([])
    expect(lacksOf({ unit: { ...unit, notCovered }, rider })).toEqual(['a kind that is covered'])
  },
)
