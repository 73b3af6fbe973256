/** `npm run bench`: times the engine and its peers in one run, prints the figures and writes docs/benchmarks.md. */
import { writeFileSync } from 'node:fs'
import { agreement } from './agreement.ts'
import { inChromium } from './chromium.ts'
import { askDiagnosePeer } from './diagnose-peer.ts'
import { askDoubtPeer } from './doubt-peer.ts'
import { batchTimings, engineTimings } from './engine-timings.ts'
import { frameTable, frameWords } from './frame-page.ts'
import { askLifePeer } from './life-peer.ts'
import { lastMinute, machineLines } from './machine.ts'
import { figures, growth, type Row } from './page.ts'
import { askPeers, type PeerBatch } from './peers.ts'
import { askPressPeer } from './press-peer.ts'
import { fork, loads } from './questions.ts'
import { askReturnPeer } from './return-peer.ts'
import type { Timing } from './rounds.ts'
import { sliderFrames } from './slider-frames.ts'

const counts = [1000, 10_000, 100_000]
const sagTarget = 2
const sliderTarget = 300
const pressTarget = 60_000
const lifeTarget = 50_000
const diagnosisTarget = 20_000
const doubtTarget = 25_000
const returnTarget = 1000
const middle = 1

function at<T>(all: readonly T[], index: number): T {
  const one = all[index]
  if (one === undefined) throw new Error(`there is no batch ${index}`)
  return one
}

function each({ median, fastest, slowest, rounds }: Timing, count: number): Timing {
  return { median: median / count, fastest: fastest / count, slowest: slowest / count, rounds }
}

const timingsOf = (batches: readonly PeerBatch[]) => batches.map(({ timing }) => timing)

export async function bench(pageBundle: string): Promise<void> {
  const machine = machineLines()
  const began = lastMinute()
  const node = engineTimings()
  const batches = batchTimings(counts)
  const browser = await inChromium(pageBundle)
  const peers = askPeers({ ...fork, batches: counts.map(loads) })
  const press = askPressPeer()
  const life = askLifePeer()
  const diagnosis = askDiagnosePeer()
  const doubt = askDoubtPeer()
  const back = askReturnPeer()
  const frames = await sliderFrames()
  const ended = lastMinute()
  const difference = agreement(peers, counts)
  const count = at(counts, middle)
  const ours = each(at(batches, middle), count)
  const brentq = { name: 'SciPy brentq, one by one', timing: each(at(peers.brentq, middle).timing, count) }
  const newton = { name: 'NumPy Newton, all at once', timing: each(at(peers.newton, middle).timing, count) }
  const slider = { name: 'NumPy and brentq', timing: peers.slider.timing }
  const rows: Row[] = [
    { what: 'one sag, Node', ours: node.oneSag, peer: brentq, target: sagTarget },
    { what: 'one sag, Chromium', ours: browser.timings.oneSag, peer: brentq, target: sagTarget },
    { what: 'one of 10,000 sags, Node', ours, peer: brentq },
    { what: 'one of 10,000 sags, Node', ours, peer: newton },
    { what: 'set-up slider, Node', ours: node.slider, peer: slider, target: sliderTarget },
    { what: 'set-up slider, Chromium', ours: browser.timings.slider, peer: slider, target: sliderTarget },
    { what: 'press test, Node', ours: node.press, peer: press, target: pressTarget },
    { what: 'press test, Chromium', ours: browser.timings.press, peer: press, target: pressTarget },
    { what: 'lives, 10,000, Node', ours: node.life, peer: life, target: lifeTarget },
    { what: 'lives, 10,000, Chromium', ours: browser.timings.life, peer: life, target: lifeTarget },
    { what: 'diagnosis, 8 signs, Node', ours: node.diagnosis, peer: diagnosis, target: diagnosisTarget },
    { what: 'diagnosis, 8 signs, Chromium', ours: browser.timings.diagnosis, peer: diagnosis, target: diagnosisTarget },
    { what: 'doubt of a sag, 10,000 draws, Node', ours: node.doubt, peer: doubt, target: doubtTarget },
    { what: 'doubt of a sag, 10,000 draws, Chromium', ours: browser.timings.doubt, peer: doubt, target: doubtTarget },
    { what: 'damping from a return time, Node', ours: node.back, peer: back, target: returnTarget },
    { what: 'damping from a return time, Chromium', ours: browser.timings.back, peer: back, target: returnTarget },
  ]
  const { python, numpy, scipy } = peers.versions
  const lines = [
    '# Benchmarks',
    '',
    'Written by `npm run bench`; nothing here is typed in. Repeat it with that one command on a quiet machine; it needs',
    "Debian's `chromium`, `python3-scipy` and `r-cran-survival`. Times are no tests: no check of this project fails by the clock.",
    '',
    ...[...machine, `Chromium ${browser.version}; Python ${python}, NumPy ${numpy}, SciPy ${scipy}`].map(
      (line) => `- ${line}`,
    ),
    `- Load average of the last minute: ${began} when it began, ${ended} when it ended`,
    '',
    'Above the number of processors the machine was shared with other work. The programs are timed one after the other, so',
    'such work may fall on one and not on the next: a ratio between a half and two then says nothing.',
    '',
    '## Figures',
    '',
    ...figures(rows),
    '',
    'Median of the rounds, with the fastest and the slowest in brackets: 31 rounds of wall clock after warming up (11 for',
    'batches of 100,000), each of about 25 ms for ours. The peers run in one thread, as ours does.',
    '',
    '- _One sag_: `sag` of the demonstration fork U01 (invented dimensions) at its pressure and load, from the plain spring:',
    '  every field checked, the gases made ready, free stroke, stroke under load and rate. The peers get the fork ready before',
    '  the clock starts, check nothing and only solve for the stroke, over 10,000 loads divided by their number.',
    '- _One of 10,000 sags_: ours over those same 10,000 loads, from 150 to 650 N, each asked from the plain spring again.',
    '- _Set-up slider_: slow curve of 61 points, sag with its band of 40 N friction, fast curve of 61 points from that sag',
    '  (exponent 1.3), pressure for the wanted sag, force at the end. Ours moves over 101 pressures and also gives rates and',
    '  the pressures of every chamber at each point; the peer works out forces alone, at one pressure.',
    '- _Press test_: all six hypotheses of U01 pressed at full and half pressure, twelve stops each, with bands and verdict.',
    '  The peer fits the same hypotheses by least squares from one start each and leaves the bands out.',
    '- _Lives_: 10,000 invented lives, about four in ten cut short: Weibull with bands and B10, the interval that costs least,',
    '  Kaplan–Meier with its band. The peer is R’s `survreg` and `survfit` on data made ready beforehand.',
    '- _Diagnosis_: eight signs of an air fork, drawn anew for each of 16 cases: exact posteriors, ranking, and the expected gain',
    '  of every next test. The peer sums over all 256 subsets of the signs, vectorised, with the network made ready beforehand.',
    '- _Doubt of a sag_: pressure to 1 psi and load to 8 N, 10,000 draws of the sag, each from the plain spring with every field',
    '  checked; median, band and both shares. The peer draws and solves all at once and checks nothing.',
    '- _Damping from a return time_: bare lowers from 100 to 20 mm in 80 to 200 ms. The peer solves the same motion by',
    '  `solve_ivp`, asked by `brentq` between a tenth and ten times what a slow leg would need.',
    '',
    '## Finger to frame',
    '',
    ...frameTable(frames),
    '',
    ...frameWords,
    '',
    '## Growth with the number of sags',
    '',
    ...growth(
      [
        { name: 'ours, Node', timings: batches },
        { name: 'SciPy brentq, one by one', timings: timingsOf(peers.brentq) },
        { name: 'NumPy Newton, all at once', timings: timingsOf(peers.newton) },
      ],
      counts,
    ),
    '',
    '## Same answers',
    '',
    'Before a time is printed, our answers are held against the peers’ (strokes of 1,000 and 10,000 sags, both curves, the',
    `band, the pressure, the end force). Largest difference in this run: ${difference.toExponential(1)} of the value; above 1e-8 nothing is written.`,
    'The formulas of the peers stand in `benchmarks/peers.py`, written apart from the engine.',
    '',
  ]
  writeFileSync('docs/benchmarks.md', lines.join('\n'))
  process.stdout.write(lines.join('\n'))
}
