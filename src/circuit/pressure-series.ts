import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import { thermalExpansion } from '../fluid/index.js';
import type { Band } from '../states/index.js';
import type { MassFraction, Temperature } from '../units/index.js';
import type { DecaySeries } from './decay-fit.js';
import type { PressureReading, PressureTest } from './evaluate-pressure-test.js';
import { boreCompliance, boreExpansion, demandExpansion, demandModulus, demandRing, MINUTES, WATER_COMPRESSIBILITY } from './wall-give.js';

/** Part of the time of loading for which the wall behaves as if it had been loaded already. */
const LOADING_SHARE = 0.4;
/** Standard errors on either side of limits of 90 %. */
const NINETY = 1.645;
/** Thirty days [s]. */
const LONGEST = 2_592_000;
/** Where the temperature was not read, that of the ground [degC]. */
const UNREAD = 10 as Temperature;

/** The readings of a test as they are fitted, and what a kelvin of warming does to the pressure in its pipe. */
export function pressureSeries(test: PressureTest): { readonly series: DecaySeries; readonly perKelvin: Band<'pressure'> } {
  const { readings, gaugeError, loadingTime = 0 } = test;
  demandCount('readings', readings, 6, 10_000);
  demand('gaugeError', 'pressure', gaugeError, { atLeast: 1, atMost: 1e5 });
  demand('loadingTime', 'time', loadingTime, { atLeast: 0, atMost: 86_400 });
  const [first] = readings;
  const read = first !== undefined && typeof first === 'object' && first?.temperature !== undefined;
  readings.forEach((reading, index) => {
    demandReading(reading, `readings.${String(index)}`, readings[index - 1]?.time ?? 0, read);
  });
  const times = readings.map(({ time }) => time + LOADING_SHARE * loadingTime);
  const last = times.at(-1) ?? 0;
  const start = times[0] ?? 0;
  if (last < 3 * start) {
    throw new InputError({
      code: 'impossible',
      argument: `readings.${String(readings.length - 1)}.time`,
      value: { kind: 'time', value: last },
      allowed: `at least three times the first, ${String(start)} s`,
      hint: 'creep and leak look alike for as long; read sooner after the pump is shut off, and longer',
    });
  }
  const temperatures = readings.map(({ temperature }) => temperature ?? UNREAD);
  const middle = temperatures.reduce((sum, each) => sum + each, 0) / temperatures.length;
  const perKelvin = pressurePerKelvin(test, middle);
  const origin = temperatures[0] ?? 0;
  return {
    perKelvin,
    series: {
      times,
      pressures: readings.map(({ pressure }) => pressure),
      warming: read ? temperatures.map((each) => each - origin) : undefined,
      gaugeError,
      perKelvin: { estimate: perKelvin.estimate, error: (perKelvin.high - perKelvin.low) / (2 * NINETY) + 1 },
    },
  };
}

function demandReading(reading: PressureReading, path: string, before: number, read: boolean): void {
  demandObject(path, reading);
  demand(`${path}.time`, 'time', reading.time, { above: before, atMost: LONGEST }, 'times rise from reading to reading');
  demand(`${path}.pressure`, 'pressure', reading.pressure, { atLeast: 1e4, atMost: 1e7 });
  if (reading.temperature === undefined && !read) return;
  // Absent in one reading and there in another: the absent one is named, or the first where that one is.
  demand(`${path}.temperature`, 'temperature', reading.temperature ?? Number.NaN, { atLeast: 0, atMost: 60 }, 'read it each time or never');
}

/** What a kelvin of warming does to the pressure of water shut into a pipe, with limits. */
function pressurePerKelvin(test: PressureTest, temperature: number): Band<'pressure'> {
  demandRing(test.pipe);
  const modulus = demandModulus(test.modulus, MINUTES);
  const expansion = demandExpansion(test.linearExpansion);
  const water = thermalExpansion({ fluid: 'water', massFraction: 0 as MassFraction, temperature: temperature as Temperature });
  const at = (alpha: number, young: number): number => (water - boreExpansion(alpha)) / (boreCompliance(test.pipe, young) + WATER_COMPRESSIBILITY);
  const corners = [expansion.low, expansion.high].flatMap((alpha) => [at(alpha, modulus.low), at(alpha, modulus.high)]);
  return {
    low: Math.min(...corners),
    estimate: at(expansion.estimate, modulus.estimate),
    high: Math.max(...corners),
    coverage: Math.min(expansion.coverage, modulus.coverage),
  } as Band<'pressure'>;
}
