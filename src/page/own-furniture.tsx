import { useState } from 'preact/hooks'
import { FURNITURE_NAMES, type FurnitureTexts, furnitureFile } from '../furniture/furniture-names.js'
import { pieceName } from '../furniture/piece-name.js'
import { showProblem } from '../order/problem.js'
import { answerOf } from './open-worker.js'

/** As much as an address can keep in every browser, our order and the signs that addresses spell out included. */
const MOST_BYTES = 200_000

/** Title block, scale check and so on of the maker's own, in place of ours on every page. */
export const OwnFurniture = ({
  furniture,
  onFurniture,
}: {
  readonly furniture: FurnitureTexts
  readonly onFurniture: (furniture: FurnitureTexts) => void
}) => {
  const [problems, setProblems] = useState<readonly string[]>([])
  const own = FURNITURE_NAMES.filter((name) => furniture[name] !== undefined)
  const take = async (files: readonly File[]): Promise<void> => {
    if (files.length > 0)
      setProblems(await problemsWith(files, furniture, onFurniture).catch((error) => [String(error)]))
  }
  return (
    <>
      <div class="fields">
        <div class="field">
          <label for="furniture">Your own sheet furniture</label>
          <input
            id="furniture"
            type="file"
            multiple
            accept=".svg"
            aria-describedby="furniture-hint"
            onChange={({ currentTarget }) => {
              void take([...(currentTarget.files ?? [])])
              currentTarget.value = ''
            }}
          />
          <p class="hint" id="furniture-hint">
            in place of ours: {FURNITURE_NAMES.map(furnitureFile).join(', ')}
          </p>
        </div>
      </div>
      {problems.length > 0 && (
        <div role="alert" class="problem">
          Not taken, nothing changed.
          {problems.map((text) => (
            <span key={text}>{text}</span>
          ))}
        </div>
      )}
      {own.length > 0 && (
        <p class="files">
          Your own:
          {own.map((name) => (
            <button
              key={name}
              type="button"
              onClick={() => {
                const { [name]: _, ...others } = furniture
                onFurniture(others)
              }}
            >
              Take {furnitureFile(name)} away
            </button>
          ))}
        </p>
      )}
    </>
  )
}

/** Reads the files and takes them where all of them can serve; else all that is wrong with them. */
const problemsWith = async (
  files: readonly File[],
  before: FurnitureTexts,
  onFurniture: (furniture: FurnitureTexts) => void,
): Promise<readonly string[]> => {
  const sizes = files.reduce((sum, { size }) => sum + size, 0)
  if (sizes > MOST_BYTES)
    return [
      `Together they are larger than ${MOST_BYTES / 1000} kB, more than the page's address keeps. starwright make --furniture takes them.`,
    ]
  const named = files.map(({ name }) => pieceName(name))
  const unknown = named.flatMap((name) => (name.ok ? [] : name.problems))
  if (unknown.length > 0) return unknown.map(showProblem)
  const texts = await Promise.all(
    files.map(async (file) => new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer())),
  )
  const furniture = {
    ...before,
    ...Object.fromEntries(named.flatMap((name, index) => (name.ok ? [[name.value, texts[index]]] : []))),
  }
  const answer = await answerOf({ ask: 'furnish', given: { text: '', furniture } })
  if (answer.answer === 'refused') return answer.problems
  onFurniture(furniture)
  return []
}
