export { type AppOptions, buildApp } from './app.ts'
export { checkBook } from './check-book.ts'
export { StartRefused } from './start-refused.ts'
export { type Started, type StartOptions, startServer } from './start-server.ts'
