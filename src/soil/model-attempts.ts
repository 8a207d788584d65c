import type { Finding } from '../findings/index.js';
import type { Conductivity, DryBasisMoisture, Ratio, VolumeFraction } from '../units/index.js';
import { ballandArpConductivity } from './balland-arp.js';
import { campbellConductivity } from './campbell.js';
import { coteKonradConductivity } from './cote-konrad.js';
import { ewenThomasConductivity } from './ewen-thomas.js';
import { johansenConductivity } from './johansen.js';
import { KERSTEN_DENSITY, KERSTEN_MOISTURE, kerstenConductivity } from './kersten.js';
import type { Known } from './known-to-models.js';
import { lu2014Conductivity } from './lu-2014.js';
import { luConductivity } from './lu-2007.js';
import { luIsTooLoose } from './lu-dry.js';
import { FINE_EARTH, type ModelRefusal, notMadeFor, organicBeyondMineral, type SoilModel, WHOLE_SOIL } from './model-refusals.js';
import { WATER_DENSITY } from './particle-density.js';
import { peatConductivity } from './peat.js';

/** What a model makes of a soil, and what of it lies outside of its range. */
interface Computed {
  readonly conductivity: Conductivity;
  readonly findings: readonly Finding[];
}

type Attempt = (known: Known) => ModelRefusal | Computed;

/** Saturation up to which Johansen's equation takes soil that is not frozen as dry [1]. */
const DRY_UP_TO = { coarse: 0.05, fine: 0.1 } as const;

const johansen: Attempt = (known) => {
  const refusal = notMadeFor(WHOLE_SOIL, known);
  if (refusal !== undefined) return refusal;
  const { soil, grain, quartzFraction, organicShare } = known;
  if (grain === undefined) return 'texture not known';
  if (quartzFraction === undefined) return 'quartz not known';
  const { conductivity } = johansenConductivity({ ...soil, grain, quartzFraction, organicShare });
  const low = DRY_UP_TO[grain] as Ratio;
  const dry: Finding = {
    code: 'saturation-outside-model',
    level: 'warning',
    values: { model: 'johansen', saturation: soil.saturation, low },
    source: 'johansen1975',
  };
  return { conductivity, findings: !soil.frozen && soil.saturation <= low ? [dry] : [] };
};

const kersten: Attempt = (known) => {
  const refusal = notMadeFor(WHOLE_SOIL, known);
  if (refusal !== undefined) return refusal;
  const { soil, water, kerstenSoil } = known;
  const { dryDensity, frozen } = soil;
  if (kerstenSoil === undefined) return 'texture not known';
  if (dryDensity < KERSTEN_DENSITY.atLeast) return 'too loose';
  if (dryDensity > KERSTEN_DENSITY.atMost) return 'too dense';
  const moisture = ((water * WATER_DENSITY) / dryDensity) as DryBasisMoisture;
  if (!frozen && moisture < KERSTEN_MOISTURE[kerstenSoil].computed) return 'too dry';
  const result = kerstenConductivity({ dryDensity, moisture: { basis: 'dry', value: moisture }, soil: kerstenSoil, frozen });
  const dry: Finding = {
    code: 'kersten-outside-range',
    level: 'note',
    values: { moisture, least: result.leastMoisture },
    source: 'kersten1949',
  };
  return { conductivity: result.conductivity, findings: result.inRange ? [] : [dry] };
};

const coteKonrad: Attempt = (known) => {
  const { soil, coteKonradClass, solid, crushed } = known;
  if (coteKonradClass === 'fibrous organic') return peatConductivity(soil);
  if (organicBeyondMineral(known)) return 'partly organic soil';
  if (coteKonradClass === undefined) return 'texture not known';
  return coteKonradConductivity({ ...soil, soil: coteKonradClass, crushed, ...(solid === undefined ? {} : { solid }) });
};

const lu2007: Attempt = (known) => {
  const refusal = notMadeFor(FINE_EARTH, known);
  if (refusal !== undefined) return refusal;
  const { soil, grain, quartzFraction, organicShare } = known;
  if (grain === undefined) return 'texture not known';
  if (quartzFraction === undefined) return 'quartz not known';
  return luIsTooLoose(soil) ? 'too loose' : luConductivity({ ...soil, grain, quartzFraction, organicShare });
};

const lu2014: Attempt = (known) => {
  const refusal = notMadeFor(FINE_EARTH, known);
  if (refusal !== undefined) return refusal;
  const { soil, sand, clay } = known;
  if (sand === undefined) return 'sand not known';
  if (clay === undefined) return 'clay not known';
  return luIsTooLoose(soil) ? 'too loose' : lu2014Conductivity({ ...soil, sand, clay });
};

const ballandArp: Attempt = ({ soil, solid, sand, gravel, organicShare, crushed }) => {
  if (crushed) return 'crushed rock';
  if (solid === undefined) return 'quartz not known';
  if (sand === undefined) return 'sand not known';
  const mineral = 1 - organicShare;
  const sandShare = (sand * (1 - gravel) * mineral) as VolumeFraction;
  return ballandArpConductivity({ ...soil, solid, organicShare, sandShare, gravelShare: (gravel * mineral) as VolumeFraction });
};

const campbell: Attempt = (known) => {
  const refusal = notMadeFor(FINE_EARTH, known);
  if (refusal !== undefined) return refusal;
  const { soil, clay } = known;
  if (clay === undefined) return 'clay not known';
  return clay > 0 ? campbellConductivity({ ...soil, clay }) : 'no clay';
};

const ewenThomas: Attempt = (known) => {
  const refusal = notMadeFor(FINE_EARTH, known);
  if (refusal !== undefined) return refusal;
  const { soil, quartzFraction, organicShare } = known;
  return quartzFraction === undefined ? 'quartz not known' : ewenThomasConductivity({ ...soil, quartzFraction, organicShare });
};

/** Each model tried on a soil: its value, or why it has none. */
export const MODEL_ATTEMPTS: Readonly<Record<SoilModel, Attempt>> = {
  johansen,
  kersten,
  'cote-konrad': coteKonrad,
  'lu-2007': lu2007,
  'lu-2014': lu2014,
  'balland-arp': ballandArp,
  campbell,
  'ewen-thomas': ewenThomas,
};
