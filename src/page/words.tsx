import type { Words } from '../compose/dry-fit-words.js'

/** Headings with what stands behind each; one without a heading goes on with the one before. */
export const WordsOf = ({ words }: { readonly words: readonly Words[] }) => (
  <dl class="words">
    {words.map(({ heading, text }) => (
      <div key={text}>
        <dt>{heading === '' ? <span class="unseen">further</span> : heading}</dt>
        <dd>{text}</dd>
      </div>
    ))}
  </dl>
)
