import type { DryFit } from '../fit/dry-fit.js'

/**
 * The dry fit for programs, a public contract: lengths in mm, angles in degrees, unrounded; uncertainties have a coverage
 * factor of 2. Additions are allowed; nothing that stands here changes its name or meaning.
 */
export const dryFitJson = (fit: DryFit): string => {
  const { plan, found, errors, uncertainty, setting, newArms, recut, terms } = fit
  const [tip, side, tipEdge] = found.assumed
  return `${JSON.stringify(
    {
      name: plan.order.name,
      verdict: fit.verdict,
      /** 360° less the arms' centre angles; above zero the last joint gapes at the valley. */
      closure: fit.closure,
      closureUncertainty: fit.closureUncertainty,
      gap: fit.gap,
      measured: found.measured.map(({ of, value, within }) => ({ of, value, within })),
      errors: {
        tip: { value: errors.tip, uncertainty: uncertainty.tip, assumed: tip },
        side: { value: errors.side, uncertainty: uncertainty.side, assumed: side },
        tipEdge: { value: errors.tipEdge, uncertainty: uncertainty.tipEdge, assumed: tipEdge },
      },
      rank: found.rank,
      untold: fit.untold,
      setting: {
        from: terms.reading,
        to: setting.reading,
        wedge: setting.wedge?.angle ?? null,
        mark: setting.mark,
        closureAtMark: setting.closureAtMark,
        withinLimit: setting.withinLimit,
        mending: setting.mending?.reading ?? null,
        mendingWedge: setting.mending?.wedge?.angle ?? null,
      },
      /** Readings for new arms, where the tips are told to be off. */
      newArms: newArms ? { first: newArms.firstCut.reading, joint: newArms.jointCut.reading } : null,
      recut:
        recut && fit.verdict === 'turn'
          ? {
              stopMove: recut.stopMove,
              stop: recut.star.tipEdge,
              offValley: recut.off.valley,
              offCentre: recut.off.centre,
              tipEdge: recut.star.tipEdge,
              jointEdge: recut.star.jointEdge,
              across: recut.star.across,
              height: recut.star.height,
              missing: Math.max(0, plan.star.tipEdge - recut.star.tipEdge),
              closureUncertainty: fit.recutUncertainty,
            }
          : null,
      bias: { miter: setting.learned, uncertainty: setting.uncertainty },
    },
    undefined,
    2,
  )}\n`
}
