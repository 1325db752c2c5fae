import { describe, expect, it } from 'vitest';
import type { ExplainedStratum, Explanation } from '../estimates/explain/explanation.ts';
import { explainSteps } from './explain-steps.ts';

/** Two of four stations of a flat lie in the zone; half of the ground is flat. */
const flat: ExplainedStratum = {
  stratum: 'platier',
  areaHa: 50,
  weight: 0.5,
  estimator: 'station mean',
  stationCount: 4,
  memberCount: 2,
  meanPerHa: 12.5,
  standardDeviationPerHa: 3,
  variance: 1.44,
  stations: [
    {
      station: 'A',
      date: '2026-05-04',
      isMember: true,
      animals: 3,
      searchedAreaM2: 240,
      amount: 480,
      weightedAnimals: 3,
      valuePerHa: 125,
      belts: [],
    },
  ],
};

const explanation: Explanation = {
  survey: 'S',
  species: 'x',
  scope: { by: 'zone', name: 'nord' },
  of: 'density',
  unit: 'animals per ha',
  value: 12.5,
  standardError: 1.2,
  degreesOfFreedom: 3,
  interval: null,
  intervalMethod: null,
  confidence: 0.95,
  areaHa: 25,
  isWhole: false,
  priors: null,
  weights: null,
  strata: [flat],
  leftOut: [],
  cautions: [],
  reason: null,
};

const french = (one: Partial<Explanation>) =>
  explainSteps({ ...explanation, ...one }, 'fr')
    .join('\n')
    .replace(/[\u00a0\u202f]/g, ' ');

// By hand: 0.5 x 2 / 4 = 0.25 of the ground; 25 ha x 12.5 = 312.5 animals; 480 / 3 = 160 mm.
describe('the steps of a figure in French', () => {
  it('open a zone, its stock and its spread', () => {
    const density = french({});
    expect(density).toContain(
      '2 stations sur 4, donc 0,5 × 2 / 4 = 0,25 de la surface ; moyenne 12,5 par ha',
    );
    expect(density).toContain('par ces surfaces : (0,25 × 12,5) / 0,25 = 12,5 par ha');
    expect(density).toContain('√(1,44) = 1,2 par ha ; les stations du dehors contribuent 0');
    const stock = french({ of: 'stock', value: 312.5, standardError: 30 });
    expect(stock).toContain('stock = 12,5 par ha × 25 ha (estimés');
    expect(stock).toContain('= 312,5 animaux');
  });

  it('open a mean length', () => {
    const size = french({ of: 'size', value: 160 });
    expect(size).toContain(
      'longueur moyenne = somme des animaux × longueur / somme des animaux = 480 / 3 = 160 mm',
    );
  });

  it('open a biomass, with where its grams come from', () => {
    const mean = {
      what: 'mean-weight',
      weightG: 300,
      weightState: 'live',
      standardErrorG: null,
      meanLengthMm: 220,
      animals: null,
    } as const;
    const weights = {
      basis: { by: 'mean weight', means: [mean], origin: { source: 'Author 2014', status: 'memory' } },
      conversion: null,
      state: 'live',
      cautions: [],
    } as unknown as NonNullable<Explanation['weights']>;
    const biomass = french({ of: 'biomass', weights });
    expect(biomass).toContain('grammes d’une station = animaux × 300 g');
    expect(biomass).toContain('(Author 2014 ; de mémoire, non vérifié)');
    expect(biomass).not.toMatch(/\b(animals|stations of|standard error|grams)\b/);
  });
});
