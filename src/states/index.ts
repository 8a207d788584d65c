export type { Band } from './band.js';
export type { AnnualWave, FluidState, Moisture, PipeSection, SoilThermal } from './states.js';
export { annualWaveShape, bandShape, fluidStateShape, moistureShape, pipeSectionShape, soilThermalShape, type BandShape } from './shapes.js';
export { joinedShape } from './joined-shape.js';
export { MONTH_DAYS } from './months.data.js';
