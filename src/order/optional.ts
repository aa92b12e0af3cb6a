/** `{ key: value }`, or nothing at all when there is no value. */
export const optional = <Key extends string, Value>(key: Key, value: Value | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { [K in Key]?: Value }
