import { describe, expect, it } from 'vitest';
import { type BuildingInput, buildingInputShape, readBuilding } from '../../src/building/index.js';
import { celsius, kilowatts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const full: BuildingInput = {
  heating: { designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21), balancePoint: celsius(15) },
  cooling: { designLoad: kilowatts(7), designOutdoor: celsius(33), indoor: celsius(25), balancePoint: celsius(19) },
};
const bare: BuildingInput = {
  heating: { designLoad: kilowatts(12), designOutdoor: celsius(-15) },
  cooling: { designLoad: kilowatts(7), designOutdoor: celsius(33) },
};
const codes = (input: BuildingInput): readonly string[] => readBuilding(input).findings.map(({ code }) => code);

describe('readBuilding', () => {
  it('takes what is given and says nothing', () => {
    const { heatingForSizing, heatingForEnergy, cooling, findings } = readBuilding(full);
    expect(findings).toEqual([]);
    expect(heatingForSizing.loadAtDesign).toBe(kilowatts(12));
    expect(heatingForEnergy.loadAtDesign).toBeCloseTo(kilowatts(10), 9);
    expect(cooling?.balancePoint).toBe(celsius(19));
  });

  it('says each thing that it assumed', () => {
    expect(codes(bare)).toEqual(['indoor-assumed', 'balance-point-assumed', 'indoor-assumed', 'balance-point-assumed']);
    expect(readBuilding(bare).heatingForEnergy.slope).toBeCloseTo(12_000 / 35, 9);
    expect(readBuilding(bare).cooling?.balancePoint).toBe(celsius(20));
  });

  it('has no cooling where none is asked for', () => {
    expect(readBuilding({ heating: full.heating })).not.toHaveProperty('cooling');
  });

  it('warns of balance points that houses do not have, or that overlap', () => {
    expect(codes({ heating: { ...full.heating, balancePoint: celsius(8) } })).toEqual(['balance-point-unusual']);
    expect(codes({ heating: { ...full.heating, balancePoint: celsius(20.5) } })).toEqual(['balance-point-unusual']);
    expect(codes({ heating: { ...full.heating, balancePoint: celsius(19.5) }, ...(full.cooling ? { cooling: full.cooling } : {}) })).toEqual([
      'balance-points-overlap',
    ]);
  });

  it('names the place in the document that it refuses', () => {
    expect(() => readBuilding({ ...bare, heating: { designLoad: kilowatts(12), designOutdoor: celsius(17) } })).toThrow('heating.balancePoint');
    expect(() => readBuilding({ ...bare, cooling: { designLoad: kilowatts(-1), designOutdoor: celsius(33) } })).toThrow('cooling.designLoad');
  });

  it('asks for a balance point where the one it would assume has no room', () => {
    const without = 'heating.balancePoint: nothing is not allowed; allowed: a balance point; the 16 degC that is assumed';
    expect(() => readBuilding({ heating: { ...bare.heating, designOutdoor: celsius(15.5) } })).toThrow(without);
    expect(() => readBuilding({ heating: { ...bare.heating, indoor: celsius(14) } })).toThrow(without);
    expect(codes({ heating: { ...bare.heating, indoor: celsius(14), balancePoint: celsius(12) } })).toEqual([]);
    expect(() => readBuilding({ ...bare, cooling: { designLoad: kilowatts(7), designOutdoor: celsius(20.5) } })).toThrow(
      'cooling.balancePoint: nothing',
    );
  });

  it('refuses bad input by name', () => {
    refuses(readBuilding, buildingInputShape, full, { more: [bare] });
  });
});
