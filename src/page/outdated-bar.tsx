/**
 * In sight wherever one is on the page, and on every printed sheet, while the order has mistakes: a saw must not be set by
 * a figure of the order before unawares.
 */
export const OutdatedBar = ({ onShow }: { readonly onShow: () => void }) => (
  <aside class="outdated-bar" aria-label="Figures of the order before">
    Figures and drawings are of the order as it was before its mistakes.{' '}
    <button type="button" class="quiet" onClick={onShow}>
      Show the mistakes
    </button>
  </aside>
)
