import { describe, expect, it } from 'vitest';
import { describeFinding } from '../../src/report/index.js';
import { amperes, electricKilowattHours, hours, kilowattHours, kilowatts, money, ratio } from '../../src/units/index.js';

const said = (finding: Omit<Parameters<typeof describeFinding>[0], 'level' | 'source'>): string =>
  describeFinding({ ...finding, level: 'note', source: 'common practice' } as Parameters<typeof describeFinding>[0], 'metric');

describe('a service', () => {
  const currents = (spare: number) => ({ addedCurrent: amperes(40), spareCurrent: amperes(spare), shortBy: amperes(40 - spare) });
  it('that is over already has nothing to spare', () => {
    expect(said({ code: 'service-short', values: currents(-5) })).toContain('to a service that is 5 A over already: 45 A too much');
    expect(said({ code: 'service-short', values: currents(10) })).toContain('to a service with 10 A to spare: 30 A too much');
  });
});

describe('a desuperheater', () => {
  const winter = (unmet: number) => ({
    winterEnergy: kilowattHours(1400),
    extraFromGround: kilowattHours(970),
    extraElectricEnergy: electricKilowattHours(430),
    extraUnmetEnergy: kilowattHours(unmet),
  });
  it('leaves nothing to auxiliary heat where it leaves nothing', () => {
    expect(said({ code: 'desuperheater-not-free', values: winter(0) })).not.toContain('auxiliary');
    expect(said({ code: 'desuperheater-not-free', values: winter(120) })).toContain('leaves 120 kWh of the heating to auxiliary heat');
  });
});

it('the doubtful hours of a season are told by what they change', () => {
  const values = { climate: 'warmer', crankcaseTime: hours(4476), expected: hours(5100), factor: ratio(0.9975) } as const;
  expect(said({ code: 'season-hours-doubtful', values })).toContain('the seasonal COP would be 0.25 % lower');
});

it('a year that costs more to run than it did is told without its sign', () => {
  expect(said({ code: 'savings-negative', values: { yearlySaving: money(-100) } })).toContain('It costs more to run: 100 more in the first year');
});

it('a set-back that asks too much is advised against in whole sentences', () => {
  const values = {
    capacity: kilowatts(9),
    steadyLoad: kilowatts(8),
    reheatLoad: kilowatts(14),
    unmetEnergy: kilowattHours(14),
    savedEnergy: kilowattHours(6),
  };
  expect(said({ code: 'setback-reheat-short', values })).toContain('to save 6 kWh. With a heat pump set back less');
});
