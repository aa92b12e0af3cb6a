/** Stands for standard input where a file is asked for; no file can have this name. */
export const STANDARD_INPUT = '\0'
