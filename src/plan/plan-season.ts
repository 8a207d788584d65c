import { demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { type SeasonalPerformance, type SeasonalPerformanceResult, seasonalPerformanceShape } from '../heat-pump/index.js';
import { type ModeLedger, seasonOf, type SeasonOptions, type SimulatedYear } from '../operation/index.js';
import type { ElectricEnergy, Energy, Shape } from '../units/index.js';
import type { LoopInput } from './loop-input.js';

/** What one service of the plant takes and gives over the year that repeats. */
export interface ServiceSeason {
  /** Heat or cold over electricity, boundary by boundary; those whose electricity is not known are left out. */
  readonly performance: SeasonalPerformance;
  /** Heat or cold that the unit gives [J]. */
  readonly metEnergy: Energy;
  /** Heat from the ground in heating, to the ground in cooling [J]. */
  readonly groundEnergy: Energy;
  /** Electricity of the unit [J]. */
  readonly unitElectricity: ElectricEnergy;
  /** Electricity of the circulator, where one was given [J]. */
  readonly circulatorElectricity?: ElectricEnergy;
  /** Electricity of the auxiliary heater; in heating and for hot water [J]. */
  readonly auxiliaryElectricity?: ElectricEnergy;
  /** Electricity of pumps or fans on the load side, where it was given [J]. */
  readonly loadSideElectricity?: ElectricEnergy;
}

/** The year that repeats, as seasonal performance and as electricity by what takes it. */
export interface PlanSeason {
  /** Heating of the house; absent where there was none. */
  readonly heating?: ServiceSeason;
  /** Cooling; cold that is not met is in none of it. */
  readonly cooling?: ServiceSeason;
  /** Hot water, which is no part of heating. */
  readonly hotWater?: ServiceSeason;
  /** All electricity that is counted [J]. */
  readonly usedElectricity: ElectricEnergy;
}

const serviceSeasonShape: Shape<ServiceSeason> = {
  performance: seasonalPerformanceShape,
  metEnergy: 'energy',
  groundEnergy: 'energy',
  unitElectricity: 'electric energy',
  circulatorElectricity: { optional: 'electric energy' },
  auxiliaryElectricity: { optional: 'electric energy' },
  loadSideElectricity: { optional: 'electric energy' },
};

/** Shape of {@link PlanSeason}. */
export const planSeasonShape: Shape<PlanSeason> = {
  heating: { optional: serviceSeasonShape },
  cooling: { optional: serviceSeasonShape },
  hotWater: { optional: serviceSeasonShape },
  usedElectricity: 'electric energy',
};

/**
 * Seasonal performance and electricity of the year that repeats.
 *
 * A boundary counts only where all of its electricity is known: beyond the unit alone with a circulator, the fourth with the load side's power as well.
 *
 * @param year - the year of the loop chosen
 * @param input - circulator and options
 * @returns services with their boundaries, and what to look at
 * @throws InputError at the option that is out of its range
 */
export function planSeason(
  year: SimulatedYear,
  { pump, seasonOptions: options = {} }: Pick<LoopInput, 'pump' | 'seasonOptions'>,
): {
  readonly season: PlanSeason;
  readonly findings: readonly Finding[];
} {
  demandObject('seasonOptions', options);
  const { months: _, ...whole } = year;
  const known: Known = { pump: pump !== undefined, loadSide: options.loadSidePower !== undefined, options };
  const of = (heating: ModeLedger): ReturnType<typeof seasonOf> => locate('seasonOptions', () => seasonOf({ ...whole, heating }, options));
  const house = of(year.heating);
  const heating = serviceOf(year.heating, house.heating, known);
  const cooling = serviceOf(year.cooling, house.cooling, known);
  const hotWater = year.hotWater && serviceOf(year.hotWater, of(year.hotWater).heating, known);
  const services = [heating, cooling, hotWater].flatMap((service) => service ?? []);
  return {
    season: {
      ...(heating && { heating }),
      ...(cooling && { cooling }),
      ...(hotWater && { hotWater }),
      usedElectricity: services.reduce((sum, service) => sum + electricityOf(service), 0) as ElectricEnergy,
    },
    // What there is to say is about boundaries with the circulator.
    findings: known.pump ? [...house.heating.findings, ...house.cooling.findings] : [],
  };
}

interface Known {
  readonly pump: boolean;
  readonly loadSide: boolean;
  readonly options: SeasonOptions;
}

function serviceOf(ledger: ModeLedger, result: SeasonalPerformanceResult, { pump, loadSide, options }: Known): ServiceSeason | undefined {
  if (!(ledger.energy > 0)) return undefined;
  const { metEnergy, groundEnergy, unitElectricity, circulatorElectricity, unmetEnergy, runTime } = ledger;
  const { findings: _, pumpShare, ...performance } = result;
  const isKnown = (boundary: string): boolean => boundary.endsWith('1') || (pump && (loadSide || !boundary.endsWith('4')));
  const { auxiliaryEfficiency = 1, loadSidePower = 0 }: { readonly auxiliaryEfficiency?: number; readonly loadSidePower?: number } = options;
  return {
    performance: {
      ...performance,
      boundaries: performance.boundaries.filter(({ boundary }) => isKnown(boundary)),
      ...(pump && pumpShare !== undefined ? { pumpShare } : {}),
    },
    metEnergy,
    groundEnergy,
    unitElectricity,
    ...(pump ? { circulatorElectricity } : {}),
    ...(result.mode === 'heating' ? { auxiliaryElectricity: (unmetEnergy / auxiliaryEfficiency) as ElectricEnergy } : {}),
    ...(loadSide ? { loadSideElectricity: (loadSidePower * runTime) as ElectricEnergy } : {}),
  };
}

const electricityOf = ({ unitElectricity, circulatorElectricity, auxiliaryElectricity, loadSideElectricity }: ServiceSeason): number =>
  unitElectricity + (circulatorElectricity ?? 0) + (auxiliaryElectricity ?? 0) + (loadSideElectricity ?? 0);
