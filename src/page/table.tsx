import type { Table } from './work.js'

/** A table whose first row has the headings, and every other row's first cell its name; a phone moves it sideways. */
export const TableOf = ({
  caption,
  rows: [headings = [], ...rows],
}: {
  readonly caption: string
  readonly rows: Table
}) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what moves sideways must be reached by keys (WCAG 2.1.1)
  <section class="sideways" tabIndex={0} aria-label={caption}>
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          {headings.map((heading) =>
            heading === '' ? (
              <td key="first" />
            ) : (
              <th key={heading} scope="col">
                {heading}
              </th>
            ),
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...cells]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {cells.map((cell, index) => (
              <td key={headings[index + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </section>
)
