/**
 * Stands for the package `string-width` in the built command line, by which yargs measures the columns of its help.
 * Starting that takes a quarter of a short run, for tables of all the world's letters; the help is plain Latin text, one
 * column a character.
 */
export default (text: string): number => Array.from(text).length
