export { JobPage } from './job-page.tsx'
export { TakeInPage } from './take-in-page.tsx'
