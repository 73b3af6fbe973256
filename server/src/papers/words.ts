/** Papers speak with words that no screen needs, and name tests that screens load when they are opened. */
import { addWords } from '@legwork/trade'
import { appBenchTestWords } from '@legwork/trade/words/app-bench-tests.ts'
import { faultTestWords } from '@legwork/trade/words/fault-tests.ts'
import { paperWords } from '@legwork/trade/words/papers.ts'

addWords({ ...paperWords, ...appBenchTestWords, ...faultTestWords })
