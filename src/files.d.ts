/* Files that the build takes into the bundle as they are. */

declare module '*.svg' {
  const text: string
  export default text
}

declare module '*.ttf' {
  const bytes: Uint8Array
  export default bytes
}
