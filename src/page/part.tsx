import type { ComponentChildren } from 'preact'

/** The parts of the page by what their headings say, in the order of the job. */
const PARTS = {
  star: 'The star',
  choose: 'Stars this shop can make',
  saw: 'The saw and the cuts',
  chance: 'Will the last joint close?',
  wood: 'The boards and the panel',
  season: 'The wood, summer and winter',
  paper: 'The paper, the jigs and the files',
  fit: 'The dry fit',
  finish: 'Glue, back, finish, hang',
} as const

export type PartName = keyof typeof PARTS

const headingOf = (name: string): string => `${name}-heading`

/** @param printed is there anything in it that is wanted on paper? */
export const Part = ({
  name,
  printed = true,
  children,
}: {
  readonly name: PartName
  readonly printed?: boolean
  readonly children: ComponentChildren
}) => (
  <section aria-labelledby={headingOf(name)} class={printed ? 'part' : 'part unprinted'}>
    <h2 id={headingOf(name)} tabIndex={-1}>
      {PARTS[name]}
    </h2>
    {children}
  </section>
)

/** Every part one press away: on a phone they are far apart. No links, for the address keeps the order. */
export const Contents = () => (
  <details class="more">
    <summary>Parts of this page</summary>
    <nav class="contents" aria-label="Parts of the page">
      {Object.entries(PARTS).map(([name, words]) => (
        <button key={name} type="button" class="quiet" onClick={() => goToPart(name)}>
          {words}
        </button>
      ))}
    </nav>
  </details>
)

const goToPart = (name: string): void => {
  const heading = document.getElementById(headingOf(name))
  heading?.focus({ preventScroll: true })
  heading?.scrollIntoView()
}
