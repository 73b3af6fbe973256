/** Words of a job's chapters that come with a job, not with the first page. */
import { addWords } from '@legwork/trade'
import { lookOverWords } from '@legwork/trade/words/look-over.ts'
import { supplyWords } from '@legwork/trade/words/supplies.ts'

addWords({ ...lookOverWords, ...supplyWords })
