import { describe, expect, it } from 'vitest';
import { inputDocument } from '../../src/document/index.js';
import { InputError } from '../../src/errors/index.js';
import { type LoopPlan, planLoop } from '../../src/plan/index.js';
import { cellDocument, planGrid } from './grid.js';
import { CLIMATES, SOILS, UNIT } from './grid.data.js';

const cells = planGrid();
const planOf = (soil: string, climate: string): LoopPlan => {
  const outcome = cells.find((cell) => cell.soil.name === soil && cell.climate.name === climate)?.outcome;
  if (outcome === undefined || outcome instanceof InputError) throw new Error(`no plan for ${soil} in ${climate}: ${String(outcome?.message)}`);
  return outcome;
};
const neededIn = (soil: string, climate: string): number => planOf(soil, climate).loop.needed.estimate;
const [clay, loam, sand] = SOILS;
const [continental, temperate, subtropical] = CLIMATES;

describe('every cell of the grid', () => {
  it('is reached: in all nine the unit’s limits lie beyond the ground', () => {
    // The coldest ground at the pipes is above 3 °C and the warmest below 22 °C, the mean design fluids are near −4 °C and 34 °C.
    const refused = cells.flatMap(({ soil, climate, outcome }) => (outcome instanceof InputError ? [`${soil.name}, ${climate.name}`] : []));
    expect(refused).toEqual([]);
  });

  it.each(cells)('$soil.name, $climate.name: enough, and one trench fewer is not', ({ input, soil, climate }) => {
    const { loop, findings } = planOf(soil.name, climate.name);
    expect(loop.circuits.activePipe).toBeGreaterThanOrEqual(loop.needed.estimate);
    expect(findings.map(({ code }) => code)).not.toContain('field-too-small');
    expect(loop.nextSmaller?.enough).toBe(false);
    expect(loop.nextSmaller?.pipe).toBeLessThan(loop.nextSmaller?.needed ?? 0);
    const smaller = planLoop({ ...input, field: { ...input.field, mostTrenches: loop.circuits.trenches - 1 } });
    expect(smaller.loop.circuits.activePipe).toBeLessThan(smaller.loop.needed.estimate);
    expect(smaller.findings.map(({ code }) => code)).toContain('field-too-small');
  });

  it.each(cells)('$soil.name, $climate.name: whole coils fill whole trenches that fit', ({ input, soil, climate }) => {
    const { circuits, trench, layout, heatPerPipeLength, pipePerGroundHeat } = planOf(soil.name, climate.name).loop;
    expect(input.circuits.coilLengths).toContain(circuits.coilLength);
    expect(circuits.trenchLength).toBeLessThanOrEqual(input.field.longestTrench);
    expect(circuits.activePipe).toBeCloseTo(circuits.circuits * circuits.coilLength, 9);
    expect(trench * layout.pipesPerTrench).toBeCloseTo(circuits.activePipe, 9);
    expect(heatPerPipeLength).toBeGreaterThan(0);
    expect(heatPerPipeLength * pipePerGroundHeat).toBeCloseTo(1, 12);
  });

  it.each(cells)('$soil.name, $climate.name: each mode closes its own balance', ({ soil, climate }) => {
    const plan = planOf(soil.name, climate.name);
    for (const result of [plan.heating, plan.cooling]) {
      if (result === undefined) throw new Error('a house with a load in both modes has both');
      const { unit, needed, resistance } = result;
      const { monthly } = needed;
      const { capacity, power, groundHeat } = unit.performance;
      const sign = unit.mode === 'heating' ? -1 : 1;
      expect(groundHeat).toBeCloseTo(capacity + sign * power, 6);
      // Film and wall take heat per metre times their resistance; the three parts use up the margin and nothing is left over.
      expect(monthly.spent.pipe).toBeCloseTo((groundHeat / monthly.pipe) * resistance.total, 9);
      expect(monthly.spent.months + monthly.spent.peak + monthly.spent.pipe).toBeCloseTo(monthly.margin, 9);
      // The month that binds meets its own ground, which is never beyond the extreme of the year.
      const { lowest, highest } = plan.ground.pipes;
      const extreme = unit.mode === 'heating' ? lowest - unit.fluid.mean : unit.fluid.mean - highest;
      expect(monthly.margin).toBeGreaterThanOrEqual(extreme - 1e-9);
      expect(monthly.firstYear).toBeLessThanOrEqual(monthly.pipe);
    }
  });

  it.each(cells)('$soil.name, $climate.name: the limits of the unit are kept', ({ soil, climate }) => {
    const { heating, cooling, fluid } = planOf(soil.name, climate.name);
    const limit = (text: string): number => Number(text.split(' ')[0]);
    expect(heating?.unit.fluid.entering).toBeGreaterThanOrEqual(limit(UNIT.lowestEntering));
    expect(heating?.unit.fluid.leaving).toBeGreaterThanOrEqual(limit(UNIT.lowestLeaving) - 1e-9);
    expect(cooling?.unit.fluid.entering).toBe(limit(UNIT.highestEntering));
    expect(fluid.freezingPoint).toBeLessThan(limit(UNIT.lowestLeaving));
  });

  /**
   * The handbook equation gives the design month its run fraction F throughout and no spell: R = Rp + F · Rs(1 year). The plan adds full load
   * at the month's end, (1 − F) · Rs(spell), at most half as much again with a spell that reaches a quarter of the yearly response and F above
   * a third; and it meets the ground of the month that binds in place of the coldest or warmest, and the milder months before it: together
   * not more than a tenth shorter.
   */
  it.each(cells)('$soil.name, $climate.name: plan over handbook between 0.9 and 1.5 in the mode that governs', ({ soil, climate }) => {
    const plan = planOf(soil.name, climate.name);
    const { ratioToHandbook, monthly, handbookMeanFluid } = plan[plan.governing]?.needed ?? {};
    expect(ratioToHandbook).toBeGreaterThan(0.9);
    expect(ratioToHandbook).toBeLessThan(1.5);
    expect(ratioToHandbook).toBeCloseTo((monthly?.pipe ?? 0) / (handbookMeanFluid?.pipe ?? 0), 12);
  });
});

describe('from cell to cell', () => {
  it.each(CLIMATES)('dry sand asks for the most pipe in $name', ({ name }) => {
    expect(neededIn(sand.name, name)).toBeGreaterThan(neededIn(clay.name, name));
    expect(neededIn(sand.name, name)).toBeGreaterThan(neededIn(loam.name, name));
  });

  it.each(cells)('$soil.name, $climate.name: the same soil at half the water never asks for less', ({ soil, climate, input }) => {
    // Drier soil keeps out a little more of winter and summer; its response is so much worse that the pipe grows all the same.
    const { loop, soil: wetter } = planOf(soil.name, climate.name);
    const half = { ...soil, moisture: `${String(Number(soil.moisture.split(' ')[0]) / 2)} %` };
    // At the same number of trenches: a plan's own count also changes the interference.
    const log = inputDocument().read(cellDocument(half, climate)).soil;
    const dry = planLoop({ ...input, soil: log, field: { ...input.field, mostTrenches: loop.circuits.trenches } });
    expect(dry.soil.conductivity.estimate).toBeLessThan(wetter.conductivity.estimate);
    expect(dry.loop.circuits.trenches).toBe(loop.circuits.trenches);
    expect(dry.loop.needed.estimate).toBeGreaterThanOrEqual(loop.needed.estimate);
  });

  // Between them, in the temperate climate, the two ask for nearly the same, and the soil decides.
  it('heating governs in the cold climate, cooling in the hot one, in every soil', () => {
    for (const { name } of SOILS) {
      expect(planOf(name, continental.name).governing).toBe('heating');
      expect(planOf(name, subtropical.name).governing).toBe('cooling');
    }
  });

  it('heating asks for more in the cold climate than in either warm one, in every soil', () => {
    const heating = (soil: string, climate: string): number => planOf(soil, climate).heating?.needed.monthly.pipe ?? 0;
    for (const { name } of SOILS) {
      expect(heating(name, continental.name)).toBeGreaterThan(heating(name, temperate.name));
      expect(heating(name, continental.name)).toBeGreaterThan(heating(name, subtropical.name));
    }
  });

  it('the yearly swing reaches the pipes least in the soil of least diffusivity', () => {
    for (const { name } of CLIMATES) {
      const bySwing = [...SOILS].sort((a, b) => swing(planOf(a.name, name)) - swing(planOf(b.name, name)));
      const byDiffusivity = [...SOILS].sort(
        (a, b) => planOf(a.name, name).soil.effective.diffusivity - planOf(b.name, name).soil.effective.diffusivity,
      );
      expect(bySwing).toEqual(byDiffusivity);
    }
  });
});

const swing = ({ ground: { pipes } }: LoopPlan): number => pipes.highest - pipes.lowest;
