import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import { describeAssumption, describeFinding, planPage, type UnitSystem } from '../../src/report/index.js';
import { REFERENCES } from '../../src/references/index.js';
import { type Fraction, kilowattHours } from '../../src/units/index.js';
import { PLANTS } from '../bad-input/plan-plants.js';
import { planGrid } from '../plan/grid.js';
import { FOREIGN } from './foreign.js';

const demo: LoopInput = inputDocument().read(demoDocument);
const { cooling: _, ...heatingHouse } = demo.building;
const { coilLengths } = demo.circuits;
const feet = inputDocument().read({
  ...demoDocument,
  name: 'in inches',
  pipe: { series: 'IPS', size: '3/4', dimensionRatio: '11' },
  header: { series: 'IPS', size: '1-1/4', dimensionRatio: '11' },
});

/** The demo, the grid, and jobs that end in stops and warnings, so that most texts of a page are seen. */
const plans: readonly LoopPlan[] = [
  planLoop(demo),
  planLoop(feet),
  planLoop({ ...demo, name: 'heats only', building: heatingHouse }),
  planLoop({ ...demo, name: 'too small', field: { ...demo.field, mostTrenches: 1 } }),
  planLoop({ ...demo, name: 'one circuit in two trenches', circuits: { coilLengths, trenchesPerCircuit: 2 } }),
  ...PLANTS.map((job, index) => planLoop({ ...job, name: `plant ${String(index)}` })),
  ...planGrid().flatMap(({ outcome }) => ('loop' in outcome ? [outcome] : [])),
];
const cases = plans.flatMap((plan) => (['metric', 'us'] as const).map((system) => ({ name: plan.name, plan, system })));

/** Safety notices give measures in both systems and works are cited in their own, so both are left out where units are looked for. */
const withoutNotices = (plan: LoopPlan, system: UnitSystem): string => planPage({ ...plan, notices: [], sources: [] }, system);
const flatten = (text: string): string => text.replaceAll(/\s+/g, ' ');

describe.each(cases)('page of $name in $system units', ({ plan, system }) => {
  const page = planPage(plan, system);

  it('has no line over 96 characters and nothing that is not text', () => {
    expect(page.split('\n').filter((line) => line.length > 96)).toEqual([]);
    expect(page).not.toMatch(/NaN|undefined|null|Infinity|\[object|\{|\}|\$/);
    expect(page).not.toMatch(/ \n| $/);
  });

  it('has the units of its reader alone', () => {
    const nominal = plan.pipe.series === 'metric' ? `${plan.pipe.size} mm polyethylene` : `${plan.pipe.size} in`;
    const bare = withoutNotices(plan, system).replaceAll(/\s+/g, ' ').replace(nominal, 'pipe');
    expect(bare.match(FOREIGN[system])).toBeNull();
    // The pattern sees something: the page of the other reader is full of it.
    expect(bare.match(FOREIGN[system === 'us' ? 'metric' : 'us'])?.length).toBeGreaterThan(20);
  });

  it('says every finding, assumption and notice in full, stops first', () => {
    const flat = page.replaceAll(/\s+/g, ' ');
    const shown = (text: string): number => flat.indexOf(text.replaceAll(/\s+/g, ' '));
    for (const finding of plan.findings) expect([finding.code, shown(describeFinding(finding, system))]).not.toEqual([finding.code, -1]);
    for (const assumption of plan.assumptions)
      expect([assumption.code, shown(describeAssumption(assumption, system))]).not.toEqual([assumption.code, -1]);
    for (const { code, text } of plan.notices) expect([code, shown(text)]).not.toEqual([code, -1]);
    const places = (level: string): number[] => plan.findings.flatMap((f) => (f.level === level ? [shown(describeFinding(f, system))] : []));
    expect(Math.max(...places('stop'), -1)).toBeLessThan(Math.min(...places('warning'), ...places('note'), page.length));
  });

  it('names the trenches and the coils to buy', () => {
    const { trenches, circuits } = plan.loop.circuits;
    expect(page).toMatch(new RegExp(`Trenches +${String(trenches)} trench(es)? of `));
    expect(page.replaceAll(/\s+/g, ' ')).toMatch(new RegExp(`${String(circuits)} coils? of \\d+ (m|ft),`));
  });
});

describe.each(cases)('what the page of $name in $system units says of itself', ({ plan, system }) => {
  const page = planPage(plan, system);
  const flat = flatten(page);
  const tooSmall = plan.findings.some(({ code }) => code === 'field-too-small');

  it('puts what forbids building before what to build', () => {
    const stops = plan.findings.filter(({ level }) => level === 'stop');
    const built = page.search(/^(What to build|The most that fits, which is not enough)$/m);
    expect(built).toBeGreaterThan(0);
    expect(page.includes('Do not build this as it stands')).toBe(stops.length > 0);
    const before = flatten(page.slice(0, built));
    for (const stop of stops) expect(before).toContain(`STOP: ${flatten(describeFinding(stop, system))}`);
    expect(flatten(page.slice(built))).not.toContain('STOP:');
  });

  it('calls a loop that is too small what it is', () => {
    expect(page.includes('\nWhat to build\n')).toBe(!tooSmall);
    expect(/^ {2}Short by +\d+ (?:m|ft), \d+ % of the estimate;/m.test(page)).toBe(tooSmall);
    expect(/^ {2}Spare /m.test(page)).toBe(!tooSmall);
    expect(page).not.toMatch(/Spare +−/);
    if (tooSmall) expect(page).not.toContain('One size smaller');
    expect(flat).not.toMatch(/\b1 (trenches|coils|days)\b|\b1 coil of [^;]*each/);
  });

  it('never calls a year covered when something is missing', () => {
    for (const mode of [plan.heating, plan.cooling])
      if (mode !== undefined && mode.run.coveredShare < 1) expect(flat).not.toContain(`covers 100 % of the year’s ${mode.unit.mode}`);
    for (const finding of plan.findings) if (finding.code === 'capacity-short') expect(describeFinding(finding, system)).not.toContain('100 %');
  });

  it('spends the margin in parts that add up as printed', () => {
    const number = (text: string | undefined): number => Math.round(Number(text) * 10);
    const parts = [
      ...flat.matchAll(/with ([\d.]+) \S+ between .*? so far ([\d.]+) \S+, the unbroken running ([\d.]+) \S+, pipe and film ([\d.]+) /g),
    ];
    expect(parts.length).toBe([plan.heating, plan.cooling].filter((mode) => mode !== undefined).length);
    for (const [, margin, months, peak, pipe] of parts) expect(number(months) + number(peak) + number(pipe)).toBe(number(margin));
  });

  it('cites every source it rests on, and how it was seen', () => {
    const sources = flatten(page.slice(page.indexOf('\nSources\n')));
    expect(plan.sources.length).toBeGreaterThan(3);
    for (const source of plan.sources) expect(sources).toMatch(source === 'common practice' ? /Common practice/ : /\((seen in|as quoted|recalled)/);
    for (const source of plan.sources) if (source !== 'common practice') expect(sources).toContain(`${flatten(REFERENCES[source].cite)} (`);
  });
});

describe('a page', () => {
  const plan = planLoop(demo);

  it('keeps a long title, of many words or of one, inside its width', () => {
    for (const name of ['a long name '.repeat(30).trim(), 'x'.repeat(300)]) {
      const [title = ''] = planPage({ ...plan, name }, 'us').split('\n\n');
      expect(title.split('\n').every((line) => line.length <= 96)).toBe(true);
      expect(title.replaceAll('\n', name.includes(' ') ? ' ' : '')).toBe(name.toUpperCase());
    }
  });

  it('says of each layout how its pipes lie', () => {
    const six = { type: 'six-pipe', upperDepth: '1.2 m', middleDepth: '1.6 m', lowerDepth: '2 m', spacing: '0.6 m', trenchSpacing: '4 m' };
    const page = planPage(planLoop(inputDocument().read({ ...demoDocument, field: { ...demoDocument.field, layout: six } })), 'metric');
    expect(page).toContain('six pipes, three layers of two, at 1.20 m and 1.60 m and 2.00 m');
  });

  it('says that a unit nearly as large as the load leaves next to nothing', () => {
    const heating = { ...demoDocument.building.heating, designLoad: '7.6 kW' };
    const nearly = planLoop(inputDocument().read({ ...demoDocument, building: { ...demoDocument.building, heating } }));
    const short = nearly.findings.find(({ code }) => code === 'capacity-short');
    if (short === undefined) throw new Error('the unit is a little short');
    expect(nearly.heating?.run.coveredShare).toBeLessThan(1);
    for (const system of ['metric', 'us'] as const) {
      expect(describeFinding(short, system)).toContain('leaves less than half a per cent of the year’s heating to other heat; it covers over 99 %.');
      expect(flatten(planPage(nearly, system))).toContain('covers over 99 % of the year’s heating');
    }
  });

  it('prints no upper end where no pipe keeps the limit at an end of the soil’s band', () => {
    const values = { end: 'high', conductivity: plan.soil.conductivity.high } as const;
    const open = planPage({ ...plan, findings: [{ code: 'band-end-unreachable', level: 'warning', values, source: 'common practice' }] }, 'metric');
    expect(flatten(open)).toMatch(/Needed \d+ m; between \d+ m and more than any pipe gives as far as/);
    expect(flatten(planPage(plan, 'metric'))).toMatch(/Needed \d+ m; between \d+ m and \d+ m as far as/);
  });

  it('groups the digits of large numbers', () => {
    const heating = plan.heating;
    if (heating === undefined) throw new Error('the demo heats');
    const run = { ...heating.run, coveredShare: 0.5 as Fraction, unmetEnergy: kilowattHours(2_351_161_559) };
    expect(planPage({ ...plan, heating: { ...heating, run } }, 'metric')).toContain('2\u00A0351\u00A0161\u00A0559 kWh');
  });

  it('says of the pump and the filling what the plan holds', () => {
    const flat = flatten(planPage(plan, 'metric'));
    expect(flat).toContain('the heat pump’s own water side comes on top');
    expect(flat).toMatch(/of antifreeze and \d+ L of water for about \d+ L in the pipes \(the mixture shrinks\)/);
  });
});

describe('assumptions', () => {
  it('say their value in the units of the reader', () => {
    const lead = { code: 'lead-length', assumed: { kind: 'pipe length', value: 6.096 }, source: 'common practice' } as const;
    expect(describeAssumption(lead, 'metric')).toContain(' 6 m ');
    expect(describeAssumption(lead, 'us')).toContain(' 20 ft ');
    const spell = { code: 'cold-spell', assumed: { kind: 'time', value: 72 * 3600 }, source: 'common practice' } as const;
    expect(describeAssumption(spell, 'us')).toContain('72 h');
  });
});
