import { describe, expect, it } from 'vitest'
import { sayMessage } from '../words/words.ts'
import { psi, reading, sheetOfDemo, text, WrittenJob, waitFor } from './written-job.ts'

describe('a whole job on the lower legs of an air fork', () => {
  it('goes through its seven chapters, and every next act is the one that is then done', () => {
    const job = new WrittenJob()
    expect(job.state.state).toBe('booked')
    job.open()
    expect(job.state.next).toMatchObject({ kind: 'snapshot', item: 'length' })
    job.keepSnapshot()
    expect(job.state.next).toMatchObject({ kind: 'chassis', item: 'crown' })
    job.lookOver()
    expect(job.state.next).toMatchObject({ kind: 'plan' })
    expect(job.plan().ok).toBe(true)
    expect(job.state.state).toBe('under-way')
    for (let guard = 0; guard < 60 && job.state.chapters.work.state !== 'done'; guard++) {
      const { next } = job.state
      if (next.kind === 'set-up') job.setUp()
      else if (next.step)
        expect(job.tick(next.step, next.leg, { after: waitFor(next.step) }), next.step).toEqual({ ok: true })
    }
    expect(job.state.next).toMatchObject({ kind: 'measure', item: 'free-length' })
    job.put('measured', { what: 'free-length', leg: null, phase: 'done', reading: reading(0.1645, 'm') })
    expect(job.state.next.kind).toBe('setting')
    expect(job.write().ok).toBe(true)
    expect(job.state.next).toMatchObject({ kind: 'put-back', item: 'wheel' })
    job.putBack()
    expect(job.state.next).toMatchObject({ kind: 'measure', item: 'leak-down-start', chapter: 'prove' })
    job.leakDown()
    expect(job.state.next).toMatchObject({ kind: 'hand-over', blocked: null })
    expect(job.handOver().ok).toBe(true)
    const { state } = job
    expect(state.state).toBe('handed-over')
    expect(Object.values(state.chapters).map((chapter) => chapter.state)).toEqual(Array(7).fill('done'))
    expect(state.contested).toEqual([])
    expect(state.minutesDone).toBe(60) // the demo job J02 is quoted at 60 min
  })

  it('keeps which oil went in, in the words of who ticked; a tick of before that field has none', () => {
    const job = new WrittenJob().ready().workUntil('oil-in')
    job.put('step-done', { ...job.tickBody('oil-in', 'left'), used: text })
    job.put('step-done', job.tickBody('oil-in', 'right'))
    const done = job.state.steps.find(({ step }) => step === 'oil-in')?.done
    expect([done?.left?.used, done?.right?.used]).toEqual([text, null])
    expect(job.state.texts.has(text)).toBe(true)
  })

  it('says at the first foot why no air may go in yet, and which leg is first', () => {
    const job = new WrittenJob().ready().workUntil('foot-torque')
    job.tick('foot-torque', 'left')
    const { state } = job
    expect(state.currentStep).toBe(12) // step 13 of 17, as the steps of the procedure are counted
    expect(state.steps).toHaveLength(17)
    expect(state.minutesDone).toBe(36)
    expect(state.next).toMatchObject({ step: 'foot-torque', leg: 'right', blocked: null })
    expect(state.ahead && sayMessage(state.ahead.because)).toBe(
      'No air before both feet are torqued. The right leg is not ticked.',
    )
    expect(state.ahead && sayMessage(state.ahead.act)).toBe('Right leg first')
  })

  it('works on a coil fork without air steps and on a dual crown with its clamps', () => {
    for (const key of ['U08', 'U07']) {
      const job = new WrittenJob(sheetOfDemo(key)).ready().workUntil()
      expect(job.state.chapters.work.state, key).toBe('done')
    }
  })
})

describe('waivers, stops and decisions', () => {
  it('lets an owner or technician pass a soft gate with a reason, nobody a hard one', () => {
    const job = new WrittenJob().ready().workUntil('travel-air-out')
    job.setUp()
    expect(job.tick('fill-quarter')).toMatchObject({ ok: false, gate: 'R26' })
    expect(job.try('gate-waived', { gate: 'R26', reason: 'r' }, { by: 'sunniva' })).toMatchObject({
      code: 'role.decides',
    })
    expect(job.try('gate-waived', { gate: 'R16', reason: 'r' })).toMatchObject({ code: 'gate.no-way-round' })
    expect(job.try('gate-waived', { gate: 'R5', reason: 'r' })).toMatchObject({ code: 'gate.no-way-round' })
    expect(job.try('gate-waived', { gate: 'R26', reason: 'r' }).ok).toBe(true)
    expect(job.tick('fill-quarter').ok).toBe(true)
    expect(job.state.waivers.map((waiver) => waiver.gate)).toEqual(['R26'])
  })

  it('stops on a condemned part and takes no step until it is struck', () => {
    const job = new WrittenJob().ready()
    const found = job.put('chassis-checked', { part: 'crown', verdict: 'condemned', found: null })
    expect(job.state.stopped).toMatchObject({ gate: 'R1', entry: found })
    expect(job.state.state).toBe('stopped')
    expect(job.tick('outside-off')).toMatchObject({ ok: false, gate: 'R1' })
    expect(job.try('stop-lifted', { why: 'w' })).toMatchObject({ code: 'stop.condemned' })
    expect(job.try('struck', { entry: found, reason: 'r' }).ok).toBe(true)
    expect(job.state.stopped).toBeNull()
    expect(job.tick('outside-off').ok).toBe(true)
  })

  it('keeps a person’s stop until a person lifts it', () => {
    const job = new WrittenJob().ready()
    job.put('stopped', { gate: 'R4', why: 'w' })
    expect(job.tick('outside-off')).toMatchObject({ code: 'job.stopped' })
    expect(job.try('stop-lifted', { why: 'w' }, { by: 'sunniva' })).toMatchObject({ code: 'role.decides' })
    expect(job.try('stop-lifted', { why: 'w' }).ok).toBe(true)
    expect(job.tick('outside-off').ok).toBe(true)
  })
})

describe('strikes', () => {
  it('make contested what rested on the struck entry, and the job stops until a person rules', () => {
    const job = new WrittenJob().ready().workUntil('lowers-off')
    const airOut = job.state.steps.find((step) => step.step === 'air-out')?.done.once?.entry ?? ''
    expect(job.try('struck', { entry: airOut, reason: 'r' }).ok).toBe(true)
    const { state } = job
    expect(state.contested.map((one) => [one.kind, one.gate])).toEqual([
      ['step-done', 'R3'],
      ['step-done', 'R3'],
    ])
    expect(state.state).toBe('stopped')
    expect(state.facts['foot.left']).toBe('fast')
    expect(state.next.kind).toBe('rule')
    expect(job.tick('air-out')).toMatchObject({ code: 'job.stopped' })
    for (const one of state.contested)
      expect(job.try('ruled', { entry: one.entry, ruling: 'stands', reason: 'r' }).ok).toBe(true)
    expect(job.state.state).toBe('under-way')
    expect(job.state.facts['foot.left']).toBe('out')
    expect(job.state.contested.map((one) => one.ruling)).toEqual(['stands', 'stands'])
  })

  it('are taken once, not of a strike, not of the opening, not of another book’s entry', () => {
    const job = new WrittenJob().ready()
    const note = job.put('noted', { text: 't' })
    job.put('struck', { entry: note, reason: 'r' })
    const strike = job.entries.at(-1)?.id ?? ''
    expect(job.try('struck', { entry: note, reason: 'r' })).toMatchObject({ code: 'strike.already' })
    expect(job.try('struck', { entry: strike, reason: 'r' })).toMatchObject({ code: 'strike.of-strike' })
    expect(job.try('struck', { entry: 'entry-1', reason: 'r' })).toMatchObject({ code: 'strike.opening' })
    expect(job.try('struck', { entry: 'elsewhere', reason: 'r' })).toMatchObject({ code: 'entry.unknown' })
    expect(job.state.notes).toEqual([])
  })
})

describe('entered from offline', () => {
  it('is kept but contested where its gate no longer holds, makes no facts, and stops the job', () => {
    const job = new WrittenJob().ready().workUntil('foot-torque')
    job.setUp()
    const air = job.put('step-done', job.tickBody('fill-quarter', null), { station: 'other' })
    expect(job.state.contested).toMatchObject([{ entry: air, gate: 'R16', ruling: null }])
    expect(job.state.facts.fill).toBe('none')
    expect(job.state.stopped).toMatchObject({ entry: air, gate: 'R16' })
    expect(job.try('ruled', { entry: air, ruling: 'struck', reason: 'r' }, { by: 'sunniva' })).toMatchObject({
      code: 'role.decides',
    })
    expect(job.try('ruled', { entry: air, ruling: 'struck', reason: 'r' }).ok).toBe(true)
    expect(job.state.stopped).toBeNull()
    expect(job.state.contested).toEqual([])
  })
})

describe('done earlier, entered now', () => {
  it('opens what it would have opened then', () => {
    const job = new WrittenJob().ready()
    for (const step of ['outside-off', 'trapped-check', 'knob-off']) job.tick(step)
    const before = new Date(Date.parse('2026-05-02T09:00:00.000Z') + job.minute * 60_000).toISOString()
    job.put('step-done', job.tickBody('foot-off', 'left'), { after: 5 })
    expect(job.state.contested).toMatchObject([{ gate: 'R3' }])
    job.put('step-done', job.tickBody('air-out', null), { standing: { mode: 'late', doneAt: before } })
    job.put('step-done', job.tickBody('trapped-check', null), { standing: { mode: 'late', doneAt: before } })
    expect(job.state.contested).toEqual([])
    expect(job.state.facts['foot.left']).toBe('out')
  })

  it('stops the job where a gate with no way round was shut then', () => {
    const job = new WrittenJob().ready().workUntil('foot-torque')
    job.setUp()
    const doneAt = new Date(Date.parse('2026-05-02T09:00:00.000Z') + job.minute * 60_000).toISOString()
    const late = job.put('step-done', job.tickBody('fill-quarter', null), { standing: { mode: 'late', doneAt } })
    expect(job.state.stopped).toMatchObject({ entry: late, gate: 'R16' })
    expect(job.state.facts.fill).toBe('quarter')
    expect(job.try('stop-lifted', { why: 'w' }).ok).toBe(true)
    expect(job.state.stopped).toBeNull()
  })

  it('stops it too where a gate that may be passed was shut as well', () => {
    const job = new WrittenJob().open().lookOver() // no snapshot: R2; air in: R3
    job.plan()
    const doneAt = new Date(Date.parse('2026-05-02T09:00:00.000Z') + job.minute * 60_000).toISOString()
    const late = job.put('step-done', job.tickBody('foot-off', 'left'), { standing: { mode: 'late', doneAt } })
    expect(job.state.stopped).toMatchObject({ entry: late, gate: 'R3' })
    expect(job.state.facts['foot.left']).toBe('out')
  })

  it('counts where the plan it belonged to is struck: what was done was done', () => {
    const job = new WrittenJob().ready().workUntil('foot-torque')
    job.setUp()
    const doneAt = new Date(Date.parse('2026-05-02T09:00:00.000Z') + job.minute * 60_000).toISOString()
    job.put('step-done', job.tickBody('fill-quarter', null), { standing: { mode: 'late', doneAt } })
    const plan = job.entries.find((entry) => entry.kind === 'plan-agreed')?.id ?? ''
    job.put('struck', { entry: plan, reason: 'r' })
    expect(job.state).toMatchObject({ steps: [], facts: { fill: 'quarter', pressure: 'held' } })
    expect(job.state.stopped).not.toBeNull()
  })

  it('is refused when it claims to be done after it was written', () => {
    const job = new WrittenJob().ready()
    const standing = { mode: 'late', doneAt: '2026-05-03T09:00:00.000Z' } as const
    expect(job.try('noted', { text: 't' }, { standing })).toMatchObject({ code: 'late.in-future' })
  })
})

describe('carried over from the paper book', () => {
  it('is not gated and marked so', () => {
    const job = new WrittenJob()
    const standing = { mode: 'carried-over', doneAt: '2026-05-01T09:00:00.000Z' } as const
    job.put(
      'job-opened',
      { unit: 'u', rider: null, bike: null, visit: 'v', asked: null, spendAllowed: null },
      { standing },
    )
    job.put('handed-over', { receivedBy: 't', initials: null }, { standing })
    expect(job.state).toMatchObject({ carriedOver: true, state: 'handed-over', stopped: null })
    expect(job.state.chapters.work.state).toBe('not-needed')
  })
})

describe('who vouches for the pressure', () => {
  it('nobody after 12 h: the air is let out and looked at once more', () => {
    const job = new WrittenJob().ready().workUntil('foot-off')
    const check = job.tick('foot-off', 'left', { after: 12 * 60 + 1 })
    expect(check).toMatchObject({ ok: false, gate: 'R3' })
    expect(check.ok ? '' : check.allowed).toContain('The pressure is unknown.')
    job.context.now = new Date(Date.parse('2026-05-02T09:00:00.000Z') + job.minute * 60_000).toISOString()
    expect(job.state.next).toMatchObject({ step: 'air-out', blocked: null })
    expect(job.tick('air-out').ok).toBe(true)
    expect(job.state.next.step).toBe('trapped-check')
    expect(job.tick('foot-off', 'left')).toMatchObject({ gate: 'R4' })
    expect(job.tick('trapped-check').ok).toBe(true)
    expect(job.tick('foot-off', 'left').ok).toBe(true)
  })

  it('not another person, whether they take over by an entry or by a tick', () => {
    const taken = new WrittenJob().ready().workUntil('foot-off')
    taken.put('taken-over', { from: 'odalys' }, { by: 'bram' })
    expect(taken.tick('foot-off', 'left', { by: 'bram' })).toMatchObject({ gate: 'R3' })
    const ticked = new WrittenJob().ready().workUntil('foot-off')
    expect(ticked.tick('foot-off', 'left', { by: 'bram' })).toMatchObject({ gate: 'R3' })
    expect(ticked.tick('foot-off', 'left').ok).toBe(true)
  })

  it('held after any filling, even when nothing else changed', () => {
    const job = new WrittenJob().ready().workUntil()
    expect(job.state.facts.pressure).toBe('held')
    expect(job.tick('foot-off', 'left')).toMatchObject({ ok: false, gate: 'R3' })
    expect(job.setUp(141 * psi)).toMatchObject({ gate: 'R27' }) // its sheet: 140 psi
  })
})

it('where it will be ridden: what was said last counts, and a struck line does not', () => {
  const job = new WrittenJob().open()
  expect(job.state.trail).toBeNull()
  job.put('trail-said', { altitude: 400, temperature: 293.15 })
  const later = job.put('trail-said', { altitude: 1650, temperature: 285.15 }, { by: 'bram' })
  expect(job.state.trail).toMatchObject({ altitude: 1650, temperature: 285.15, person: 'bram' })
  job.put('struck', { entry: later, reason: 'b'.repeat(64) })
  expect(job.state.trail).toMatchObject({ altitude: 400 })
})
