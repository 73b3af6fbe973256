/**
 * What to set on a torque wrench with an adapter: set = wanted·L/(L + E·cos φ).
 *
 * @param input  wanted [N·m]; wrenchLength grip to square [m]; adapterLength [m]; adapterAngle [°], 0 in line
 * @returns set [N·m]
 * @source lever rule, as in FAA AC 43.13-1B and US Army TM 9-254
 * @example wrenchSetting({ wanted: 5.5, wrenchLength: 0.245, adapterLength: 0.03 }).set // 4.9
 */
export function wrenchSetting(input: {
  wanted: number
  wrenchLength: number
  adapterLength: number
  adapterAngle?: number
}): { set: number } {
  const { wanted, wrenchLength, adapterLength, adapterAngle = 0 } = input
  return { set: (wanted * wrenchLength) / (wrenchLength + adapterLength * Math.cos((adapterAngle * Math.PI) / 180)) }
}
