import { describe, expect, test } from 'vitest';
import g4 from '../../../test/vectors/g4_power_nb_sim.json' with { type: 'json' };
import { seededRandom } from '../../maths/random.ts';
import { simulatedPower } from './simulated-power.ts';

describe('power by simulation', () => {
  // Authority: vector g4 (R rnbinom and t.test, 4000 simulations), within its absolute 0.03.
  test('is what R finds, and a survey without a change cries wolf one time in ten', () => {
    const { n, mu, k, ratio } = g4.data;
    n.forEach((stations, i) => {
      const before = { stations, meanPerStation: mu[i]!, clumpingK: k[i]! };
      const after = { ...before, meanPerStation: mu[i]! * ratio[i]! };
      const answer = simulatedPower({ before, after, simulations: 4000 }, seededRandom(20 + i)).value!;
      expect(Math.abs(answer.power - g4.expected.power[i]!)).toBeLessThan(g4.tolerance_relative);
      // The test on the log ratio lies near the Wald approximation, which knows no few degrees of freedom.
      const log = simulatedPower(
        { before, after, test: 'log-ratio', simulations: 4000 },
        seededRandom(40 + i),
      ).value!;
      expect(Math.abs(log.power - g4.expected.approx_log_wald[i]!)).toBeLessThan(0.05);
    });
  });

  const before = { stations: 12, meanPerStation: 5, clumpingK: 0.5 };

  test('repeats itself from its seed', () => {
    const run = (seed: number) => simulatedPower({ before, after: before }, seededRandom(seed)).value!.power;
    expect(run(7)).toBe(run(7));
    expect(run(7)).not.toBe(run(8));
  });

  test('counts surveys without animals as not told', () => {
    const none = { ...before, meanPerStation: 0 };
    const answer = simulatedPower({ before: none, after: none }, seededRandom(1)).value!;
    expect(answer).toMatchObject({ power: 0, untestable: 1 });
  });

  test('is refused for one station, which has no spread', () => {
    const lone = { ...before, stations: 1 };
    expect(simulatedPower({ before: lone, after: before }, seededRandom(1)).value).toBeNull();
  });
});
