/** The demo workshop's people and riders. All invented. */
import type { Measures, Role } from '../registers.ts'

const metric: Measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }

export const demoWorkshopName = 'Quernfold Suspension Bench'
/** What stands at the head of its papers. */
export const demoLetterhead = {
  name: demoWorkshopName,
  address: 'Ardenmoss End, Quernfold Valley',
  phone: '0100 2000',
  terms: 'Come back free of charge within 60 days for oil at a wiper or foot, a knock, or pressure that goes.',
}

export interface DemoPerson {
  key: string
  name: string
  initials: string
  role: Role
  measures: Measures
}

export const demoPeople: readonly DemoPerson[] = [
  { key: 'odalys', name: 'Odalys Fennimarch', initials: 'O. F.', role: 'owner', measures: metric },
  {
    key: 'bram',
    name: 'Bram Tolvaneke',
    initials: 'B. T.',
    role: 'technician',
    measures: { ...metric, pressure: 'bar' },
  },
  { key: 'sunniva', name: 'Sunniva Raghavold', initials: 'S. R.', role: 'junior', measures: metric },
  { key: 'ikaika', name: 'Ikaika Dorrowby', initials: 'I. D.', role: 'desk', measures: metric },
]

export interface DemoRider {
  key: string
  name: string
  /** With kit [kg]. */
  mass: number
  posture: string
  /** Share of the rider on the front wheel in that posture [-]; null where only the rear is known. */
  frontShare: number | null
  /** [h] */
  hoursPerWeek: number | null
  rides: string
}

export const demoRiders: readonly DemoRider[] = [
  {
    key: 'R01',
    name: 'Mateus Corvalho-Wynd',
    mass: 82,
    posture: 'standing',
    frontShare: 0.42,
    hoursPerWeek: 4,
    rides: 'trail',
  },
  {
    key: 'R02',
    name: 'Anneli Drumsvik',
    mass: 61,
    posture: 'standing',
    frontShare: 0.4,
    hoursPerWeek: 7,
    rides: 'marathon',
  },
  {
    key: 'R03',
    name: 'Hiroto Kazemura-Bell',
    mass: 70,
    posture: 'attack',
    frontShare: 0.43,
    hoursPerWeek: 5,
    rides: 'bike-park',
  },
  {
    key: 'R04',
    name: 'Nkem Olufarane',
    mass: 94,
    posture: 'attack',
    frontShare: 0.43,
    hoursPerWeek: 5,
    rides: 'steep trail',
  },
  {
    key: 'R05',
    name: 'Priyanka Voss-Madhuran',
    mass: 58,
    posture: 'standing',
    frontShare: 0.4,
    hoursPerWeek: 5,
    rides: 'cross-country',
  },
  {
    key: 'R06',
    name: 'Tadhg Merrowhill',
    mass: 88,
    posture: 'standing',
    frontShare: 0.42,
    hoursPerWeek: 6,
    rides: 'all year, mud',
  },
  {
    key: 'R07',
    name: 'Zofia Lakotarska',
    mass: 66,
    posture: 'standing',
    frontShare: 0.41,
    hoursPerWeek: 4,
    rides: 'trail, winter too',
  },
  {
    key: 'R08',
    name: 'Emre Yaldizanlı',
    mass: 77,
    posture: 'standing',
    frontShare: 0.42,
    hoursPerWeek: 3,
    rides: 'alpine',
  },
  {
    key: 'R09',
    name: 'Leilani Pukaroa',
    mass: 73,
    posture: 'seated-standing',
    frontShare: null,
    hoursPerWeek: 5,
    rides: 'e-bike',
  },
  {
    key: 'R10',
    name: 'Gaspard Quillonnet',
    mass: 101,
    posture: 'attack',
    frontShare: 0.45,
    hoursPerWeek: 4,
    rides: 'downhill',
  },
  {
    key: 'R11',
    name: 'Xiu-Ying Talbrook',
    mass: 54,
    posture: 'standing',
    frontShare: 0.4,
    hoursPerWeek: null,
    rides: 'first bike, hand-me-down',
  },
  {
    key: 'R12',
    name: 'Desta Wolderanu',
    mass: 79,
    posture: 'standing',
    frontShare: null,
    hoursPerWeek: 4,
    rides: 'trail',
  },
]
