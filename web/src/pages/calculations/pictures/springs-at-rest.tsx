/** Where a load rests: on one curve, at the pressure that was asked for, here and elsewhere, and where it was measured. */
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { answerTo, numberAt, rowsAt } from './asked-of.ts'
import { conditionsOf, curveOf, forceOn } from './curve-of.ts'
import { CurvesAndLoad, type DrawnCurve } from './curves-and-load.tsx'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

export function SagPicture({ asked, input, output, width }: PictureProps) {
  const written = useWritten()
  const points = useMemo(() => curveOf(conditionsOf(input)), [input])
  const stroke = numberAt(output, ['stroke'])
  return (
    <CurvesAndLoad
      width={width}
      curves={[{ points, look: 'heavy', words: say('calc.picture.slow') }]}
      load={{ force: numberAt(input, ['load']), half: numberAt(input, ['friction']) }}
      marks={[
        {
          stroke,
          force: forceOn(points, stroke),
          is: 'dot',
          band: [numberAt(output, ['low']), numberAt(output, ['high'])],
          words: written(stroke, 'length'),
        },
      ]}
      label={say('calc.picture.sag')}
      table={conditionsOf(asked)}
    />
  )
}

export function PressureForSagPicture({ asked, input, output, width }: PictureProps) {
  const written = useWritten()
  const pressure = numberAt(output, ['pressure'])
  const points = useMemo(() => curveOf({ ...conditionsOf(input), pressure }), [input, pressure])
  const stroke = numberAt(output, ['stroke'])
  return (
    <CurvesAndLoad
      width={width}
      curves={[
        { points, look: 'heavy', words: say('calc.picture.at-pressure', { pressure: written(pressure, 'pressure') }) },
      ]}
      load={{ force: numberAt(input, ['load']) }}
      marks={[{ stroke, force: forceOn(points, stroke), is: 'dot', words: written(stroke, 'length') }]}
      label={say('calc.picture.pressure-for-sag')}
      table={{ ...conditionsOf(asked), pressure }}
    />
  )
}

/** Air around at a place, from its altitude where no barometer was read. */
function ambientAt(place: unknown): number {
  const ambient = numberAt(place, ['ambient'], Number.NaN)
  if (Number.isFinite(ambient)) return ambient
  return numberAt(answerTo('air-pressure', { altitude: numberAt(place, ['altitude']) }), ['ambient'], 101_325)
}

export function AmbientShiftPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const { spring, from, to } = Object(input)
  const [here, there] = [numberAt(input, ['pressure']), numberAt(output, ['pressure'])]
  const isAir = Object(spring).kind === 'air'
  const curves = useMemo(
    () => ({
      here: curveOf({ spring, pressure: isAir ? here : undefined, ambient: ambientAt(from) }),
      there: curveOf({ spring, pressure: isAir ? Math.max(0, there) : undefined, ambient: ambientAt(to) }),
    }),
    [spring, from, to, here, there, isAir],
  )
  const place = (name: 'here' | 'there', pressure: number, at: unknown) =>
    say(`calc.picture.shift.${name}`, {
      state: [
        ...(isAir ? [written(pressure, 'pressure')] : []),
        written(numberAt(at, ['temperature']), 'temperature'),
      ].join(', '),
    })
  const load = numberAt(input, ['load'], Number.NaN)
  const marks = (['strokeHere', 'strokeThere'] as const).flatMap((name) => {
    const stroke = numberAt(output, [name], Number.NaN)
    return Number.isFinite(stroke) ? [{ stroke, force: load, is: 'dot' as const }] : []
  })
  return (
    <CurvesAndLoad
      width={width}
      curves={[
        { points: curves.here, look: 'before', words: place('here', here, from), wordsAt: 0.82 },
        { points: curves.there, look: 'heavy', words: place('there', there, to), wordsAt: 0.56 },
      ]}
      {...(Number.isFinite(load) ? { load: { force: load } } : {})}
      marks={marks}
      label={say('calc.picture.shift')}
    />
  )
}

export function CalibratePicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const { spring, fit = 'negativeVolume', ambient } = Object(input)
  const value = numberAt(output, ['value'])
  const measured = rowsAt(input, 'points').map((point) => ({
    pressure: numberAt(point, ['pressure']),
    stroke: numberAt(point, ['stroke']),
    force: numberAt(point, ['load']),
  }))
  const pressures = [...new Set(measured.map(({ pressure }) => pressure))].slice(0, 4).join(' ')
  const drawn = useMemo(
    () =>
      pressures.split(' ').map((text) => {
        const conditions = { pressure: Number(text), ambient }
        return {
          pressure: Number(text),
          sheet: curveOf({ ...conditions, spring }),
          fitted: curveOf({ ...conditions, spring: { ...spring, [String(fit)]: value } }),
        }
      }),
    [spring, fit, value, ambient, pressures],
  )
  const curves = drawn.flatMap(({ pressure, sheet, fitted }): DrawnCurve[] => [
    { points: sheet, look: 'before', words: say('calc.picture.as-sheet'), wordsAt: 0.86 },
    {
      points: fitted,
      look: 'heavy',
      words: say('calc.picture.at-pressure', { pressure: written(pressure, 'pressure') }),
      wordsAt: 0.6,
    },
  ])
  return (
    <CurvesAndLoad
      width={width}
      curves={curves}
      marks={measured.map(({ stroke, force }) => ({ stroke, force, is: 'ring' as const }))}
      label={say('calc.picture.calibrate')}
    />
  )
}
