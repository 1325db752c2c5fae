/** The few colours of the house. Colour is rare and means something. */
export const colours = {
  paper: '#fbf8f1',
  ink: '#22252a',
  softInk: '#474b52',
  rule: '#b5afa2',
  /** This needs an answer. More than seven to one on paper. */
  question: '#7d3200',
} as const;
