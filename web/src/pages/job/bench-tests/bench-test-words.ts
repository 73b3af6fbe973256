/** The texts of the press and of the timed return: with the chapters that run them, not with the first page. */
import { addWords } from '@legwork/trade'
import { appBenchTestWords } from '@legwork/trade/words/app-bench-tests.ts'

addWords(appBenchTestWords)
