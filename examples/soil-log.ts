// A soil log read down to the pipes, in metric and in US units: node scripts/run.mjs examples/soil-log.ts
import { describeFinding, show, type UnitSystem } from 'loamloop/report';
import {
  conductivityClass,
  contactGap,
  effectiveConductivity,
  layeredResponse,
  logResistanceConductivity,
  loosenedFill,
  soilThermalProperties,
  type EffectiveGroundResult,
  type LayeredGround,
  type SampledSoil,
  type SoilThermalPropertiesResult,
  type TextureClass,
} from 'loamloop/soil';
import type { Band, SoilThermal } from 'loamloop/states';
import {
  days,
  diameterInches,
  diameterMillimetres,
  dryBasisPercent,
  feet,
  inches,
  kilogramsPerCubicMetre,
  metres,
  squareMetresPerSecond,
  type Density,
  type Length,
} from 'loamloop/units';

/** A pushed core of each layer, weighed and dried; the texture by feel. */
const core = (texture: TextureClass, density: number, moisture: number): SampledSoil => ({
  from: 'sample',
  moisture: { basis: 'dry', value: dryBasisPercent(moisture) },
  density: { from: 'core', dryDensity: kilogramsPerCubicMetre(density) },
  texture: { from: 'feel', class: texture },
});
interface LoggedLayer {
  readonly top: Length;
  readonly bottom: Length;
  readonly sample: SampledSoil;
}
const LOG: readonly LoggedLayer[] = [
  { top: feet(0), bottom: feet(1), sample: core('loam', 1350, 12) },
  { top: feet(1), bottom: feet(4), sample: core('silty clay loam', 1450, 22) },
  { top: feet(4), bottom: feet(8), sample: core('sandy loam', 1650, 14) },
];
const known = LOG.map(({ top, bottom, sample }) => ({ top, bottom, sample, properties: soilThermalProperties(sample) }));

/** Two pipes on the floor of a trench two feet wide, with a hand's breadth of sand in reserve. */
const pipes = [
  { x: inches(-8), depth: feet(5) },
  { x: inches(8), depth: feet(5) },
];
const trench = { width: feet(2), depth: feet(5.6) };
const outsideDiameter = diameterInches(1.05);

/** Every layer at one end of its band: the error of judging a soil is much the same from layer to layer. */
type End = 'low' | 'estimate' | 'high';
const atEnd = ({ conductivity, thermal }: SoilThermalPropertiesResult, end: End): SoilThermal => ({
  conductivity: conductivity[end],
  heatCapacity: thermal.heatCapacity,
  diffusivity: squareMetresPerSecond(conductivity[end] / thermal.heatCapacity),
});
const layersAt = (end: End): LayeredGround['layers'] =>
  known.map(({ top, bottom, properties }) => ({ top, bottom, thermal: atEnd(properties, end) }));
const native = (end: End): LayeredGround => ({ layers: layersAt(end), pipes, outsideDiameter });
const bandOf = (at: (end: End) => EffectiveGroundResult): Band<'conductivity'> => {
  const [low, estimate, high] = [at('low'), at('estimate'), at('high')].map(({ thermal }) => thermal.conductivity);
  const { coverage } = soilThermalProperties(core('loam', 1350, 12)).conductivity;
  if (low === undefined || estimate === undefined || high === undefined) throw new Error('three ends of a band');
  return { low, estimate, high, coverage };
};

/** What was dug out of the middle layer goes back in looser; dry sand stands for bedding that has lost its water. */
const fill = loosenedFill({
  nativeDensity: kilogramsPerCubicMetre(1450),
  thermalAt: (dryDensity: Density) => soilThermalProperties(core('silty clay loam', dryDensity, 22)).thermal,
});
const sand = soilThermalProperties(core('sand', 1550, 1));
const bedding = { thickness: inches(4), thermal: sand.thermal };

const untouched = effectiveConductivity(native('estimate'));
const loosened = { ...native('estimate'), fill: { ...trench, thermal: fill.firstWinter.thermal } };
const firstWinter = effectiveConductivity(loosened);
const cases: readonly (readonly [name: string, ground: LayeredGround])[] = [
  ['native ground, no trench', native('estimate')],
  ['loosened fill, first winter', loosened],
  ['the same fill, settled', { ...native('estimate'), fill: { ...trench, thermal: fill.settled.thermal } }],
  ['first winter, pipes in dry sand', { ...loosened, bedding }],
];
const seen = bandOf((end) => effectiveConductivity(native(end)));
const classed = conductivityClass(seen);
const rule = logResistanceConductivity(native('estimate'));
const gap = contactGap({
  conductivity: seen,
  steadyRise: untouched.steadyRise,
  outsideDiameter,
  gap: diameterMillimetres(0.25),
});

function page(system: UnitSystem): readonly string[] {
  const write = show(system);
  const band = ({ low, estimate, high, coverage }: Band<'conductivity'>): string =>
    `${write('conductivity', estimate)}, ${write('fraction', coverage)} sure between ${write('conductivity', low)} and ${write('conductivity', high)}`;
  const line = (name: string, text: string): string => `  ${name.padEnd(34)}${text}`;
  return [
    `Soil log, ${system === 'us' ? 'US' : 'metric'} units`,
    ...known.map(({ top, bottom, sample, properties }) =>
      line(`${write('length', top)} to ${write('length', bottom)}, ${sample.texture.class}`, band(properties.conductivity)),
    ),
    `Two pipes at ${write('length', metres(1.524))}, as if no trench had been dug`,
    line('summed over the layers', band(seen)),
    line('by the rule of logarithms', `${write('conductivity', rule.conductivity)}, in trials at most ${write('fraction', rule.worstError)} off`),
    line('called', `${classed.class}, between ${classed.lowClass} and ${classed.highClass}`),
    line('low end with a gap of air', write('conductivity', gap.conductivity.low)),
    'What fill and bedding do',
    ...cases.map(([name, ground]) => {
      const { thermal, addedResistance } = effectiveConductivity(ground);
      const month = layeredResponse(ground).riseAfter(days(30));
      return line(
        name,
        `${write('conductivity', thermal.conductivity)} in the long run; resists with ${write('pipe resistance', month)} after a month, ` +
          `${write('pipe resistance', addedResistance)} of it fill and bedding`,
      );
    }),
    'To be said',
    ...[
      ...untouched.findings,
      ...rule.findings,
      ...classed.findings,
      ...fill.findings,
      ...firstWinter.findings.filter(({ code }) => code === 'trench-fill-around-pipes'),
    ].map((finding) => `  - ${describeFinding(finding, system)}`),
    '',
  ];
}

console.log([...page('metric'), ...page('us')].join('\n'));
