import type { PrintedBook } from '../paper/page.js'

export type Document = InstanceType<typeof import('pdfkit')>

/** Part of every file's identity, so that the same order gives the same bytes. */
const FIXED_DATE = new Date(Date.UTC(2000, 0, 1))

/**
 * An empty document. The viewer is told not to scale (`PrintScaling None`, ISO 32000-1 table 150). Nothing is
 * compressed, because compressors differ between machines and the bytes must not.
 */
export const openDocument = async ({ title }: PrintedBook): Promise<Document> => {
  const PDFDocument = await loadPdfkit()
  const document = new PDFDocument({
    autoFirstPage: false,
    compress: false,
    pdfVersion: '1.7',
    displayTitle: true,
    lang: 'en',
    info: {
      Title: title,
      Creator: 'Starwright',
      Producer: 'Starwright',
      CreationDate: FIXED_DATE,
      ModDate: FIXED_DATE,
    },
  })
  forbidScaling(document)
  return document
}

/** The browser's build of pdfkit, which knows no font until it is given one; in Node it finds its own. */
interface BrowserPdfkit {
  readonly registerStdFonts?: (metrics: object) => void
}

const loadPdfkit = async () => {
  const pdfkit = await import('pdfkit')
  const { registerStdFonts } = pdfkit as BrowserPdfkit
  if (registerStdFonts) registerStdFonts((await import('pdfkit/standard-fonts/Helvetica')).default)
  return pdfkit.default
}

/** The catalog's viewer preferences; the types of pdfkit do not know them. */
const forbidScaling = (document: Document): void => {
  const { _root: root } = document as unknown as {
    _root: { data: { ViewerPreferences: { data: Record<string, unknown> } } }
  }
  root.data.ViewerPreferences.data.PrintScaling = 'None'
}
