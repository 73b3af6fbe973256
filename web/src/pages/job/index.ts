export { TakeInPage } from '../take-in/take-in-page.tsx'
export { JobPage } from './job-page.tsx'
