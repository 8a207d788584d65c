import { type EnergySignature, energySignature } from '../../src/building/index.js';
import { celsius, kilowatts } from '../../src/units/index.js';

/** A heating line by its load [kW] at an outdoor temperature and its balance point [degC]. */
export const heatingLine = (designLoad: number, designOutdoor: number, balancePoint: number): EnergySignature =>
  energySignature({
    mode: 'heating',
    form: 'anchored at design',
    designLoad: kilowatts(designLoad),
    designOutdoor: celsius(designOutdoor),
    indoor: celsius(21),
    balancePoint: celsius(balancePoint),
  });

/** A cooling line, told the same way. */
export const coolingLine = (designLoad: number, designOutdoor: number, balancePoint: number): EnergySignature =>
  energySignature({
    mode: 'cooling',
    designLoad: kilowatts(designLoad),
    designOutdoor: celsius(designOutdoor),
    indoor: celsius(25),
    balancePoint: celsius(balancePoint),
  });
