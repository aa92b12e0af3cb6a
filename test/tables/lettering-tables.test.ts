import { expect, test } from 'vitest'
import { letteredSignsText, letterWidthsText } from './lettering-font.js'

// `npm run lettering` writes both anew.

test('shared/lettered-signs.json holds what the embedded font sets', async () => {
  await expect(letteredSignsText()).toMatchFileSnapshot('../../shared/lettered-signs.json')
})

test('shared/letter-widths.json holds the widths of both faces', async () => {
  await expect(letterWidthsText()).toMatchFileSnapshot('../../shared/letter-widths.json')
})
