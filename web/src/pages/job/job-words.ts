/** Words of looking over: a chapter, and lines of the book. */
import { addWords } from '@legwork/trade'
import { lookOverWords } from '@legwork/trade/words/look-over.ts'

addWords(lookOverWords)
