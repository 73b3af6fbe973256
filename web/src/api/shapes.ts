/** The schemas that the server's answers are read by: a part of its own, so that the first page need not wait for it. */
export { deliveryAnswer, problem } from '@legwork/contract'
