import { useBench } from './bench.js'

/** In the order in which makers want them: to print, to look at, to cut. */
const ENDINGS = ['pdf', 'svg', 'dxf', 'txt']

/** A button for each file of one thing; files of an order that has been changed since are not offered. */
export const FileButtons = ({
  paths,
  of,
}: {
  readonly paths: readonly string[]
  /** What the files are of, for whoever hears the page. */
  readonly of: string
}) => {
  const { save } = useBench()
  return (
    <>
      {ENDINGS.flatMap((ending) => paths.filter((path) => path.endsWith(`.${ending}`))).map((path) => (
        <button key={path} type="button" disabled={!save} onClick={() => save?.(path)}>
          Save {path.split('.').at(-1)?.toUpperCase()}
          <span class="unseen"> of {of}</span>
        </button>
      ))}
    </>
  )
}
