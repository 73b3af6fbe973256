/** Whose paper it is. What the workshop never said is null and leaves no gap. */
export interface Letterhead {
  name: string
  address: string | null
  phone: string | null
  /** What the workshop stands in for, in its own words. */
  terms: string | null
  /** One person's own bench: no desk, nobody to sign to. */
  home: boolean
}
