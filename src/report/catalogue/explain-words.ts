/** The words in which a figure is worked out. */

export const explainWords = {
  figure: {
    density: 'Density',
    stock: 'Stock',
    size: 'Mean length',
    biomass: 'Biomass',
  },
  nothingLeftOut: 'Nothing was left out.',
  lognormal:
    'interval: log-normal, the value divided and multiplied by exp(q × √ln(1 + CV²)), q of t with the degrees of freedom above',
  clumped:
    'interval: clumped counts. For each stratum every density is weighed by how well clumped animals of that density would give these counts (negative binomial and Poisson-log-normal, averaged); strata are added up by area (docs/methods/clumped-interval.md)',
  zero: 'nothing seen: no spread; the interval goes from zero to the bound at which every station would have missed the animals one time in twenty (METHODS c5)',
} as const;
