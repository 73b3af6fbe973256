/** Hours and life: riding time, wear, due dates. */
import { type DueQuestion, due, movingTime, parseQuantity, type TrackPoint, wearHours } from '@legwork/engine'
import { conditionFactors } from '@legwork/trade/due/intervals.ts'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { count, inUnit, quantity, refusedIssue, si, taken } from './fields.ts'
import { withoutGaps } from './spring-fields.ts'

const said = 'a number in hours, or a text like "24 h"'
/** Hours of use: the one quantity that is not SI, because every sheet counts in them. */
export const hours = z
  .union([z.number(), z.string()], { error: said })
  .meta({ description: said, 'x-unit': 'h' })
  .transform((came, context): number => {
    if (typeof came === 'number') return came
    const parsed = parseQuantity(came, 'duration')
    if (parsed.ok) return parsed.value / 3600
    context.addIssue({ ...refusedIssue(parsed.error), input: came })
    return z.NEVER
  })
const date = z.string().nullable()
const conditionsSaid = Object.entries(conditionFactors)
  .map(([name, factor]) => `${name} ${factor}`)
  .join(', ')
/** Told as a choice; what is none of them is refused by name with all of them. */
const condition = z.string().meta({ enum: Object.keys(conditionFactors) })

export const hoursRidden = [
  calculation({
    name: 'moving-time',
    group: 'Hours and life',
    title: 'Riding time of a track',
    summary: 'Time in motion, way, climb and descent of recorded points, without stops and gaps.',
    formula: 'Σ Δt where distance/Δt ≥ minSpeed and Δt ≤ maxGap',
    sources: ['WGS 84: NIMA TR8350.2', 'Vincenty 1975; Karney 2013 for places nearly opposite'],
    range: '2 to 500,000 points in order of time.',
    input: z.strictObject({
      points: z.array(
        z.strictObject({
          time: z.string(),
          latitude: quantity('angle'),
          longitude: quantity('angle'),
          elevation: quantity('altitude').optional(),
        }),
      ),
      rules: z
        .strictObject({
          minSpeed: taken(quantity('speed'), '1 km/h'),
          maxGap: taken(quantity('duration'), 120),
          climbThreshold: taken(quantity('altitude'), 5),
        })
        .optional(),
    }),
    output: z.strictObject({
      movingTime: si('duration'),
      elapsedTime: si('duration'),
      distance: si('length'),
      ascent: si('altitude').nullable(),
      descent: si('altitude').nullable(),
    }),
    example: {
      points: [
        { time: '2026-05-02T10:00:00Z', latitude: 46.6, longitude: 8.6, elevation: '1500 m' },
        { time: '2026-05-02T10:00:30Z', latitude: 46.601, longitude: 8.6, elevation: '1480 m' },
        { time: '2026-05-02T10:01:00Z', latitude: 46.602, longitude: 8.601, elevation: '1462 m' },
        { time: '2026-05-02T10:01:20Z', latitude: 46.602, longitude: 8.601, elevation: '1462 m' },
      ],
    },
    run: ({ points, rules }) => movingTime(withoutGaps<TrackPoint[]>(points), withoutGaps(rules ?? {})),
    assumptions: () => [
      'Distance on the WGS 84 ellipsoid, along the ground: height is left out.',
      'Distance counts over all points in a row but gaps; time where they lie at least minSpeed apart.',
      'A climb counts once the height has changed by climbThreshold; what was climbed in a gap was not ridden.',
    ],
  }),
  calculation({
    name: 'wear-hours',
    group: 'Hours and life',
    title: 'Hours as they wear',
    summary: 'Riding time weighed by what the rides were like.',
    formula: 'hours = Σ moving time/Π condition factors',
    sources: ['Condition factors: common practice, no source'],
    range: 'One clock for each unit and service.',
    input: z.strictObject({
      rides: z
        .array(z.strictObject({ movingTime: quantity('duration'), conditions: z.array(condition).max(50) }))
        .max(100_000),
    }),
    output: z.strictObject({ hours: inUnit('h') }),
    example: {
      rides: [
        { movingTime: '2:10:00', conditions: ['wet-mud'] },
        { movingTime: '1:25:30', conditions: [] },
      ],
    },
    run: ({ rides }) => wearHours(rides, conditionFactors),
    assumptions: () => [`Factors: ${conditionsSaid} (common practice, no source).`, 'Factors of one ride multiply.'],
  }),
  calculation({
    name: 'due',
    group: 'Hours and life',
    title: 'When a service is due',
    summary:
      'The hours left, ridden through the rider’s own weeks again and again: dates of one, five and nine in ten.',
    formula: '2,000 bootstrap draws of whole weeks, added up to the hours left',
    sources: ['Efron 1979, the bootstrap'],
    range: 'Five years from the day; later is null.',
    input: z.strictObject({
      hoursLeft: hours,
      weeks: z.array(hours).max(520),
      from: z.string(),
      seed: taken(count, 1),
    }),
    output: z.strictObject({ dates: z.strictObject({ p10: date, p50: date, p90: date }) }),
    example: { hoursLeft: '38 h', weeks: [4, 0, 6.5, 3, 5, 2.5, 7, 0], from: '2026-05-02', seed: 1 },
    run: (input) => due(withoutGaps<DueQuestion>(input)),
    assumptions: () => [
      'The coming weeks are like those given, in any order; a season is not in them.',
      'A week’s hours are even over its days. Hours are wear hours.',
    ],
  }),
]
