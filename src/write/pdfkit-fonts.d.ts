/** The font tables pdfkit ships; its types do not know them. */
declare module 'pdfkit/standard-fonts/Helvetica' {
  const metrics: object
  export default metrics
}
