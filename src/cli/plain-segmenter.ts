/**
 * Stands for `Intl.Segmenter` in the bundle: yargs makes one at start-up to measure the columns of its help, and
 * loading the real one's tables takes a quarter of the run. The help is plain Latin text, one column a character.
 */
export function PlainSegmenter(): { segment: (text: string) => { segment: string }[] } {
  return { segment: (text) => Array.from(text, (segment) => ({ segment })) }
}
