import { describe, expect, it } from 'vitest';
import { describeFinding } from '../../src/report/index.js';
import { celsius, days, fraction, kelvinDifference, kilowattHours, kilowatts, ratio } from '../../src/units/index.js';

const offsets = (meanOffset: number, low: number, high: number, lag: number): string =>
  describeFinding(
    {
      code: 'surface-offsets-assumed',
      level: 'note',
      values: {
        meanOffset: kelvinDifference(meanOffset),
        meanOffsetLow: kelvinDifference(low),
        meanOffsetHigh: kelvinDifference(high),
        amplitudeRatio: ratio(0.9),
        lag: days(lag),
      },
      source: 'common practice',
    },
    'metric',
  );

describe('offsets of the surface', () => {
  it('have the sign they have', () => {
    expect(offsets(0, -1, 1, 3)).toContain('0.0 K from that of the air (−1.0 K to +1.0 K)');
    expect(offsets(0.5, 0.04, 1, 3)).toContain('+0.5 K from that of the air (0.0 K to +1.0 K)');
  });

  it('say earlier, later and a single day', () => {
    expect(offsets(0, -1, 1, 3)).toContain('coldest day is 3 days later');
    expect(offsets(0, -1, 1, -1)).toContain('coldest day is 1 day earlier');
  });
});

describe('a usual winter', () => {
  it('says what to change in the input', () => {
    const values = { winterSpread: kelvinDifference(2) };
    const text = describeFinding({ code: 'no-cold-winter-used', level: 'warning', values, source: 'climateReferenceNetwork' }, 'metric');
    expect(text).toContain('ask for a design winter, or give colder months');
  });
});

describe('a unit short of capacity', () => {
  it.each([
    ['heating', 'Below −8.8 °C outdoors'],
    ['cooling', 'Above −8.8 °C outdoors'],
  ] as const)('in %s says on which side', (mode, said) => {
    const values = {
      mode,
      capacity: kilowatts(7),
      designLoad: kilowatts(9),
      capacityBalancePoint: celsius(-8.8),
      unmetEnergy: kilowattHours(276),
      unmetLow: kilowattHours(221),
      unmetHigh: kilowattHours(368),
      coveredShare: fraction(0.99),
    };
    expect(describeFinding({ code: 'capacity-short', level: 'note', values, source: 'common practice' }, 'metric')).toContain(said);
  });

  it('by less than is printed is not said to make all', () => {
    const values = {
      mode: 'heating',
      capacity: kilowatts(7.599),
      designLoad: kilowatts(7.6),
      capacityBalancePoint: celsius(-14),
      unmetEnergy: kilowattHours(0.01),
      unmetLow: kilowattHours(0.008),
      unmetHigh: kilowattHours(0.013),
      coveredShare: fraction(0.999999),
    } as const;
    const text = describeFinding({ code: 'capacity-short', level: 'note', values, source: 'common practice' }, 'us');
    expect(text).toContain('makes 25,929 Btu/h of the 25,932 Btu/h that heating');
    const metric = describeFinding({ code: 'capacity-short', level: 'note', values, source: 'common practice' }, 'metric');
    expect(metric).toContain('makes just less than the 7.60 kW that heating');
    expect(metric).toContain('it covers over 99 %.');
  });
});
