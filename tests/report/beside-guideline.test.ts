import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import { besideGuideline, type BesideGuidelineResult, type ComparedGuideline, planPage } from '../../src/report/index.js';
import { guidelineSoils } from '../../src/report/guideline-soils.js';
import { type HandbookSoil, type SampledSoil, type SoilSample, soilThermalProperties, type TextureClass } from '../../src/soil/index.js';
import { dryBasisPercent, fraction, kilogramsPerCubicMetre, massFraction, metres, type Time, wattsPerMetreKelvin } from '../../src/units/index.js';
import { planGrid } from '../plan/grid.js';

const demo: LoopInput = inputDocument().read(demoDocument);
const plan = planLoop(demo);
const made = (of: LoopPlan): ComparedGuideline & Pick<BesideGuidelineResult, 'findings'> => {
  const beside = besideGuideline(of);
  if (beside.comparison !== 'made') throw new Error(beside.comparison);
  return beside;
};

const [DRY, DAMP, WET] = ['dry non-cohesive', 'damp cohesive', 'water-saturated sand or gravel'] as const;
const classesOf = (sample: SoilSample): readonly string[] => guidelineSoils({ sample, properties: soilThermalProperties(sample) });
/** A soil of 1600 kg/m³ whose pores of 0.3962 are full to a share. */
const sampled = (texture: TextureClass, saturation: number, organic = 0): SampledSoil => ({
  from: 'sample',
  moisture: { basis: 'dry', value: dryBasisPercent((100 * (1 - 1600 / 2650) * saturation) / 1.6) },
  density: { from: 'core', dryDensity: kilogramsPerCubicMetre(1600) },
  texture: { from: 'laboratory', class: texture },
  particleDensity: kilogramsPerCubicMetre(2650),
  organicMatter: massFraction(organic),
});

describe('the class of a soil', () => {
  it.each<readonly [TextureClass, number, readonly string[]]>([
    ['sand', 0.1, [DRY]],
    ['sand', 0.98, [WET]],
    ['loamy sand', 0.1, [DRY]],
    ['clay', 0.6, [DAMP]],
    ['silt loam', 0.6, [DAMP]],
    ['loam', 0.98, [DAMP]],
    ['sandy clay loam', 0.4, [DAMP]],
    // Between: damp sand conducts better than heavy damp soil, sandy loam and clay nearly dry do not.
    ['sand', 0.5, [DAMP, WET]],
    ['sandy loam', 0.1, [DRY, DAMP]],
    ['clay', 0.1, [DRY, DAMP]],
  ])('%s with pores full to %f is %j', (texture, saturation, classes) => {
    expect(classesOf(sampled(texture, saturation))).toEqual(classes);
  });

  it.each<readonly [HandbookSoil['material'], HandbookSoil['state'], readonly string[]]>([
    ['gravel', 'dry', [DRY]],
    ['sand', 'dry', [DRY]],
    ['sand', 'saturated', [WET]],
    ['sand', 'moist', [DAMP, WET]],
    ['light sand', '5 % water', [DRY, DAMP]],
    ['clay', 'saturated', [DAMP]],
    ['heavy clay', '15 % water', [DAMP]],
    ['silt', 'dry', [DRY, DAMP]],
    ['loam', 'natural', [DAMP]],
    ['till', 'natural', [DAMP, WET]],
    ['peat', 'natural', []],
    ['peat', 'saturated', []],
  ])('%s, %s, is %j', (material, state, classes) => {
    expect(classesOf({ from: 'handbook', material, state })).toEqual(classes);
  });

  it('is by conductivity alone where nothing else is known, and none of organic soil', () => {
    const measured = (conductivity: number): readonly string[] =>
      classesOf({ from: 'laboratory', conductivity: wattsPerMetreKelvin(conductivity), standardError: fraction(0.1) });
    expect(measured(0.6)).toEqual([DRY, DAMP]);
    expect(measured(1.29)).toEqual([DRY, DAMP]);
    expect(measured(1.3)).toEqual([DAMP, WET]);
    expect(classesOf(sampled('loam', 0.6, 0.21))).toEqual([]);
    expect(classesOf(sampled('loam', 0.6, 0.19))).toEqual([DAMP]);
  });
});

describe('a plan beside the area guideline', () => {
  it('has the hours that hold the year, the heat of its own land, and the land, pipe and trench of the class', () => {
    const { fullLoadHours, heatPerLand, classes } = made(plan);
    const heat = plan.heating?.unit.performance.groundHeat ?? Number.NaN;
    expect((fullLoadHours * heat) / plan.byHours.heating.groundEnergy).toBeCloseTo(1, 12);
    expect((heatPerLand * plan.loop.land) / heat).toBeCloseTo(1, 12);
    expect(classes.map(({ soil }) => soil)).toEqual([DAMP]);
    for (const { typical, typicalArea, pipe, trench } of classes) {
      expect((typicalArea * typical) / heat).toBeCloseTo(1, 12);
      expect((0.8 * pipe) / typicalArea).toBeCloseTo(1, 12);
      expect((2 * trench) / pipe).toBeCloseTo(1, 12);
    }
  });

  it('asks for more pipe than a guideline that counts on ice, on a loam in a cold winter', () => {
    const [only] = made(plan).classes;
    const ratio = plan.loop.circuits.activePipe / (only?.pipe ?? Number.NaN);
    expect(ratio).toBeGreaterThan(1.2);
    expect(ratio).toBeLessThan(1.6);
  });

  it('reads the layers that pipes lie in, all of them, and below the log its last', () => {
    const [top, middle, bottom] = plan.soil.layers;
    if (top === undefined || middle === undefined || bottom === undefined) throw new Error('three layers');
    const of = (sample: SoilSample): LoopPlan['soil']['layers'][number] => ({ ...bottom, sample, properties: soilThermalProperties(sample) });
    const wet = of({ from: 'handbook', material: 'sand', state: 'saturated' });
    const peat = of({ from: 'handbook', material: 'peat', state: 'natural' });
    const overPipes = { ...peat, bottom: metres(0.5) };
    const soils = (...layers: LoopPlan['soil']['layers']): readonly string[] =>
      made({ ...plan, soil: { ...plan.soil, layers } }).classes.map(({ soil }) => soil);
    // Pipes at 1.4 and 2.0 m.
    expect(soils(overPipes, { ...middle, bottom: metres(1.7) }, wet)).toEqual([DAMP, WET]);
    expect(soils(overPipes, middle, wet)).toEqual([WET]);
    expect(soils({ ...wet, bottom: metres(1) })).toEqual([WET]);
    const onPeat = { ...plan, soil: { ...plan.soil, layers: [top, middle, peat] } };
    expect(besideGuideline(onPeat)).toEqual({ comparison: 'organic soil', findings: [] });
    expect(planPage(onPeat, 'us')).toMatch(/Not compared +The soil at the pipes is organic/);
  });

  it('is not made for a loop that hardly heats', () => {
    const { heating: _, ...cools } = plan;
    expect(besideGuideline(cools)).toEqual({ comparison: 'hardly heats', findings: [] });
    expect(planPage(cools, 'metric')).toMatch(/Not compared +The loop hardly heats/);
  });

  it('says where the hours lie beyond the guideline’s, on the page too', () => {
    const { fullLoadHours, findings, classes } = made(plan);
    expect(fullLoadHours).toBeGreaterThan(2400 * 3600);
    expect(findings.map(({ code }) => code)).toEqual(['guideline-hours-outside']);
    expect(classes[0]?.readAt).toBe((2400 * 3600) as Time);
    expect(planPage(plan, 'metric').replaceAll(/\s+/g, ' ')).toContain('it was read at 2400 h.');
  });

  it('is printed in the units of the reader, with why it looks small', () => {
    const flat = (system: 'metric' | 'us'): string => planPage(plan, system).replaceAll(/\s+/g, ' ');
    expect(flat('metric')).toMatch(/For damp cohesive soil 20\.0 W\/m² \(16\.0 W\/m² to 24\.0 W\/m²\), so 250 m² .* with 313 m of pipe/);
    expect(flat('us')).toMatch(/For damp cohesive soil 6\.3 Btu\/\(h·ft²\) .* so 2691 ft² .* with 1025 ft of pipe/);
    for (const system of ['metric', 'us'] as const) {
      expect(flat(system)).toContain('beside a loop without ice the guideline looks 30 to 40 % too small');
      expect(flat(system)).toContain('never to dig by');
    }
  });

  it('is made, or says why not, of every job of the grid; neighbours come in the order of what they yield', () => {
    const plans = planGrid().flatMap(({ outcome }) => ('loop' in outcome ? [outcome] : []));
    expect(plans.length).toBeGreaterThan(5);
    for (const each of plans) {
      const beside = besideGuideline(each);
      if (beside.comparison !== 'made') continue;
      const typical = beside.classes.map((allowed) => allowed.typical);
      expect(typical.length).toBeGreaterThan(0);
      expect(typical).toEqual([...typical].sort((a, b) => a - b));
      expect(planPage(each, 'us')).toContain('lies between its classes'.slice(0, beside.classes.length > 1 ? undefined : 0));
    }
  });
});
