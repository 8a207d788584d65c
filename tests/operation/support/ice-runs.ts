import { exponentialResponse, type Layout } from '../../../src/ground/index.js';
import { type IceSimulation, type IceSimulationInput, iceRoomOf, simulateWithIce, type IceSoil } from '../../../src/operation/index.js';
import {
  diameterMillimetres,
  hours,
  joulesPerCubicMetre,
  kelvinDifference,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  volumetricFraction,
  wattsPerKelvin,
} from '../../../src/units/index.js';
import { soilOf } from '../../ground/support.js';

/** A soil that freezes evenly over a range, all its water, by conductivities [W/(m.K)], heat capacities [J/(m3.K)], water [m3/m3] and range [K]. */
export const evenlyFreezing = (of: {
  readonly thawed: readonly [conductivity: number, heatCapacity: number];
  readonly frozen: readonly [conductivity: number, heatCapacity: number];
  readonly water: number;
  readonly range: number;
  readonly latent?: number;
}): IceSoil => ({
  thawed: soilOf(of.thawed[0], of.thawed[0] / of.thawed[1]),
  frozen: soilOf(of.frozen[0], of.frozen[0] / of.frozen[1]),
  latentHeat: joulesPerCubicMetre(of.latent ?? of.water * 334e6),
  waterByVolume: volumetricFraction(of.water),
  freezing: { type: 'range', range: kelvinDifference(of.range) },
});

/** Heat taken from pipes of a layout per metre of pipe [W/m], over ground [degC], in steps of so many hours, with all steps. */
export const directInput = (of: {
  readonly layout: Layout;
  readonly outside: number;
  readonly soil: IceSoil;
  readonly heats: ArrayLike<number>;
  readonly ground: ArrayLike<number>;
  readonly step: number;
  readonly years?: number;
}): IceSimulationInput => {
  const outsideDiameter = diameterMillimetres(of.outside);
  return {
    step: hours(of.step),
    duty: { from: 'ground', loads: of.heats },
    ground: of.ground,
    response: exponentialResponse({ layout: of.layout, pipe: { outsideDiameter }, soil: of.soil.thawed }),
    pipeLength: pipeMetres(1),
    resistanceAt: () => pipeMetreKelvinPerWatt(0),
    heatCapacityRate: wattsPerKelvin(1e9),
    years: of.years ?? 1,
    withCourse: true,
    freezingGround: { ...iceRoomOf(of.layout), soil: of.soil, outsideDiameter },
  };
};

/** Walls of the last year with ice and without, and frozen sections. */
export const coursesOf = (result: IceSimulation): { readonly iced: Float64Array; readonly plain: Float64Array; readonly areas: Float64Array } => {
  const iced = result.withIce.lastYear.course?.walls;
  const plain = result.withoutIce.lastYear.course?.walls;
  const areas = result.iceCourse?.frozenAreas;
  if (iced === undefined || plain === undefined || areas === undefined) throw new Error('no course');
  return { iced, plain, areas };
};

/** The same heat and ground in every step. */
export const runSteadily = (
  of: Omit<Parameters<typeof directInput>[0], 'heats' | 'ground'> & { readonly heat: number; readonly warmth: number; readonly steps: number },
): IceSimulation =>
  simulateWithIce(directInput({ ...of, heats: new Float64Array(of.steps).fill(of.heat), ground: new Float64Array(of.steps).fill(of.warmth) }));
