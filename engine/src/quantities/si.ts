/** Names for plain SI numbers, so that a signature says what it takes. Angles are degrees. */
export type Metre = number
export type SquareMetre = number
export type CubicMetre = number
export type Kilogram = number
export type Second = number
export type Newton = number
export type NewtonMetre = number
export type NewtonPerMetre = number
export type NewtonSecondPerMetre = number
/** Pressure: gauge unless the field is named `ambient`, `closedAt` or is said to be absolute. */
export type Pascal = number
export type Kelvin = number
export type Degree = number
export type Joule = number
/** Kinematic viscosity. */
export type SquareMetrePerSecond = number

/** Standard acceleration of free fall [m/s²], exact (3rd CGPM, 1901). */
export const gravity = 9.80665
/** Standard atmosphere [Pa], exact (10th CGPM, 1954). */
export const standardAtmospherePressure = 101_325
