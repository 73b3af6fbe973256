/** The words of these pages come with them. */
import { addWords } from '@legwork/trade'
import { appInstrumentWords } from '@legwork/trade/words/app-instruments.ts'

addWords(appInstrumentWords)
