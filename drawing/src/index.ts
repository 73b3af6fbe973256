/** A fork as it is cut: parameters in, named plain shapes in mm out; screen and paper draw the same ones. */
export { legGap } from './chassis.ts'
export { type DrawnOtherwise, drawnOtherwise, forkAt, forkTableOf, isDrawable, springLegOf } from './fork-of-sheet.ts'
export type { AirSpringParameters, CoilSpringParameters, ForkParameters, ForkTable } from './fork-parameters.ts'
export { type ForkView, forkShapes, ringFrom } from './fork-shapes.ts'
export { type ForkStations, forkStations } from './fork-stations.ts'
export { type HatchLook, hatchings, lineDashes, lineStrokes, strokes } from './hatching.ts'
export { lowerBushing, roomSections, upperBushing } from './lower-room.ts'
export { axisOf, type Extent, extentOf, outlinesOf, type Place } from './outline.ts'
export { type SetPlaces, setPlaces } from './set-places.ts'
export {
  type FlatShape,
  type Hatching,
  type Leg,
  type LineShape,
  type Look,
  type Point,
  type RevolvedShape,
  type Shape,
  volumeOf,
} from './shape.ts'
