/** A layer of ground with heat set free at 0 °C. */
export interface FreezingLayer {
  readonly thickness: number;
  readonly conductivity: number;
  readonly capacity: number;
  readonly latentHeat: number;
}

/** Height of a cell [m]; the column is 8 m deep and sealed below. */
const CELL = 0.02;
const CELLS = 400;

/**
 * How deep a constant frost on top freezes a column of ground in a time, by explicit steps of the enthalpy of each cell; knows nothing of Stefan or Neumann.
 * The cell that is freezing counts with its frozen share.
 */
export function frozenDepth(layers: readonly FreezingLayer[], at: { frost: number; start: number; time: number; resistance: number }): number {
  let below = 0;
  const bounds = layers.map((layer) => ({ ...layer, below: (below += layer.thickness) }));
  const last = bounds.at(-1);
  const cells = Array.from({ length: CELLS }, (_, i) => bounds.find((layer) => (i + 0.5) * CELL < layer.below) ?? last);
  // Enthalpy over that of ice at 0 °C.
  const enthalpy = Float64Array.from(cells, (cell) => (cell?.latentHeat ?? 0) + (cell?.capacity ?? 0) * at.start);
  const fastest = Math.max(...layers.map(({ conductivity, capacity }) => conductivity / capacity));
  const step = (0.4 * CELL * CELL) / fastest;
  const steps = Math.ceil(at.time / step);
  const temperature = new Float64Array(CELLS);
  const half = Float64Array.from(cells, (cell) => CELL / 2 / (cell?.conductivity ?? 1));
  const capacity = Float64Array.from(cells, (cell) => cell?.capacity ?? 1);
  const latent = Float64Array.from(cells, (cell) => cell?.latentHeat ?? 0);
  for (let n = 0; n < steps; n += 1) {
    for (let i = 0; i < CELLS; i += 1) {
      const [h, l, c] = [enthalpy[i] ?? 0, latent[i] ?? 0, capacity[i] ?? 1];
      temperature[i] = h < 0 ? h / c : h > l ? (h - l) / c : 0;
    }
    let down = (-at.frost - (temperature[0] ?? 0)) / (at.resistance + (half[0] ?? 0));
    for (let i = 0; i < CELLS; i += 1) {
      const next = i === CELLS - 1 ? 0 : ((temperature[i] ?? 0) - (temperature[i + 1] ?? 0)) / ((half[i] ?? 0) + (half[i + 1] ?? 0));
      enthalpy[i] = (enthalpy[i] ?? 0) + ((down - next) * (at.time / steps)) / CELL;
      down = next;
    }
  }
  let depth = 0;
  for (let i = 0; i < CELLS; i += 1) {
    const [h, l] = [enthalpy[i] ?? 0, latent[i] ?? 0];
    depth += h <= 0 ? CELL : l > 0 && h < l ? CELL * (1 - h / l) : 0;
  }
  return depth;
}
