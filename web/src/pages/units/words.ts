/** The words of these pages come with them. */
import { addWords } from '@legwork/trade'
import { appLifeWords } from '@legwork/trade/words/app-life.ts'

addWords(appLifeWords)
