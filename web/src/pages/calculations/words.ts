/** The words of these pages come with them. */
import { addWords } from '@legwork/trade'
import { appCalculationFieldWords } from '@legwork/trade/words/app-calculation-fields.ts'
import { appCalculationPictureWords } from '@legwork/trade/words/app-calculation-pictures.ts'
import { appCalculationWords } from '@legwork/trade/words/app-calculations.ts'
import { faultTestWords } from '@legwork/trade/words/fault-tests.ts'
import { faultWords } from '@legwork/trade/words/faults.ts'

addWords({
  ...appCalculationWords,
  ...appCalculationFieldWords,
  ...appCalculationPictureWords,
  ...faultWords,
  ...faultTestWords,
})
