import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { monthDay, monthName } from '../../src/report/month-day.js';
import { PEOPLE } from '../../src/report/people.data.js';
import { show } from '../../src/report/index.js';
import { showParts } from '../../src/report/show.js';
import { factor, type Kind, KINDS } from '../../src/units/index.js';

const KIND_NAMES = Object.keys(KINDS) as Kind[];
const SYSTEMS = ['metric', 'us'] as const;
const written = KIND_NAMES.filter((kind) => kind !== 'day of year' && kind !== 'time').flatMap((kind) => SYSTEMS.map((system) => ({ kind, system })));

describe('every kind in every system', () => {
  it.each(written)('$kind in $system units is a number with its unit', ({ kind, system }) => {
    const { spelled, decimals, unit } = PEOPLE[kind][system];
    expect(factor(kind, unit)).toBeDefined();
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (value) => {
        const text = show(system)(kind, value);
        const digits = spelled === '' ? text : text.slice(0, -spelled.length - 1);
        expect(text).toBe(spelled === '' ? digits : `${digits} ${spelled}`);
        expect(digits.replaceAll(/(?<=\d)[,\u00A0](?=\d{3})/g, '')).toMatch(
          decimals === 0 ? /^−?\d+$/ : new RegExp(`^−?\\d+\\.\\d{${String(decimals)}}$`),
        );
      }),
      { numRuns: 20 },
    );
  });

  it.each(written)('$kind in $system units is within half of its last digit', ({ kind, system }) => {
    const { unit, decimals } = PEOPLE[kind][system];
    const [numerator = NaN, denominator = 1, added = 0] = (factor(kind, unit) ?? []).map(Number);
    const half = 0.5 * 10 ** -decimals;
    for (const inUnit of [0, 1, 7.25, -3.5, 1234.5678]) {
      const value = ((inUnit + added) * numerator) / denominator;
      const shown = Number(
        show(system)(kind, value)
          .split(' ')[0]
          ?.replace('−', '-')
          .replaceAll(/[,\u00A0]/g, ''),
      );
      expect(Math.abs(shown - inUnit)).toBeLessThanOrEqual(half * (1 + 1e-6));
    }
  });

  it('has no metric unit for a reader of US units, and the other way round', () => {
    // Electricity is sold by the kilowatt everywhere.
    const sold = new Set<string>(['power price']);
    const spelledIn = (system: 'metric' | 'us'): string[] => KIND_NAMES.filter((kind) => !sold.has(kind)).map((kind) => PEOPLE[kind][system].spelled);
    expect(spelledIn('us').filter((text) => /\bm\b|m[²³]|mm|°C|\bK\b|Pa|\bL\b|kg|kW(?!h)|MJ|\bJ\b|W\/m/.test(text))).toEqual([]);
    expect(spelledIn('metric').filter((text) => /\bft\b|°F|Btu|psi|gal|gpm|\bin\b|lb|ton/.test(text))).toEqual([]);
  });

  it('does not write a minus before nothing', () => {
    for (const { kind, system } of written) {
      for (const value of [-0, -1e-12]) expect(show(system)(kind, value)).not.toMatch(/^−0(\.0+)?( |$)/);
    }
  });
});

describe('conversions by the definitions of the units', () => {
  // Exact by definition: foot 0.3048 m, gallon 231 in³, pound 0.45359237 kg, g 9.80665 m/s²; Btu 1055.05585262 J, ton 12 000 Btu/h.
  const FOOT = 0.3048;
  const BTU = 1055.05585262;
  const TON = (12_000 * BTU) / 3600;
  const GPM = (231 * 0.0254 ** 3) / 60;
  const POUND = 0.45359237;
  const PER_DEGREE = BTU / (5 / 9);
  const rows: readonly (readonly [Kind, number, string])[] = [
    ['length', 6 * FOOT, '6.0 ft'],
    ['pipe length', 600 * FOOT, '600 ft'],
    ['diameter', 0.0254, '1.000 in'],
    ['area', FOOT ** 2 * 50, '50 ft²'],
    ['volume', GPM * 60 * 30, '30.0 gal'],
    ['mass', POUND * 2, '2.0 lb'],
    ['temperature', 0, '32.0 °F'],
    ['temperature', -40, '−40.0 °F'],
    ['temperature difference', 10, '18.0 °F'],
    ['energy', BTU * 1e6, '1.0 million Btu'],
    ['power', TON, '12,000 Btu/h'],
    ['conductivity', PER_DEGREE / 3600 / FOOT, '1.00 Btu/(h·ft·°F)'],
    ['diffusivity', FOOT ** 2 / 86_400, '1.00 ft²/day'],
    ['heat capacity', (30 * PER_DEGREE) / FOOT ** 3, '30.0 Btu/(ft³·°F)'],
    ['specific heat', PER_DEGREE / POUND, '1.000 Btu/(lb·°F)'],
    ['density', (100 * POUND) / FOOT ** 3, '100 lb/ft³'],
    ['heat per pipe length', (12 * BTU) / 3600 / FOOT, '12.0 Btu/(h·ft)'],
    ['pipe resistance', (3600 * FOOT) / PER_DEGREE, '1.000 h·ft·°F/Btu'],
    ['pressure', (POUND * 9.80665) / 0.0254 ** 2, '1.0 psi'],
    ['head', FOOT * 20, '20.0 ft of head'],
    ['flow', GPM * 8, '8.0 gpm'],
    ['flow per power', (GPM * 3) / TON, '3.0 gpm per ton'],
    ['length per power', (500 * FOOT) / TON, '500 ft per ton'],
    ['velocity', FOOT * 2, '2.0 ft/s'],
  ];

  it.each(rows)('%s %d is %s', (kind, value, text) => {
    expect(show('us')(kind, value)).toBe(text);
  });
});

describe('digits', () => {
  it('are grouped from five on, not before and not behind the point', () => {
    const power = show('metric');
    expect([1234, 12_345, 1_234_567, -12_345].map((watts) => power('electric power', watts))).toEqual([
      '1234 W',
      '12\u00A0345 W',
      '1\u00A0234\u00A0567 W',
      '−12\u00A0345 W',
    ]);
    expect(show('us')('electric energy', 2_351_161_559 * 3.6e6)).toBe('2,351,161,559 kWh');
    expect(show('metric')('temperature', 123_456.7)).toBe('123\u00A0456.7 °C');
    expect(show('metric')('pipe resistance', 0.12345)).toBe('0.123 m·K/W');
  });
});

describe('parts of a total', () => {
  const tenths = (text: string): number =>
    Math.round(
      Number(
        text
          .split(' ')[0]
          ?.replace('−', '-')
          .replaceAll(/[,\u00A0]/g, ''),
      ) * 10,
    );

  it.each(SYSTEMS)('add up as printed in %s units, each within its last digit', (system) => {
    const part = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const total = parts.reduce((sum, each) => sum + each, 0);
        const texts = showParts(system)('temperature difference', parts, total);
        expect(texts.map(tenths).reduce((sum, each) => sum + each, 0)).toBe(tenths(show(system)('temperature difference', total)));
        for (const [index, text] of texts.entries()) {
          const exact = (parts[index] ?? NaN) * (system === 'us' ? 18 : 10);
          expect(Math.abs(tenths(text) - exact)).toBeLessThanOrEqual(1 + 1e-9);
        }
      }),
    );
  });

  it('are refused when they are no numbers', () => {
    for (const wrong of [NaN, Infinity]) {
      expect(() => showParts('us')('temperature difference', [1, wrong], 2)).toThrow(/^value: /);
      expect(() => showParts('us')('temperature difference', [1, 1], wrong)).toThrow(/^value: /);
    }
  });
});

describe('times', () => {
  it.each(SYSTEMS)('are minutes below two hours, then hours with a tenth where they are not whole, in %s units', (system) => {
    const minutes = [0, 1, 30, 119, 120, 122, 150, -30, -150, 1440, 5 * 1440, 2977.3 * 60].map((each) => show(system)('time', 60 * each));
    expect(minutes).toEqual(['0 min', '1 min', '30 min', '119 min', '2 h', '2 h', '2.5 h', '−30 min', '−2.5 h', '24 h', '120 h', '2977 h']);
  });

  it('are right to half a minute, three minutes or half an hour', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 4e6, noNaN: true }), (time) => {
        const [number = '', unit] = show('us')('time', time).split(' ');
        const shown = Number(number.replaceAll(',', '')) * (unit === 'min' ? 60 : 3600);
        expect(Math.abs(shown - time)).toBeLessThanOrEqual((time < 7200 ? 30 : time < 360_000 ? 180 : 1800) + 1e-6);
      }),
    );
  });
});

describe('dates', () => {
  it.each(SYSTEMS)('are the same in %s units, and every day of the year has its own', (system) => {
    const days = Array.from({ length: 365 }, (_, index) => show(system)('day of year', index + 1));
    expect(new Set(days).size).toBe(365);
    expect([days[0], days[31], days[58], days[59], days[364]]).toEqual(['1 January', '1 February', '28 February', '1 March', '31 December']);
  });

  it('agree with the calendar of a common year', () => {
    for (let day = 1; day <= 365; day += 1) {
      const date = new Date(Date.UTC(2023, 0, day));
      expect(monthDay(day)).toBe(`${String(date.getUTCDate())} ${monthName(date.getUTCMonth() + 1)}`);
    }
    expect([monthDay(0), monthDay(-364), monthDay(730.5)]).toEqual(['31 December', '1 January', '31 December']);
  });
});

describe('refusals', () => {
  it.each(KIND_NAMES)('%s that is not a number is not written', (kind) => {
    for (const value of [NaN, Infinity, -Infinity]) expect(() => show('us')(kind, value)).toThrow(/^value: .* is not allowed/);
  });

  it('another unit system is refused by name', () => {
    expect(() => show('imperial' as never)).toThrow(/^system: imperial is not allowed/);
  });
});
