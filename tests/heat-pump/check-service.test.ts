import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkService, type ServiceCheckInput, serviceCheckInputShape } from '../../src/heat-pump/index.js';
import { noticesFor } from '../../src/safety/index.js';
import { amperes, electricKilowatts, electricWatts, fraction, volts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const input: ServiceCheckInput = {
  connection: 'three phase',
  voltage: volts(400),
  serviceCurrent: amperes(35),
  existingCurrent: amperes(14),
  compressor: { by: 'electric input', electricPower: electricKilowatts(3), powerFactor: fraction(0.8) },
  starting: { by: 'soft starter', lockedRotorCurrent: amperes(40), startShare: fraction(0.45) },
  auxiliaryHeater: electricKilowatts(6),
  circulator: electricWatts(140),
  circulatorPowerFactor: fraction(0.7),
};
const codes = (changed: Partial<ServiceCheckInput> = {}): readonly string[] =>
  checkService({ ...input, ...changed }).findings.map(({ code }) => code);

describe('checkService', () => {
  it('has the currents of the formulas, three phases', () => {
    const check = checkService(input);
    expect(check.compressorCurrent).toBeCloseTo(3000 / (1.7320508 * 400 * 0.8), 6);
    expect(check.auxiliaryCurrent).toBeCloseTo(6000 / 692.820323, 6);
    expect(check.circulatorCurrent).toBeCloseTo(140 / (692.820323 * 0.7), 6);
    expect(check.startingCurrent).toBe(18);
    expect(check.spareBefore).toBe(21);
    expect(check.spareAfter).toBeCloseTo(21 - check.addedCurrent, 12);
    expect([check.fits, ...codes()]).toEqual([true, 'electrician-decides', 'start-may-flicker']);
  });

  it('always leaves it to a licensed electrician', () => {
    expect(
      noticesFor(checkService(input).situations)
        .map(({ text }) => text)
        .join(' '),
    ).toContain('licensed electrician');
    expect(codes({ starting: { by: 'inverter' } })).toEqual(['electrician-decides']);
  });

  it('adds up, scales with power and against voltage, and shares among three lines', () => {
    fc.assert(
      fc.property(between(200, 20_000), between(0, 15_000), between(100, 480), between(0.3, 1), (compressor, heater, voltage, powerFactor) => {
        const of = (connection: ServiceCheckInput['connection'], factor: number, over: number): ReturnType<typeof checkService> =>
          checkService({
            ...input,
            connection,
            voltage: volts(voltage * over),
            compressor: { by: 'electric input', electricPower: electricWatts(compressor * factor), powerFactor: fraction(powerFactor) },
            starting: { by: 'inverter' },
            auxiliaryHeater: electricWatts(heater * factor),
            circulator: electricWatts(100 * factor),
          });
        const one = of('single phase', 1, 1);
        expect(one.addedCurrent).toBeCloseTo(one.compressorCurrent + one.auxiliaryCurrent + one.circulatorCurrent, 9);
        expect(of('single phase', 2, 1).addedCurrent / one.addedCurrent).toBeCloseTo(2, 9);
        expect(of('single phase', 1, 2).addedCurrent / one.addedCurrent).toBeCloseTo(0.5, 9);
        expect(of('three phase', 1, 1).addedCurrent / one.addedCurrent).toBeCloseTo(1 / Math.sqrt(3), 9);
        expect(one.startingCurrent).toBe(one.compressorCurrent);
        expect(one.fits).toBe(one.spareAfter >= 0);
      }),
    );
  });

  it('never adds less than the sum of the currents as vectors', () => {
    fc.assert(
      fc.property(between(0.3, 1), between(0.3, 1), (a, b) => {
        const check = checkService({
          ...input,
          compressor: { by: 'electric input', electricPower: electricWatts(3000), powerFactor: fraction(a) },
          circulatorPowerFactor: fraction(b),
        });
        const active = (3000 + 6000 + 140) / (Math.sqrt(3) * 400);
        const reactive = (3000 * Math.tan(Math.acos(a)) + 140 * Math.tan(Math.acos(b))) / (Math.sqrt(3) * 400);
        expect(check.addedCurrent).toBeGreaterThanOrEqual(Math.hypot(active, reactive) - 1e-9);
      }),
    );
  });

  it('says a service that does not suffice, assumed power factors, and a hard start', () => {
    const bare = checkService({
      connection: 'single phase',
      voltage: volts(230),
      serviceCurrent: amperes(40),
      existingCurrent: amperes(30),
      compressor: { by: 'electric input', electricPower: electricWatts(2300) },
      starting: { by: 'direct', lockedRotorCurrent: amperes(60) },
      circulator: electricWatts(60),
    });
    expect(bare.compressorCurrent).toBeCloseTo(10 / 0.85, 9);
    expect(bare.auxiliaryCurrent).toBe(0);
    expect(bare.findings.map(({ code }) => code)).toEqual([
      'electrician-decides',
      'service-short',
      'start-may-flicker',
      'power-factor-assumed',
      'power-factor-assumed',
    ]);
    expect(checkService({ ...input, existingCurrent: amperes(40) }).spareBefore).toBe(-5);
  });

  it('never starts on less than it runs with, and refuses a locked rotor below that', () => {
    const running = { by: 'running current', runningCurrent: amperes(14) } as const;
    const soft = { by: 'soft starter', lockedRotorCurrent: amperes(40), startShare: fraction(0.2) } as const;
    expect(checkService({ ...input, compressor: running, starting: soft }).startingCurrent).toBe(14);
    expect(() => checkService({ ...input, compressor: running, starting: { by: 'direct', lockedRotorCurrent: amperes(10) } })).toThrow(
      'interchanged',
    );
  });

  it('refuses bad input by name', () => {
    refuses(checkService, serviceCheckInputShape, input, {
      more: [
        { ...input, compressor: { by: 'running current', runningCurrent: amperes(14) }, starting: { by: 'direct', lockedRotorCurrent: amperes(72) } },
        { ...input, starting: { by: 'inverter' } },
      ],
    });
  });
});
