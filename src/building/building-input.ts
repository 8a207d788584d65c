import { demand, demandObject, InputError, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Power, Shape, Temperature } from '../units/index.js';
import { DEGF, INDOOR, OUTDOOR } from './checks.js';
import { ASSUMED_BALANCE_POINT, ASSUMED_INDOOR } from './defaults.data.js';
import { balancePointFindings } from './findings.js';
import { type EnergySignature, energySignature, energySignatureShape } from './signature.js';

/** A design load and the temperatures it belongs to. */
export interface DesignLoadInput {
  /** Heat loss or heat gain by a room-by-room calculation of a competent person, 0.001 to 1e9 [W]. */
  readonly designLoad: Power;
  /** Outdoor temperature it was calculated for [degC]. */
  readonly designOutdoor: Temperature;
  /** Indoor temperature it was calculated for; assumed when left out [degC]. */
  readonly indoor?: Temperature;
  /** Outdoor temperature at which the load begins; assumed when left out [degC]. */
  readonly balancePoint?: Temperature;
}

/** What a document says about the building. */
export interface BuildingInput {
  /** The design heat loss. */
  readonly heating: DesignLoadInput;
  /** The design heat gain, of a building that is cooled. */
  readonly cooling?: DesignLoadInput;
}

/** The lines of a building. */
export interface BuildingSignatures {
  /** Heating with the full design load and no credit for gains: for run fractions and sizing. */
  readonly heatingForSizing: EnergySignature;
  /** Heating with gains taken off: for the heat of a year. */
  readonly heatingForEnergy: EnergySignature;
  /** Cooling, for both. */
  readonly cooling?: EnergySignature;
}

/** {@link BuildingSignatures} with findings. */
export interface BuildingSignaturesResult extends BuildingSignatures {
  /** What was assumed and what to look at. */
  readonly findings: readonly Finding[];
}

const designLoadInputShape: Shape<DesignLoadInput> = {
  designLoad: 'power',
  designOutdoor: 'temperature',
  indoor: { optional: 'temperature' },
  balancePoint: { optional: 'temperature' },
};

/** Shape of {@link BuildingInput}. */
export const buildingInputShape: Shape<BuildingInput> = { heating: designLoadInputShape, cooling: { optional: designLoadInputShape } };

/** Shape of {@link BuildingSignatures}. */
export const buildingSignaturesShape: Shape<BuildingSignatures> = {
  heatingForSizing: energySignatureShape,
  heatingForEnergy: energySignatureShape,
  cooling: { optional: energySignatureShape },
};

/**
 * The lines of a building as a document gives it, with what is not given assumed and said so.
 *
 * Assumed are 20 °C indoors and a balance point of 16 °C in heating, 25 °C and 20 °C in cooling; each is a finding of its own.
 *
 * @param input - design heat loss and, where there is cooling, design heat gain
 * @returns signatures for sizing and for the energy of a year
 * @throws InputError as {@link energySignature}, with the place in the input; `missing` where the balance point that would be assumed does not go with what is given
 * @remarks Assumed balance point in heating after `en14825`; the others are common practice.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts } = await import('../units/index.js');
 * const house = readBuilding({ heating: { designLoad: kilowatts(12), designOutdoor: celsius(-15) } });
 * expect(house.heatingForSizing.balancePoint).toBe(celsius(16));
 * expect(house.findings.map(({ code }) => code)).toEqual(['indoor-assumed', 'balance-point-assumed']);
 * ```
 */
export function readBuilding({ heating, cooling }: BuildingInput): BuildingSignaturesResult {
  demandObject('heating', heating);
  const heatLoss = { ...heating, ...assumed('heating', heating) };
  demandAssumable('heating', heating, heatLoss);
  const heatingForSizing = locate('heating', () => energySignature({ mode: 'heating', form: 'anchored at design', ...heatLoss }));
  const heatingForEnergy = locate('heating', () => energySignature({ mode: 'heating', form: 'gains as offset', ...heatLoss }));
  const findings = [...assumptionFindings('heating', heating), ...balancePointFindings(heatingForSizing)];
  if (cooling === undefined) return { heatingForSizing, heatingForEnergy, findings };
  demandObject('cooling', cooling);
  const heatGain = { ...cooling, ...assumed('cooling', cooling) };
  demandAssumable('cooling', cooling, heatGain);
  const coolingLine = locate('cooling', () => energySignature({ mode: 'cooling', ...heatGain }));
  return {
    heatingForSizing,
    heatingForEnergy,
    cooling: coolingLine,
    findings: [
      ...findings,
      ...assumptionFindings('cooling', cooling),
      ...balancePointFindings(coolingLine),
      ...overlapFindings(heatingForSizing.balancePoint, coolingLine.balancePoint),
    ],
  };
}

type Mode = 'heating' | 'cooling';

const assumed = (mode: Mode, { indoor, balancePoint }: DesignLoadInput): Pick<Required<DesignLoadInput>, 'indoor' | 'balancePoint'> => ({
  indoor: indoor === undefined ? ASSUMED_INDOOR[mode] : indoor,
  balancePoint: balancePoint === undefined ? ASSUMED_BALANCE_POINT[mode] : balancePoint,
});

/** Refuses to assume a balance point that the temperatures given have no room for: it is to be given then. */
function demandAssumable(
  mode: Mode,
  given: DesignLoadInput,
  { designOutdoor, indoor, balancePoint }: ReturnType<typeof assumed> & DesignLoadInput,
): void {
  if (given.balancePoint !== undefined) return;
  demand(`${mode}.designOutdoor`, 'temperature', designOutdoor, OUTDOOR);
  demand(`${mode}.indoor`, 'temperature', indoor, INDOOR, DEGF);
  const beyond = mode === 'heating' ? balancePoint - designOutdoor : designOutdoor - balancePoint;
  if (beyond >= 1 && balancePoint <= indoor) return;
  throw new InputError({
    code: 'missing',
    argument: `${mode}.balancePoint`,
    value: undefined,
    allowed: `a balance point; the ${String(balancePoint)} degC that is assumed without one does not go with ${String(designOutdoor)} degC outdoors and ${String(indoor)} degC indoors`,
    hint: DEGF,
  });
}

function assumptionFindings(mode: Mode, { indoor, balancePoint }: DesignLoadInput): readonly Finding[] {
  const findings: Finding[] = [];
  if (indoor === undefined)
    findings.push({ code: 'indoor-assumed', level: 'note', values: { mode, indoor: ASSUMED_INDOOR[mode] }, source: 'common practice' });
  if (balancePoint === undefined)
    findings.push({
      code: 'balance-point-assumed',
      level: 'note',
      values: { mode, balancePoint: ASSUMED_BALANCE_POINT[mode] },
      source: mode === 'heating' ? 'en14825' : 'common practice',
    });
  return findings;
}

const overlapFindings = (heating: Temperature, cooling: Temperature): readonly Finding[] =>
  heating <= cooling ? [] : [{ code: 'balance-points-overlap', level: 'warning', values: { heating, cooling }, source: 'common practice' }];
