/** A sound question for every public function: what each number of it may not be is tried from there. */
import * as engine from '../index.ts'

const fork: engine.AirSpring = {
  kind: 'air',
  bore: 0.032,
  shaft: 0.01,
  positiveShaft: 0.005,
  stroke: 0.15,
  positiveVolume: 0.000197,
  negativeVolume: 0.000031,
  equalisingStroke: 0.0025,
  spacerVolume: 1e-5,
  spacers: 1,
  chamberOil: 2e-6,
  second: { volume: 0.00005, pressure: 1_200_000 },
  maxPressure: 1_500_000,
  lower: {
    volume: 0.000205,
    stanchion: 0.035,
    rod: 0.01,
    closedAt: 101_325,
    closedStroke: 0.001,
    legs: [{ oil: 1e-5, volume: 0.0002, rod: 0.01, stanchion: 0.035 }, { oil: 1e-5 }],
  },
  topOut: { rate: 5000, length: 0.01 },
  bumper: { rate: 10_000, length: 0.02, exponent: 2 },
  damperGas: { pressure: 1e6, volume: 4e-5, rod: 0.01 },
}
const coil: engine.CoilSpring = { kind: 'coil', rate: 9000, preload: 0.002, stroke: 0.15 }
const room = 293.15
const pressReadings = [
  { stroke: 0.03, pressing: 320, releasing: 290 },
  { stroke: 0.06, pressing: 480, releasing: 450 },
  { stroke: 0.09, pressing: 750, releasing: 720 },
]
const at = { pressure: 600_000, ambient: 101_325, load: 450 }

const moving = {
  pressure: 600_000,
  pressureAt: 0.001,
  ambient: 101_325,
  exponent: 1.2,
  startStroke: 0.02,
  mass: 2,
  friction: 20,
  from: 0.12,
  to: 0.05,
  load: 45,
}

/** A name, the function as it takes one question, and a sound question. */
export const soundQuestions: readonly [string, (question: never) => unknown, object][] = [
  [
    'sag',
    ([s, q]: [engine.Spring, engine.SagQuestion]) => engine.sag(s, q),
    [fork, { ...at, friction: 10, pressureAt: 0 }],
  ],
  ['sag of a coil', ([s, q]: [engine.Spring, engine.SagQuestion]) => engine.sag(s, q), [coil, { load: 300 }]],
  [
    'springCurve',
    ([s, q]: [engine.Spring, engine.CurveOptions]) => engine.springCurve(s, q),
    [fork, { pressure: 6e5, exponent: 1.3, startStroke: 0.03, points: 5 }],
  ],
  [
    'pressureForSag',
    ([s, q]: [engine.Spring, engine.PressureQuestion]) => engine.pressureForSag(s, q),
    [fork, { load: 450, sag: 0.2, ambient: 101_325 }],
  ],
  ['forkLoad, masses', engine.forkLoad, { riderMass: 82, frontShare: 0.42, bikeFrontMass: 5, headAngle: 65 }],
  ['forkLoad, scales', engine.forkLoad, { wheelLoad: 40, unsprungMass: 4, headAngle: 65 }],
  [
    'shockLoad',
    engine.shockLoad,
    { rearSprungMass: 55, leverage: { start: 2.8, end: 2.4, stroke: 0.055 }, stroke: 0.015 },
  ],
  ['sideFriction', engine.sideFriction, { sideLoad: 160, a: 0.23, b: 0.115, mu: [0.04, 0.1] }],
  ['wireRate', engine.wireRate, { wire: 0.0127, coil: 0.12, turns: 7.7, shearModulus: 79.3e9 }],
  [
    'coilRate',
    engine.coilRate,
    { load: 1945, sag: 0.0225, preload: 0.001, damperGas: { pressure: 1.4e6, volume: 4e-5, rod: 0.0127 } },
  ],
  ['pumpReading', engine.pumpReading, { volume: 95e-6, hoseVolume: 5e-6, pressure: 1e6 }],
  ['hoseRatio', engine.hoseRatio, { readings: [1e6, 9.5e5, 9e5], volume: 95e-6, gaugeResolution: 7000 }],
  [
    'leakDown',
    engine.leakDown,
    {
      volume: 1e-4,
      hoseVolume: 5e-6,
      start: { reading: 5e5, temperature: room },
      end: { reading: 4e5, temperature: room },
      duration: 3600,
      ambient: 101_325,
      gaugeResolution: 7000,
    },
  ],
  ['wrenchSetting', engine.wrenchSetting, { wanted: 5, wrenchLength: 0.2, adapterLength: 0.05, adapterAngle: 30 }],
  [
    'wrenchChoice',
    engine.wrenchChoice,
    {
      wanted: 5,
      wrenches: [{ id: 'W', low: 2, high: 10, class: 0.06, length: 0.2 }],
      adapterLength: 0.03,
      adapterAngle: 0,
    },
  ],
  ['bolt', engine.bolt, { torque: 6, diameter: 0.008, pitch: 0.001, bore: 0.004, nutFactor: [0.15, 0.25], yield: 4e8 }],
  [
    'threadStrip',
    engine.threadStrip,
    { diameter: 0.008, pitch: 0.00125, engagement: 0.008, shearStrength: { external: 4e8, internal: 2e8 } },
  ],
  [
    'viscosity, points',
    engine.viscosity,
    {
      points: [
        { temperature: 313.15, viscosity: 15e-6 },
        { temperature: 373.15, viscosity: 3.6e-6 },
      ],
      temperature: room,
    },
  ],
  ['viscosity', engine.viscosity, { viscosity40: 15e-6, viscosityIndex: 120, temperature: room }],
  ['blend', engine.blend, { a: 5e-6, b: 20e-6, target: 8e-6 }],
  ['residualOil', engine.residualOil, { old: 12e-6, fresh: 15e-6, residualVolume: 8e-6, fillVolume: 7e-5 }],
  ['saybolt', engine.saybolt, { viscosity: 32e-6, temperature: 311 }],
  ['oilHeight', engine.oilHeight, { bore: 0.03, rod: 0.01, height: 0.1, legLength: 0.4 }],
  [
    'spacersForEndForce',
    ([s, q]: [engine.Spring, engine.SpacersQuestion]) => engine.spacersForEndForce(s, q),
    [
      { ...coilless(), spacerVolume: 1e-5 },
      { load: 351, sag: 0.2, endForce: 1800, at: 0.9, exponent: 1.3, ambient: 101_325 },
    ],
  ],
  [
    'ambientShift',
    ([s, q]: [engine.Spring, engine.ShiftQuestion]) => engine.ambientShift(s, q),
    [
      fork,
      {
        pressure: 600_000,
        load: 450,
        from: { temperature: room, altitude: 400 },
        to: { temperature: 276.15, ambient: 80_000 },
      },
    ],
  ],
  [
    'gaugeElsewhere',
    engine.gaugeElsewhere,
    {
      pressure: 6e5,
      from: { temperature: room, ambient: 101_325 },
      to: { temperature: 276.15, ambient: 80_000 },
    },
  ],
  [
    'bothEnds',
    engine.bothEnds,
    {
      fork: { spring: fork, pressure: 600_000, load: 450 },
      shock: { spring: { ...coil, rate: 50_000, stroke: 0.05 }, load: 500 },
      wheelbase: 1.2,
      rearCentre: 0.43,
      headAngle: 65,
      leverage: { start: 2.8, end: 2.4, stroke: 0.05 },
      ambient: 101_325,
    },
  ],
  [
    'shockLoad, table',
    engine.shockLoad,
    {
      wheelLoad: 60,
      unsprungMass: 5,
      leverage: [
        { stroke: 0, leverage: 2.8 },
        { stroke: 0.055, leverage: 2.4 },
      ],
      stroke: 0.015,
    },
  ],
  [
    'prepareSpring',
    ([s, p, q]: [engine.Spring, number, engine.Process]) => engine.prepareSpring(s, p, q).pressures(0.05).positive,
    [fork, 600_000, { ambient: 101_325, exponent: 1.2, startStroke: 0.02, pressureAt: 0.001 }],
  ],
  [
    'polytropicPressure',
    (asked: [number, number, number, number]) => engine.polytropicPressure(...asked),
    [1e6, 2e-4, 1e-4, 1.2],
  ],
  ['geopotentialAltitude', ([altitude]: [number]) => engine.geopotentialAltitude(altitude), [1200]],
  [
    'travelUsed',
    ([s, q]: [engine.Spring, engine.TravelQuestion]) => engine.travelUsed(s, q),
    [
      fork,
      { ...at, deepest: 0.13, exponent: 1.3, to: { pressure: 5.5e5, spacers: 2, chamberOil: 1e-6, ambient: 1e5 } },
    ],
  ],
  [
    'calibrate',
    ([s, q]: [engine.Spring, engine.CalibrateQuestion]) => engine.calibrate(s, q),
    [{ ...coilless() }, { points: [{ pressure: 678_034, load: 351, stroke: 0.03, u: 10 }], ambient: 101_325 }],
  ],
  [
    'pressTest',
    ([s, q]: [engine.Spring, engine.PressQuestion]) => engine.pressTest(s, q),
    [
      coilless(),
      {
        presses: [{ pressure: 600_000, readings: pressReadings }],
        forceSd: 4,
        strokeSd: 0.0007,
        gaugeSd: 0.02,
        ambient: 101_325,
      },
    ],
  ],
  [
    'holdFriction',
    ([s, q]: [engine.Spring, engine.HoldQuestion]) => engine.holdFriction(s, q),
    [coilless(), { pressure: 600_000, strokes: [0.03, 0.06], hold: 20, ambient: 101_325 }],
  ],
  [
    'clearance',
    engine.clearance,
    {
      stanchion: [
        [0.035, 0.03501],
        [0.035, 0.035],
      ],
      bushing: [
        [0.0351, 0.0351],
        [0.0351, 0.0351],
      ],
      uStanchion: 3e-6,
      uBushing: 6e-6,
      limit: { watch: 0.00012, fail: 0.0002 },
    },
  ],
  ['rock', engine.rock, { rock: 0.0005, a: 0.23, b: 0.115, share: 1 }],
  ['fitIso286', engine.fitIso286, { size: 0.035, hole: 'H7', shaft: 'g6' }],
  [
    'movingTime',
    ([points, rules]: [engine.TrackPoint[], engine.TrackRules]) => engine.movingTime(points, rules),
    [
      [
        { time: '2026-05-02T10:00:00Z', latitude: 46.6, longitude: 8.6, elevation: 1500 },
        { time: '2026-05-02T10:00:30Z', latitude: 46.601, longitude: 8.6, elevation: 1480 },
      ],
      { minSpeed: 0.3, maxGap: 60, climbThreshold: 5 },
    ],
  ],
  [
    'wearHours',
    ([rides, factors]: [engine.Ride[], Record<string, number>]) => engine.wearHours(rides, factors),
    [[{ movingTime: 3600, conditions: ['wet'] }], { wet: 0.6 }],
  ],
  [
    'life',
    engine.life,
    {
      lives: [
        { hours: 40, failed: true },
        { hours: 70, failed: true },
      ],
      plannedCost: 1,
      failureCost: 5,
    },
  ],
  [
    'diagnose',
    ([network, question]: [engine.FaultNetwork, engine.DiagnoseQuestion]) => engine.diagnose(network, question),
    [
      {
        signs: [{ id: 's', leak: 0.1 }],
        causes: [{ id: 'c', group: 'wear', prior: 0.2, links: { s: 0.7 } }],
        tests: [{ id: 't', minutes: 3, falsePositive: 0.05, links: { c: 0.9 } }],
      },
      { kind: 'any', present: ['s'], absent: [], factors: { wear: 2 } },
    ],
  ],
  [
    'returnTime',
    ([s, q]: [engine.Spring, engine.ReturnQuestion]) => engine.returnTime(s, q),
    [fork, { ...moving, damping: 800 }],
  ],
  [
    'dampingFromReturn',
    ([s, q]: [engine.Spring, engine.FromReturnQuestion]) => engine.dampingFromReturn(s, q),
    [fork, { ...moving, time: 0.15, timeResolution: 0.004 }],
  ],
  [
    'dampingAtTemperature',
    engine.dampingAtTemperature,
    {
      damping: { linear: 900, orifice: 150 },
      oil: {
        points: [
          { temperature: 313.15, viscosity: 15e-6 },
          { temperature: 373.15, viscosity: 3.6e-6 },
        ],
      },
      from: room,
      to: 273.15,
      expansion: 0.0007,
    },
  ],
  [
    'clicksForDamping',
    engine.clicksForDamping,
    {
      settings: [
        { clicks: 1, damping: 1500 },
        { clicks: 6, damping: 1100 },
        { clicks: 12, damping: 830 },
      ],
      wanted: 900,
    },
  ],
  ['dampingRatio', engine.dampingRatio, { damping: 700, rate: 7500, mass: 30 }],
  [
    'drop',
    ([s, q]: [engine.Spring, engine.DropQuestion]) => engine.drop(s, q),
    [
      fork,
      {
        pressure: 6e5,
        exponent: 1.3,
        startStroke: 0.01,
        sprungMass: 34,
        wheelMass: 3,
        dropHeight: 0.3,
        damping: { linear: 800, orifice: 200 },
        tyre: { rate: 90_000 },
      },
    ],
  ],
  ['standardAir', ([altitude]: [number]) => engine.standardAir(altitude), [1200]],
]

function coilless(): engine.AirSpring {
  return {
    kind: 'air',
    bore: 0.032,
    shaft: 0.01,
    stroke: 0.15,
    positiveVolume: 0.000197,
    negativeVolume: 0.00003,
    equalisingStroke: 0.0025,
  }
}
