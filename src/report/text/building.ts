import type { BuildingFindingValues } from '../../findings/building.js';
import { coveredText, nearlyAll } from '../covered.js';
import type { FindingTexts } from './finding-texts.js';

/** A part of a whole; where both read the same, the part is still less. */
const lessThan = (part: string, whole: string): string => (part === whole ? `just less than the ${whole}` : `${part} of the ${whole}`);

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
      : `Only monthly means were given; how temperatures spread about them was told from the means. A year of heating comes out up to 5 % high by this.`,
  'capacity-short': ({ mode, capacity, designLoad, capacityBalancePoint, unmetEnergy, coveredShare }, show) =>
    `The unit makes ${lessThan(show('power', capacity), show('power', designLoad))} that ${mode} asks for at design conditions. ` +
    `${mode === 'heating' ? 'Below' : 'Above'} ${show('temperature', capacityBalancePoint)} outdoors it runs without pause and leaves ` +
    `${nearlyAll(coveredShare) ? 'less than half a per cent' : show('energy', unmetEnergy)} of the year’s ${mode} to ` +
    `${mode === 'heating' ? 'other heat' : 'a warmer house'}; it covers ${coveredText(coveredShare, show)}. ` +
    `The loop is to be sized for what the unit draws, not for the building.`,
};
