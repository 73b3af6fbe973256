/** The texts of how a job stands: with its book, not with the first page. */
import { addWords } from '@legwork/trade'
import { appStandingWords } from '@legwork/trade/words/app-standing.ts'

addWords(appStandingWords)
