/** One lower leg and what is in it. */
export interface LowerLegParameters {
  /** Bath oil [m³]. */
  readonly oil: number
  /** Room closed in the leg at full length, oil not yet taken off [m³]; null where nobody measured it. */
  readonly volume: number | null
  /** What passes through the room [m]; 0 for a cartridge whose bladder backs on to the leg's air. */
  readonly rod: number
}

export interface AirSpringParameters {
  readonly kind: 'air'
  readonly bore: number
  readonly shaft: number
  readonly positiveShaft?: number
  /** At full length, spacers and oil not yet taken off [m³]. */
  readonly positiveVolume: number
  readonly negative: { kind: 'air'; volume: number } | { kind: 'coil'; length: number } | { kind: 'none' }
  readonly equalisingStroke?: number
  readonly spacers: number
  readonly spacerVolume: number
  readonly chamberOil?: number
}

export interface CoilSpringParameters {
  readonly kind: 'coil'
  readonly bore: number
  readonly shaft: number
}

/** What stays while the stroke moves: SI, volumes at full length. */
export interface ForkTable {
  /** [m] */
  readonly stanchion: number
  /** Full stroke [m]. */
  readonly travel: number
  readonly spring: AirSpringParameters | CoilSpringParameters
  /** As they are drawn: `left` below with the spring, `right` above with the damper. */
  readonly legs: { readonly left: LowerLegParameters; readonly right: LowerLegParameters }
  /** Which leg of the fork the spring's one is, as the rider sees it; the left one unless it says. */
  readonly springLeg?: 'left' | 'right'
  /** One crown unless it says two. */
  readonly crowns?: 1 | 2
  /** Middle of the lower bushing to middle of the upper one [m]; left out where nobody measured it. */
  readonly bushingsApart?: number
}

/** The table a fork is drawn from; pressures gauge at the stroke that is shown. */
export interface ForkParameters extends ForkTable {
  /** Where the fork stands now, 0 … travel [m]. */
  readonly stroke: number
  readonly pressures: {
    readonly positive: number
    readonly negative: number
    readonly left: number
    readonly right: number
  }
  /** Where the ring on the stanchion sits, as a stroke [m]; null when it is off. */
  readonly ring?: number | null
}
