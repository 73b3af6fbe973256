/** Words in and about the pictures of the calculations. */
export const appCalculationPictureWords = {
  'calc.from-sheet': 'From a sheet',
  'calc.from-sheet.choose': 'Choose a sheet',
  'calc.from-sheet.one': '{name}, {revision}',
  'calc.key.spring': 'Where these are measured',
  'calc.key.spring.label':
    'An air leg cut open and laid down, crown right, foot left, with the name of every dimension.',
  'calc.key.spring.says':
    'Volumes are those at full length, from the sheet or measured with oil. A shock has the same parts the other way round: its body is the air shaft.',
  'calc.picture.load': 'load',
  'calc.picture.table': 'The heavy curve as a table',
  'calc.picture.wanted': 'wanted',
  'calc.picture.as-sheet': 'as the sheet says',
  'calc.picture.at-pressure': 'at {pressure}',
  'calc.picture.at': '{value} at {place}',
  'calc.picture.sag': 'The slow curve, the load with its friction, and where it rests. The numbers stand below.',
  'calc.picture.pressure-for-sag':
    'The slow curve at the pressure found, and the load that rests on it at the sag asked for.',
  'calc.picture.shift': 'The slow curve here and there with the load on both. The numbers stand below.',
  'calc.picture.shift.here': 'here: {state}',
  'calc.picture.shift.there': 'there: {state}',
  'calc.picture.calibrate': 'The measured points, the curve of the sheet and the curve that was fitted to them.',
  'calc.picture.spacers-for-end-force': 'The fast curve from the same sag, without spacers and with those found.',
  'calc.picture.spacers': '{n} {n?spacer|spacers}',
  'calc.picture.travel':
    'The fast curve as ridden with its ring mark, and at the other setting; the hatched energy is that of the same hit.',
  'calc.picture.travel.here': 'as ridden',
  'calc.picture.travel.there': 'the other setting',
  'calc.picture.fork-load': 'A fork at its head angle: the weight on it, and its parts along and across the legs.',
  'calc.picture.fork-load.along': 'along the legs',
  'calc.picture.fork-load.across': 'across them',
  'calc.picture.fork-load.weight': 'weight',
  'calc.picture.both-ends':
    'The bike before and under its rider: both ends, bottom bracket and head angle. The numbers stand below.',
  'calc.picture.both-ends.marks': 'Thin: unloaded. Heavy: under the rider, sinking drawn three times as large.',
  'calc.picture.both-ends.bracket': 'bottom bracket',
  'calc.picture.both-ends.angle': 'head angle {before} → {after}',
  'calc.picture.shock-load': 'Leverage over the stroke of the shock, and the load where it was asked for.',
  'calc.picture.shock-stroke': 'stroke of the shock',
  'calc.picture.air-pressure': 'Air pressure over altitude, and the place that was asked for.',
  'calc.picture.pump': 'The chamber before the pump is put on, with it, and after. The numbers stand below.',
  'calc.picture.pump.before': 'Before',
  'calc.picture.pump.on': 'Pump on',
  'calc.picture.pump.off': 'Pump taken off',
  'calc.picture.pump.hose': 'hose {volume}',
  'calc.picture.hose':
    'Readings of the same pump put on again and again, with the step of the gauge, and the law through them.',
  'calc.picture.hose.attached': 'time it was put on',
  'calc.picture.hose.stays': '{percent} % stays each time',
  'calc.picture.torque':
    'A wrench set to {set} turns through its adapter: {wanted} arrives at the nut. Lengths to scale.',
  'calc.picture.torque.lever': 'the lever that counts, {length}',
  'calc.picture.wrench-choice': 'The wrenches on one scale: their ranges, and what each would be set to.',
  'calc.picture.wrench-choice.key':
    'Line: what it is made for. Pointer: what it would be set to. Dashed: it can’t do it.',
  'calc.picture.viscosity':
    'The oil over temperature on the paper of the standard, with the points given and the one asked for.',
  'calc.picture.blend': 'Viscosity over the share of b; the mixture lies on the line.',
  'calc.picture.blend.share': '{percent} % of b',
  'calc.picture.blend.volume': 'b in a, by volume',
  'calc.picture.blend.mass': 'b in a, by mass',
  'calc.picture.residual': 'Viscosity over the share of old oil; the fill lies on the line.',
  'calc.picture.residual.share': 'old oil in the fill, by volume',
  'calc.picture.oil-height':
    'An open bath cut open and laid down, top edge right, foot left: oil, air and the height between. The numbers stand below.',
  'calc.picture.oil-height.oil': '{volume} oil',
  'calc.picture.oil-height.air': '{volume} air',
  'calc.picture.return': 'Stroke over the time of the way back. The time stands below.',
  'calc.picture.return.let-go': 'let go',
  'calc.picture.clicks':
    'Damping over clicks on a scale of ratios: readings, the law through them, what is wanted and where it lies.',
  'calc.picture.clicks.found': '{n} clicks',
  'calc.picture.damping-at-temperature':
    'Damping over the temperature of the oil: as it was known, and what it comes to.',
  'calc.picture.clearance':
    'Diameters of stanchion and bushing at both heights, direction by direction, and the play between their means.',
  'calc.picture.clearance.marks':
    'Ring: stanchion. Triangle: bushing. One for each direction; the play is from mean to mean.',
  'calc.picture.clearance.upper': 'Upper bushing',
  'calc.picture.clearance.lower': 'Lower bushing',
  'calc.picture.clearance.worst': 'The larger play with its 90 % band, against the limit.',
  'calc.picture.clearance.strip':
    'Play {value}, nine times in ten {low} to {high}; watch from {watch}, fail from {fail}.',
  'calc.picture.fit': 'Zones of tolerance of hole and shaft about the nominal size.',
  'calc.picture.fit.size': 'nominal size {size}',
  'calc.picture.fit.play': 'play {least} to {most}',
} as const
