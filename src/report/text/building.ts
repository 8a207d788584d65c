import type { BuildingFindingValues } from '../../findings/building.js';
import { coveredText, nearlyAll } from '../covered.js';
import type { FindingTexts } from './finding-texts.js';

/** A part of a whole; where both read the same, the part is still less. */
const lessThan = (part: string, whole: string): string => (part === whole ? `just less than the ${whole}` : `${part} of the ${whole}`);

const heaterText: Readonly<Record<BuildingFindingValues['useful-heat-assumed']['heater'], string>> = {
  'old oil boiler': 'an old oil boiler',
  'oil boiler': 'an oil boiler of today',
  'condensing boiler': 'a condensing boiler',
  'non-condensing boiler': 'a boiler that does not condense',
  'electric resistance': 'electric resistance',
};

const heldText = (baseLoadHeld: boolean, balancePointHeld: boolean): string =>
  baseLoadHeld && balancePointHeld ? 'Base load and balance point were' : `The ${baseLoadHeld ? 'base load' : 'balance point'} was`;

/** Texts of the findings of the building room. */
export const buildingFindingTexts: FindingTexts<BuildingFindingValues> = {
  'indoor-assumed': ({ mode, indoor }, show) =>
    `No indoor temperature is given for ${mode}; ${show('temperature', indoor)} was assumed. Give the one the design load was calculated for.`,
  'balance-point-assumed': ({ mode, balancePoint }, show) =>
    `No balance point is given for ${mode}; the load was assumed to begin at ${show('temperature', balancePoint)} outdoors. ` +
    `A year of fuel bills or a season of meter readings would tell it.`,
  'balance-point-unusual': ({ mode, balancePoint, lowest, highest }, show) =>
    `A balance point of ${show('temperature', balancePoint)} for ${mode} is unusual: houses have one between ${show('temperature', lowest)} and ` +
    `${show('temperature', highest)}. It sets how long the season is; check it.`,
  'balance-points-overlap': ({ heating, cooling }, show) =>
    `Heating begins below ${show('temperature', heating)} outdoors and cooling above ${show('temperature', cooling)} already: between the two the ` +
    `building would be heated and cooled at once. A gap of ${show('temperature difference', 2)} to ${show('temperature difference', 4)} is usual.`,
  'design-outdoor-doubtful': ({ mode, designOutdoor, month, meanOutdoor, spread }, show) =>
    `The design outdoor temperature for ${mode}, ${show('temperature', designOutdoor)}, does not fit month ${String(month)} of the climate given, which has a ` +
    `mean of ${show('temperature', meanOutdoor)} and a spread of ${show('temperature difference', spread)} about it. One of the two may be of another place or in another unit.`,
  'spread-told-from-means': ({ overYear, mildBelow }, show) =>
    overYear < mildBelow
      ? `Only monthly means were given for a climate that is even through the year (deviation ${show('temperature difference', overYear)}). The spread told from ` +
        `them is too wide by a mild sea, and the heat of the year may be a third too high: give hourly or daily temperatures.`
      : `Only monthly means were given; how temperatures spread about them was told from the means. A year of heating may come out up to 5 % above that of ` +
        `daily means, and up to 5 % below that of its hours.`,
  'capacity-short': ({ mode, capacity, designLoad, capacityBalancePoint, unmetEnergy, unmetLow, unmetHigh, coveredShare }, show) =>
    `The unit makes ${lessThan(show('power', capacity), show('power', designLoad))} that ${mode} asks for at design conditions. ` +
    `${mode === 'heating' ? 'Below' : 'Above'} ${show('temperature', capacityBalancePoint)} outdoors it runs without pause and leaves ` +
    `${nearlyAll(coveredShare) ? 'less than half a per cent' : show('energy', unmetEnergy)} of the year’s ${mode} to ` +
    `${mode === 'heating' ? 'other heat' : 'a warmer house'}; it covers ${coveredText(coveredShare, show)}. ` +
    (nearlyAll(coveredShare)
      ? ''
      : `Hour by hour it may be ${show('energy', unmetLow)} to ${show('energy', unmetHigh)}, since the ends of real weather are their own; hours or bins tell it better. `) +
    `The loop is to be sized for what the unit draws, not for the building.`,
  'hot-water-stored-cool': ({ storageTemperature, guidance }, show) =>
    `Hot water is stored at ${show('temperature', storageTemperature)}, less than the ${show('temperature', guidance)} that guidance against legionella commonly ` +
    `asks for. The local code decides, and whether the tank is to be heated through at intervals; a hotter tank costs COP, which is to be counted.`,
  'hot-water-scalds': ({ storageTemperature, scaldsAbove }, show) =>
    `Stored at ${show('temperature', storageTemperature)}, hot water scalds: above ${show('temperature', scaldsAbove)} at a tap it burns skin quickly, a child’s ` +
    `soonest. Mixing valves at the tank or the taps are a matter for the plumber and the local code.`,
  'hot-water-above-supply': ({ storageTemperature, highestSupply, shareAbove }, show) =>
    `Hot water is to be stored at ${show('temperature', storageTemperature)}, but the unit makes ${show('temperature', highestSupply)} at most. About ` +
    `${show('fraction', shareAbove)} of its heat lies above that and needs another heater, more where the unit stops short of its limit.`,
  'hot-water-draw-unusual': ({ drawOfDay, lowest, highest }, show) =>
    `${show('volume', drawOfDay)} of hot water a day is unusual for one person; ${show('volume', lowest)} to ${show('volume', highest)} is common. A meter reading beats ` +
    `a rule; look whether the figure is of all water, or of the household.`,
  'ground-without-rest': ({ month, hotWaterHeat, restShare }, show) =>
    `The ground gets no rest: in month ${String(month)}, the quietest, it is still asked for ${show('fraction', restShare)} of its hardest month, ` +
    `${show('power', hotWaterHeat)} on the mean for hot water. Size the loop by a simulation with this load in it.`,
  'useful-heat-assumed': ({ heater, usefulRatio, usefulRatioError }, show) =>
    `How much of the energy by the meter becomes heat was not given; ${show('ratio', usefulRatio)} was assumed, as ${heaterText[heater]} commonly does over a season, ` +
    `with a standard error of ${show('fraction', usefulRatioError)}. Every load fitted to the bills moves with it.`,
  'readings-left-out': ({ leftOut }) =>
    `${leftOut === 1 ? 'The last bill ends' : `The last ${String(leftOut)} bills end`} with an estimated reading and ${leftOut === 1 ? 'was' : 'were'} left out. ` +
    `A bill that was estimated counts only together with the next one that was read.`,
  'line-partly-held': ({ baseLoadHeld, balancePointHeld }) =>
    `${heldText(baseLoadHeld, balancePointHeld)} not fitted to the bills but held as given; the bands are those of the rest, as if what was held were certain.`,
  'bills-fit-poorly': ({ residualShare, highest }, show) =>
    `The bills scatter about the line by ${show('fraction', residualShare)} of the mean load, more than ${show('fraction', highest)}. Look for a stove, an absence, another thermostat, ` +
    `an estimated reading, or weather of another place.`,
  'base-load-below-nothing': ({ baseLoad, baseLoadError }, show) =>
    `The heat that does not hang on the weather came out as ${show('power', baseLoad)}, with a standard error of ${show('power', baseLoadError)}; it cannot be less than nothing. ` +
    `If the meter feeds heating alone, hold it at nothing and fit again.`,
  'heat-loss-disagrees': ({ stated, fitted, fittedLow, fittedHigh, coverage }, show) =>
    `The design heat loss given is ${show('power', stated)}, but the bills make it ${show('power', fitted)}, and with a probability of ${show('fraction', coverage)} between ` +
    `${show('power', fittedLow)} and ${show('power', fittedHigh)}. One of the two is of another house than the other: look at the efficiency assumed, at rooms not heated, at ` +
    `wood or sun beside the meter, and have the heat loss calculated again before the loop is sized by it.`,
  'setback-reheat-short': ({ capacity, steadyLoad, reheatLoad, unmetEnergy, savedEnergy }, show) =>
    `To be warm again in time after the set-back takes ${show('power', reheatLoad)}, where ${show('power', steadyLoad)} would keep the house warm and the unit makes ` +
    `${show('power', capacity)}. Other heat would make up ${show('energy', unmetEnergy)} each time, to save ${show('energy', savedEnergy)}. With a heat pump set back ` +
    `less, begin the reheat earlier, or do not set back at all.`,
};
