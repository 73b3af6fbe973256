/** The words of these pages come with them. */
import { addWords } from '@legwork/trade'
import { appBenchTestWords } from '@legwork/trade/words/app-bench-tests.ts'
import { appLifeWords } from '@legwork/trade/words/app-life.ts'

addWords({ ...appBenchTestWords, ...appLifeWords })
