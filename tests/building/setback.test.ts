import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  energySignature,
  houseTimeConstant,
  houseTimeConstantInputShape,
  monthlyBalancePoints,
  monthlyGainsInputShape,
  setback,
  type SetbackInput,
  setbackInputShape,
} from '../../src/building/index.js';
import { celsius, fraction, hours, kilowatts, squareMetres, watts, wattsPerKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { heating } from './houses.js';

const signature = energySignature({
  mode: 'heating',
  form: 'gains as offset',
  designLoad: kilowatts(10),
  designOutdoor: celsius(-15),
  indoor: celsius(20),
  balancePoint: celsius(16),
});
const night: SetbackInput = {
  signature,
  outdoor: celsius(0),
  lowered: celsius(16),
  setbackTime: hours(8),
  reheatTime: hours(2),
  timeConstant: hours(40),
  capacity: kilowatts(8),
};
const anyNight = fc.record({
  outdoor: fc.double({ min: -20, max: 15.5, noNaN: true }).map((t) => celsius(t)),
  lowered: fc.double({ min: 8, max: 19.9, noNaN: true }).map((t) => celsius(t)),
  setbackTime: fc.double({ min: 0.1, max: 18, noNaN: true }).map((t) => hours(t)),
  reheatTime: fc.double({ min: 0.1, max: 6, noNaN: true }).map((t) => hours(t)),
  timeConstant: fc.double({ min: 5, max: 400, noNaN: true }).map((t) => hours(t)),
});

/** The equation of the house integrated by steps of two seconds over one cycle, the thermostat as the schedule says. */
function integrated(
  { outdoor, lowered, setbackTime, timeConstant, reheatTime }: SetbackInput,
  reheatLoad: number,
): Readonly<Record<'energy' | 'mean' | 'lowest' | 'after', number>> {
  const step = 2;
  const { slope, gainsTakenOff, balancePoint } = signature;
  const indoor = balancePoint + gainsTakenOff / slope;
  const mass = slope * timeConstant;
  let [temperature, energy, mean, lowest, after] = [indoor, 0, 0, indoor, Number.NaN];
  for (let time = 0; time < 86_400; time += step) {
    const low = time < setbackTime;
    const loss = slope * (temperature - outdoor) - gainsTakenOff;
    const reheating = !low && time < setbackTime + reheatTime;
    if (!low && !reheating && Number.isNaN(after)) after = temperature;
    const heat = low ? (temperature > lowered ? 0 : loss) : reheating ? reheatLoad : slope * (indoor - outdoor) - gainsTakenOff;
    energy += heat * step;
    temperature += ((heat - loss) * step) / mass;
    mean += (temperature * step) / 86_400;
    lowest = Math.min(lowest, temperature);
  }
  return { energy, mean, lowest, after };
}

describe('setback', () => {
  it.each([
    ['that reaches the lowered temperature', night],
    ['that does not', { ...night, lowered: celsius(10), timeConstant: hours(150) }],
    ['of a light house in the cold', { ...night, outdoor: celsius(-12), timeConstant: hours(12), setbackTime: hours(10), reheatTime: hours(4) }],
  ])('is what the equation of the house gives step by step: one %s', (_, input) => {
    const found = setback(input);
    const steps = integrated(input, found.reheatLoad);
    expect(found.energy / steps.energy).toBeCloseTo(1, 3);
    expect(found.meanIndoor).toBeCloseTo(steps.mean, 2);
    expect(found.lowestIndoor).toBeCloseTo(steps.lowest, 2);
    // The even load of the reheat brings the house back on time.
    expect(steps.after).toBeCloseTo(20, 2);
  });

  it('saves what it does not use, by the mean indoor temperature', () => {
    fc.assert(
      fc.property(anyNight, (of) => {
        const { energy, savedEnergy, savedShare, steadyLoad, meanIndoor, lowestIndoor, reheatLoad, unheatedIndoor } = setback({ ...night, ...of });
        expect((energy + savedEnergy) / (steadyLoad * 86_400)).toBeCloseTo(1, 9);
        expect(savedEnergy).toBeCloseTo(signature.slope * (20 - meanIndoor) * 86_400, -1);
        expect(savedShare).toBeGreaterThanOrEqual(0);
        expect(savedShare).toBeLessThanOrEqual(1);
        expect(lowestIndoor).toBeGreaterThanOrEqual(Math.max(of.lowered, unheatedIndoor) - (of.lowered < unheatedIndoor ? 1e-9 : 1e-9));
        expect(reheatLoad).toBeGreaterThanOrEqual(steadyLoad * (1 - 1e-9));
      }),
    );
  });

  it('that is deeper or longer saves no less and asks for no less; a heavier house saves less', () => {
    fc.assert(
      fc.property(anyNight, fc.double({ min: 0, max: 4, noNaN: true }), (of, more) => {
        const usual = setback({ ...night, ...of });
        const near = 1e-9 * usual.steadyLoad * 86_400;
        for (const change of [{ lowered: celsius(of.lowered - more) }, { setbackTime: hours(hours.of(of.setbackTime) + more / 4) }]) {
          if (hours.of(change.setbackTime ?? of.setbackTime) + hours.of(of.reheatTime) > 24) continue;
          const other = setback({ ...night, ...of, ...change });
          expect(other.savedEnergy).toBeGreaterThanOrEqual(usual.savedEnergy - near);
          expect(other.reheatLoad).toBeGreaterThanOrEqual(usual.reheatLoad * (1 - 1e-9));
        }
        expect(setback({ ...night, ...of, timeConstant: hours(hours.of(of.timeConstant) + more) }).savedEnergy).toBeLessThanOrEqual(
          usual.savedEnergy + near,
        );
      }),
    );
  });

  it('says what a unit that is sized to the load lacks in the reheat, and how long it takes alone', () => {
    const cold = setback({ ...night, outdoor: celsius(-10), capacity: kilowatts(12) });
    expect(cold.findings).toMatchObject([{ code: 'setback-reheat-short', level: 'warning' }]);
    expect(cold.unmetEnergy).toBeCloseTo((cold.reheatLoad - 12_000) * 7200, 3);
    const alone = setback({ ...night, outdoor: celsius(-10), capacity: kilowatts(12), reheatTime: cold.reheatTimeByCapacity ?? hours(0) });
    expect(alone.reheatLoad).toBeCloseTo(12_000, 6);
    expect(setback({ ...night, capacity: kilowatts(60) }).findings).toEqual([]);
    expect(setback({ ...night, outdoor: celsius(-14), capacity: kilowatts(8.5) })).not.toHaveProperty('reheatTimeByCapacity');
    const { capacity: _, ...unnamed } = night;
    expect(setback(unnamed)).not.toHaveProperty('unmetEnergy');
  });

  it('of an absence saves more the longer it is', () => {
    const away = { ...night, lowered: celsius(12), reheatTime: hours(12), cycleTime: hours(24 * 9), setbackTime: hours(24 * 7) };
    expect(setback(away).savedShare).toBeGreaterThan(2 * setback(night).savedShare);
  });

  it('refuses bad input by name', () => {
    const full: SetbackInput = { ...night, cycleTime: hours(24) };
    refuses(setback, setbackInputShape, full);
    expect(() => setback({ ...night, signature: heating })).toThrow('signature.form');
    expect(() => setback({ ...night, outdoor: celsius(16) })).toThrow('nothing to save without a load');
    expect(() => setback({ ...night, setbackTime: hours(23) })).toThrow('must fit into the cycle');
  });
});

describe('houseTimeConstant', () => {
  it('grows with mass and falls with loss', () => {
    const of = (heatCapacityClass: 'light' | 'heavy', slope: number) =>
      houseTimeConstant({ heatCapacityClass, floorArea: squareMetres(150), slope: wattsPerKelvin(slope) });
    expect(of('heavy', 200)).toBeGreaterThan(of('light', 200));
    expect(of('light', 100)).toBeCloseTo(2 * of('light', 200), 6);
  });

  it('refuses bad input by name', () => {
    refuses(houseTimeConstant, houseTimeConstantInputShape, {
      heatCapacityClass: 'medium',
      floorArea: squareMetres(150),
      slope: wattsPerKelvin(200),
    });
  });
});

describe('monthlyBalancePoints', () => {
  const solarGains = [300, 500, 700, 800, 900, 1000, 1000, 900, 800, 600, 300, 200].map((gain) => watts(gain));
  const input = { signature, internalGains: watts(400), solarGains, useFraction: fraction(0.9) };

  it('fall by the gains that are of use over the slope, from the indoor temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3000, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (internal, use) => {
        const months = monthlyBalancePoints({ ...input, internalGains: watts(internal), useFraction: fraction(use) });
        months.forEach(({ balancePoint, usedGains, slope, month }, index) => {
          expect(month).toBe(index + 1);
          expect(usedGains).toBeCloseTo(use * (internal + (solarGains[index] ?? 0)), 9);
          expect(slope * (20 - balancePoint)).toBeCloseTo(usedGains, 6);
        });
      }),
    );
    expect(monthlyBalancePoints({ ...input, useFraction: fraction(0) })[5]?.balancePoint).toBeCloseTo(20, 12);
  });

  it('refuse bad input by name', () => {
    refuses(monthlyBalancePoints, monthlyGainsInputShape, input);
  });
});
