// Ground temperature through the year, in a usual one and after one winter in ten, in metric and in US units: node scripts/run.mjs examples/ground-temperature.ts
import { designWinter, groundTemperature, groundTemperatureRange, groundTemperatureSpread, groundWave } from 'loamloop/climate';
import { describeFinding, show, type UnitSystem } from 'loamloop/report';
import { dayOfYear, days, fahrenheit, feet, squareFeetPerDay } from 'loamloop/units';

/** Normals of a place in the Middle West as its weather service prints them. */
const monthlyMeans = [24, 29, 41, 53, 63, 73, 77, 75, 66, 54, 41, 28].map((mean) => fahrenheit(mean));
const diffusivity = squareFeetPerDay(0.5);
const depths = [feet(2), feet(4), feet(6), feet(8)];
const dates = [
  { name: '15 January', day: dayOfYear(15.5) },
  { name: '15 March', day: dayOfYear(74.5) },
  { name: '15 July', day: dayOfYear(196.5) },
  { name: '15 October', day: dayOfYear(288.5) },
];

const usual = groundWave({ from: 'monthly-air', monthlyMeans, cover: 'grass' });
const winter = designWinter({ monthlyMeans, returnPeriod: 10, wave: usual.wave });
const hard = winter.wave ?? usual.wave;

function page(system: UnitSystem): readonly string[] {
  const write = show(system);
  const line = (name: string, cells: readonly string[]): string => `  ${name.padEnd(12)}${cells.map((cell) => cell.padStart(13)).join('')}`;
  return [
    `Ground temperature, ${system === 'us' ? 'US' : 'metric'} units`,
    `  surface ${write('temperature', usual.wave.mean)} on the mean, ${write('temperature difference', usual.wave.amplitude)} to either side`,
    line(
      'usual year',
      depths.map((depth) => write('length', depth)),
    ),
    ...dates.map(({ name, day }) =>
      line(
        name,
        depths.map((depth) => write('temperature', groundTemperature({ wave: usual.wave, diffusivity, depth, day }))),
      ),
    ),
    ...[
      { name: 'coldest', wave: usual.wave },
      { name: 'one in ten', wave: hard },
    ].map(({ name, wave }) =>
      line(
        name,
        depths.map((depth) => write('temperature', groundTemperatureRange({ wave, diffusivity, depth }).lowest)),
      ),
    ),
    line(
      'strays by',
      depths.map((depth) => write('temperature difference', groundTemperatureSpread({ depth, averagingTime: days(30), diffusivity }).allowance)),
    ),
    `One winter in ten: three months ${write('temperature difference', winter.departure)} colder than usual`,
    `  coldest five days ${write('temperature', winter.madeDays.fiveDays)}, thirty ${write('temperature', winter.madeDays.thirtyDays)}, ninety ${write('temperature', winter.madeDays.ninetyDays)}`,
    'To be said',
    ...[...usual.findings.filter(({ code }) => code !== 'no-cold-winter-used'), ...winter.findings].map(
      (finding) => `  - ${describeFinding(finding, system)}`,
    ),
    '',
  ];
}

console.log([...page('metric'), ...page('us')].join('\n'));
