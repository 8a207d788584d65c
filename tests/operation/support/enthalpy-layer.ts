/** Ground in layers with a plane of heat in it, all water freezing evenly over a range. */
export interface EnthalpyLayer {
  readonly conductivity: number;
  readonly heatCapacity: number;
  /** With ice; absent for ground that does not freeze. */
  readonly frozen?: { readonly conductivity: number; readonly heatCapacity: number; readonly latentHeat: number; readonly range: number };
  /** Surface as mean, amplitude [degC] and coldest day. */
  readonly surface: readonly [mean: number, amplitude: number, coldestDay: number];
  /** Depth of the plane [m]. */
  readonly depth: number;
  /** Heat taken from the plane by day from 1 January, 365 of them [W/m2]. */
  readonly heats: readonly number[];
  readonly years: number;
}

const DAY = 86_400;
const OMEGA = (2 * Math.PI) / (365 * DAY);
const STEP = 600;
/** Layers from the surface to the plane, and altogether: to eight times its depth. */
const ABOVE = 25;
const LAYERS = 200;

/**
 * The ground by its heat content, explicit in time: a method that shares nothing with the library, which follows rings around a pipe beside a step response.
 *
 * @returns the plane at the end of each day of the last year, and the thickness of frozen ground below half the plane's depth [degC], [m]
 */
export function enthalpyLayer({ conductivity, heatCapacity, frozen, surface: [mean, amplitude, coldestDay], depth, heats, years }: EnthalpyLayer): {
  readonly plane: readonly number[];
  readonly frozenThickness: readonly number[];
} {
  const thickness = depth / ABOVE;
  const damping = Math.sqrt((OMEGA * heatCapacity) / 2 / conductivity);
  const wave = (time: number, at: number): number =>
    mean - amplitude * Math.exp(-at * damping) * Math.cos(OMEGA * (time - coldestDay * DAY) - at * damping);
  const melting = frozen === undefined ? 0 : frozen.latentHeat + ((heatCapacity + frozen.heatCapacity) / 2) * frozen.range;
  const shareOf = (heat: number): number => (frozen === undefined ? 0 : Math.min(1, Math.max(0, -heat / melting)));
  const temperatureOf = (heat: number): number => {
    if (frozen === undefined || heat >= 0) return heat / heatCapacity;
    return heat > -melting ? (heat / melting) * frozen.range : -frozen.range + (heat + melting) / frozen.heatCapacity;
  };
  const contents = Float64Array.from({ length: LAYERS }, (_, layer) => heatCapacity * wave(0, (layer + 0.5) * thickness));
  const temperatures = new Float64Array(LAYERS);
  const conductivities = new Float64Array(LAYERS);
  const plane: number[] = [];
  const frozenThickness: number[] = [];
  for (let step = 0; step < (years * 365 * DAY) / STEP; step += 1) {
    for (let layer = 0; layer < LAYERS; layer += 1) {
      const content = contents[layer] ?? 0;
      temperatures[layer] = temperatureOf(content);
      conductivities[layer] = conductivity + ((frozen?.conductivity ?? conductivity) - conductivity) * shareOf(content);
    }
    let arriving = ((conductivities[0] ?? 0) * (wave(step * STEP, 0) - (temperatures[0] ?? 0))) / (thickness / 2);
    for (let layer = 0; layer < LAYERS; layer += 1) {
      const [here, next] = [conductivities[layer] ?? 0, conductivities[layer + 1] ?? 0];
      // The deepest layer passes nothing on.
      const leaving =
        layer + 1 < LAYERS ? (((2 * here * next) / (here + next)) * ((temperatures[layer] ?? 0) - (temperatures[layer + 1] ?? 0))) / thickness : 0;
      contents[layer] = (contents[layer] ?? 0) + (STEP * (arriving - leaving)) / thickness;
      arriving = leaving;
    }
    const day = Math.floor((step * STEP) / DAY);
    for (const layer of [ABOVE - 1, ABOVE]) contents[layer] = (contents[layer] ?? 0) - (STEP * (heats[day % 365] ?? 0)) / 2 / thickness;
    if ((step + 1) % (DAY / STEP) === 0 && day >= 365 * (years - 1)) {
      plane.push((temperatureOf(contents[ABOVE - 1] ?? 0) + temperatureOf(contents[ABOVE] ?? 0)) / 2);
      frozenThickness.push(thickness * contents.slice(Math.floor(ABOVE / 2)).reduce((sum, content) => sum + shareOf(content), 0));
    }
  }
  return { plane, frozenThickness };
}
