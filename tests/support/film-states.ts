import { fluidProperties } from '../../src/fluid/index.js';
import { pipeResistance } from '../../src/pipe/index.js';
import {
  celsius,
  diameterMillimetres,
  litresPerSecond,
  massFraction,
  type PipeResistance,
  type Temperature,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import type { FixtureRow } from './fixture.js';

/** Film and wall of the pipe of a row with its fluid at a temperature, not below −9 °C, near which it freezes. */
export const resistanceOf =
  (row: FixtureRow, bore = row.number('bore_mm')) =>
  (meanFluid: Temperature): PipeResistance =>
    pipeResistance({
      pipe: {
        insideDiameter: diameterMillimetres(bore),
        outsideDiameter: diameterMillimetres(row.number('outside_diameter_mm')),
        wallConductivity: wattsPerMetreKelvin(row.number('wall_conductivity_W_mK')),
      },
      fluid: fluidProperties({
        fluid: 'propylene-glycol',
        massFraction: massFraction(row.number('mass_fraction')),
        temperature: celsius(Math.max(-9, meanFluid)),
      }),
      flow: litresPerSecond(row.number('flow_L_s')),
    }).total;

const STEP = 0.002;

/** All mean fluid temperatures from 1 to 7 °C at which the film carries the heat to a fluid of that temperature, the coldest first. */
export function filmStates(row: FixtureRow, heat: number, bore?: number): readonly number[] {
  const resistanceAt = resistanceOf(row, bore);
  const left = (mean: number): number => mean - (row.number('pipe_wall_C') - heat * resistanceAt(celsius(mean)));
  const grid = Array.from({ length: 3001 }, (_, index) => 1 + STEP * index);
  return grid.flatMap((mean) => {
    const [here, next] = [left(mean), left(mean + STEP)];
    return here * next < 0 ? [mean + (STEP * here) / (here - next)] : [];
  });
}
