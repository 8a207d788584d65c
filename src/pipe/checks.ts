import { demand, InputError } from '../errors/index.js';
import type { Band, FluidState, PipeSection } from '../states/index.js';

/** What hydraulics needs to know of a fluid. */
export type HydraulicFluid = Pick<FluidState, 'density' | 'viscosity'>;

/** What heat transfer in a flowing fluid needs to know of it. */
export type ThermalFluid = Pick<FluidState, 'density' | 'viscosity' | 'specificHeat' | 'conductivity'>;

/** Widest pipe computed with [m]; a bound against overflow, far outside any loop. */
const WIDEST = 10;

/** Refuses an impossible bore. */
export function demandBore(pipe: Pick<PipeSection, 'insideDiameter'>): void {
  demandPart('pipe', pipe);
  demand('pipe.insideDiameter', 'diameter', pipe.insideDiameter, { atLeast: 1e-5, atMost: WIDEST });
}

/** Refuses an impossible pipe section. */
export function demandSection(pipe: PipeSection): void {
  demandBore(pipe);
  demand('pipe.outsideDiameter', 'diameter', pipe.outsideDiameter, { above: 0, atMost: WIDEST });
  demand('pipe.wallConductivity', 'conductivity', pipe.wallConductivity, { atLeast: 1e-6, atMost: 1e4 });
  if (pipe.insideDiameter < pipe.outsideDiameter) return;
  throw new InputError({
    code: 'impossible',
    argument: 'pipe.insideDiameter',
    value: { kind: 'diameter', value: pipe.insideDiameter },
    allowed: `below the outside diameter, ${String(pipe.outsideDiameter)} m`,
    hint: 'the two diameters may be interchanged',
  });
}

/** Refuses an impossible fluid. */
export function demandFluid(fluid: HydraulicFluid): void {
  demandPart('fluid', fluid);
  demand('fluid.density', 'density', fluid.density, { atLeast: 1e-3, atMost: 1e5 });
  demand('fluid.viscosity', 'dynamic viscosity', fluid.viscosity, { atLeast: 1e-7, atMost: 1e5 });
}

/** Refuses an impossible fluid that carries heat. */
export function demandThermal(fluid: ThermalFluid): void {
  demandFluid(fluid);
  demand('fluid.specificHeat', 'specific heat', fluid.specificHeat, { atLeast: 1, atMost: 1e6 });
  demand('fluid.conductivity', 'conductivity', fluid.conductivity, { atLeast: 1e-6, atMost: 1e4 });
}

/** Refuses a part of an input that is absent or no object. */
function demandPart(argument: string, part: object): void {
  const given: unknown = part;
  if (typeof given === 'object' && given !== null) return;
  const absent = given === undefined || given === null;
  throw new InputError({ code: absent ? 'missing' : 'wrong-type', argument, value: absent ? undefined : typeof given, allowed: 'an object' });
}

/** Refuses a band of viscosity whose limits are impossible or out of order. */
export function demandViscosityBand(viscosity: Band<'dynamic viscosity'>): void {
  demandPart('fluid.viscosity', viscosity);
  const { low, estimate, high, coverage } = viscosity;
  demand('fluid.viscosity.low', 'dynamic viscosity', low, { atLeast: 1e-7, atMost: 1e5 });
  demand('fluid.viscosity.estimate', 'dynamic viscosity', estimate, { atLeast: low, atMost: 1e5 });
  demand('fluid.viscosity.high', 'dynamic viscosity', high, { atLeast: estimate, atMost: 1e5 });
  demand('fluid.viscosity.coverage', 'fraction', coverage, { above: 0, atMost: 1 });
}
