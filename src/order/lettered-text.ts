import { isLetteredLetter } from '../tables/lettered-signs.js'

/*
 * Which text can be lettered on patterns and stand in files: letters and digits of the scripts that are set sign by
 * sign from left to right, and plain signs. Everything else is refused by character, with the reason.
 */

/** Signs of a name, besides letters, digits and the space. */
const NAME_SIGNS = `-_.,:'()+&#!⅓⅔⅛⅜⅝⅞°×±−–—·…′″⌀€№¿¡«»„“”‚‘’ʻʼ`

/** Signs of a note besides those of a name: nothing is named after a note. */
const NOTE_SIGNS = `${NAME_SIGNS}%/;=?*~@$£§`

/** Every plain sign that can be lettered. */
export const PLAIN_SIGNS = NOTE_SIGNS

/** What a line of text is for. */
export type TextUse = 'name' | 'note'

/** What is allowed beside letters, digits and spaces, as the maker is told. */
export const SIGNS_TOLD: Readonly<Record<TextUse, string>> = {
  name: `- _ . , : ' ( ) + & # ! ½ ° × ⌀ and the like`,
  note: `- _ . , : ; ' ( ) + & # ! ? % / = ½ ° × ⌀ and the like`,
}

/** One way of writing each sign: letters and marks composed (Unicode form NFC), no space around. */
export const plainText = (written: string): string => written.normalize('NFC').trim()

/** The first sign that cannot be lettered, or would act in a file of ours; undefined when all is well. */
export const strangeSign = (text: string, use: TextUse): string | undefined => {
  const signs = use === 'name' ? NAME_SIGNS : NOTE_SIGNS
  return [...text].find((sign) => sign !== ' ' && !signs.includes(sign) && !isLetteredLetter(sign))
}

const REASONS: readonly (readonly [RegExp, string])[] = [
  [/^\p{Cs}$/u, 'it is half a character'],
  [/^[\p{C}\p{Z}]$/u, 'it does not show'],
  [/^\p{M}$/u, 'it is a mark that does not become one character with the letter before it'],
  [
    /^[\p{scx=Hebr}\p{scx=Arab}\p{scx=Syrc}\p{scx=Thaa}\p{scx=Nkoo}\p{scx=Samr}\p{scx=Mand}\p{scx=Adlm}\p{scx=Rohg}]$/u,
    'its script runs from right to left',
  ],
  [/^(?:[<>"\\/;%=?*~@$]|`|\||\^|\{|\}|\[|\])$/, 'it can have a meaning of its own in files'],
  [/^\p{Extended_Pictographic}$/u, 'pictures are not lettered'],
  [/^[\p{P}\p{S}]$/u, 'only plain signs are lettered'],
  [
    /^[\p{scx=Deva}\p{scx=Beng}\p{scx=Guru}\p{scx=Gujr}\p{scx=Orya}\p{scx=Taml}\p{scx=Telu}\p{scx=Knda}\p{scx=Mlym}\p{scx=Sinh}\p{scx=Thai}\p{scx=Laoo}\p{scx=Tibt}\p{scx=Mymr}\p{scx=Khmr}\p{scx=Mong}]$/u,
    'its script joins or stacks its signs, and they are set one by one here',
  ],
]

/** `The character 🌟 (U+1F31F) cannot be lettered: pictures are not lettered.` */
export const refusalOf = (sign: string): string => {
  const reason =
    REASONS.find(([kind]) => kind.test(sign))?.[1] ?? 'the font of the lettering does not have it'
  return `The character ${characterName(sign)} cannot be lettered: ${reason}.`
}

const characterName = (sign: string): string => {
  const code = (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')
  return /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(sign) ? `${sign} (U+${code})` : `U+${code}`
}
