import type { DocumentOptions, ParseOptions, SchemaOptions } from 'yaml'

/** The core schema without the numbers nobody writes on a rule: 0x46, 0o106 and 7e1 stay text and are refused. */
export const YAML_OPTIONS: DocumentOptions & SchemaOptions & ParseOptions = {
  version: '1.2',
  prettyErrors: false,
  resolveKnownTags: false,
  logLevel: 'error',
  customTags: (tags) =>
    tags.filter((tag) => typeof tag === 'string' || !['HEX', 'OCT', 'EXP'].includes(tag.format ?? '')),
}
