/** What has to be said whenever a catch is worked out. */

export const harvestWords = {
  decision:
    'These are options worked out from the counts; which of them is taken, or none, is the manager’s decision.',
  noRate:
    'No rate was given, and there is none by default: what share may be taken in a year is not in the counts. Give at least three with --rate "0.05: source", so that they can be compared.',
  fewRates:
    'At least three different rates are needed, each with its source: one alone would read like advice. Give more with --rate "0.05: source".',
  noLimitReference:
    'No limit reference was given, so there is no closure rule; give the density below which nothing should be taken with --limit-reference "50 per ha: source".',
  closedTable: 'By the rule the catch is 0 at every rate. Were it open, a year, from the lower limit:',
  sampledOnly:
    'The stock is that of the sampled strata only; nothing is known of habitat, depth or ground that was not sampled.',
  shareWithoutSpread:
    'The share of legal animals has no spread of its own here: the lower limit holds that of the count alone.',
} as const;
