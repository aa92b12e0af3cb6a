/**
 * Latin letters without a mark of their own kind to drop (ICAO Doc 9303, part 3, section 6 A, but for ø, which has
 * always been o here), then letters of African and other alphabets by the letter they were made from.
 */
const LATIN =
  'ßss æae œoe øo đd ðd þth łl ħh ŧt ŋn ıi ĸq əe ǝe ɛe ɔo ɓb ɗd ƒf ɠg ɣg ɦh ɨi ɩi ɪi ƙk ɲn ƞn ɵo ƥp ʀr ɽr ʃsh ʒzh ʈt ƭt ʉu ʊu ʋv ƴy ƶz ƀb ƈc ȼc ɖd ɇe ǥg ɉj ɍr ɏy ƿw ʻ ʼ'

/** Greek, letter by letter (ISO 843:1997, type 2). */
const GREEK = 'αa βv γg δd εe ζz ηi θth ιi κk λl μm νn ξx οo πp ρr σs ςs τt υy φf χch ψps ωo'

/**
 * Cyrillic of many languages, in the letters of passports (ICAO Doc 9303, part 3, section 6 B); further letters of
 * Turkic, Iranian and other alphabets by the sound that their romanisations agree on.
 */
const CYRILLIC =
  'аa бb вv гg дd ђd еe єie жzh зz ѕdz иi іi јj кk лl љlj мm нn њnj оo пp рr сs тt ћc уu фf хkh цts чch џdz шsh щshch ъie ыy ь эe юiu яia ґg ғgh ҕgh җzh ҙz қq ҝg ҟk ҡk ңng ҥng ҧp ҩo ҫs ҭt үu ұu ҳh ҵts ҷch ҹch һh ҽch ҿch ӏ әa ӡdz өo ѣie ѫu ѧia ѳf ѵi ѡo ѯx ѱps ꙋu'

/** Armenian (BGN/PCGN 1981). */
const ARMENIAN =
  'աa բb գg դd եe զz էe ըy թt ժzh իi լl խkh ծts կk հh ձdz ղgh ճch մm յy նn շsh ոo չch պp ջj ռr սs վv տt րr ցts ւv փp քk օo ֆf ևev'

/** Georgian (national system, 2002). */
const GEORGIAN =
  'აa ბb გg დd ეe ვv ზz თt იi კk ლl მm ნn ოo პp ჟzh რr სs ტt უu ფp ქk ღgh ყq შsh ჩch ცts ძdz წts ჭch ხkh ჯj ჰh ჱei ჲi ჳvi ჴkh ჵo ჶf'

/** The systems' tables from memory. */
const LETTERS: ReadonlyMap<string, string> = new Map(
  [LATIN, GREEK, CYRILLIC, ARMENIAN, GEORGIAN].flatMap((table) =>
    table.split(' ').map((entry): [string, string] => [entry.slice(0, 1), entry.slice(1)]),
  ),
)

/**
 * A text in lower-case letters a to z, for file names, letter by letter and without marks. What the tables do not hold
 * stays as it is. It is not meant for reading: two texts can come out the same.
 */
export const inLatin = (text: string): string =>
  [...text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase()]
    .map((letter) => LETTERS.get(letter) ?? letter)
    .join('')
