/** The usual cautions, on every pattern and plan. Hand distance: AS/NZS 62841.3.9:2020, safety warnings. */
export const SAW_CAUTION =
  "Hands stay at least 100 mm (4 in) from the blade. Clamp the piece; never leave one loose between blade and stop. The saw's manual and local rules come first."

export const PRINT_CAUTION = 'Print at 100 %, not "fit to page", and measure the scale check before you cut.'
