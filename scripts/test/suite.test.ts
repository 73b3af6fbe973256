import { describe, expect, it } from 'vitest'
import { countReport } from './suite.mjs'

const file = (status: string, ...statuses: string[]) => ({
  name: 'a.test.ts',
  status,
  assertionResults: statuses.map((each) => ({ fullName: each, status: each })),
})

/** Reports as vitest's JSON reporter writes them (the states are Jest's, whose format it is). */
describe('counting a report', () => {
  it('counts each test once', () => {
    const report = { testResults: [file('failed', 'passed', 'failed'), file('passed', 'passed')] }
    expect(countReport(report, false)).toMatchObject({ passed: 2, failed: 1 })
  })

  it('a file that fell over without a failing test is a failure', () => {
    expect(countReport({ testResults: [file('failed'), file('failed', 'passed')] }, false)).toMatchObject({
      passed: 1,
      failed: 2,
    })
  })

  it.each(['skipped', 'pending', 'todo', 'disabled'])(
    '%s is passed over at a desk and fails where it is strict',
    (state) => {
      const report = { testResults: [file('passed', 'passed', state)] }
      expect(countReport(report, false)).toMatchObject({ passed: 1, failed: 0 })
      expect(countReport(report, true)).toMatchObject({ passed: 1, failed: 1 })
    },
  )
})
