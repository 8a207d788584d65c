import type { Finding } from '../findings/index.js';
import type { ElectricEnergy, Energy, Fraction } from '../units/index.js';

/** Share of the condenser heat that desuperheaters take [1]. */
const USUAL_SHARE = { lowest: 0.05, highest: 0.15 } as const;

/** Whether the share is one that hot gas has over; a share of 0 is a desuperheater switched off. */
export function shareFindings(desuperheaterShare: Fraction): readonly Finding[] {
  const { lowest, highest } = USUAL_SHARE;
  if (desuperheaterShare === 0 || (desuperheaterShare >= lowest && desuperheaterShare <= highest)) return [];
  const values = { desuperheaterShare, lowest: lowest as Fraction, highest: highest as Fraction };
  return [{ code: 'desuperheater-share-unusual', level: 'warning', values, source: 'desuperheaterPractice' }];
}

/** What the winter's hot water costs, where there is any. */
export function winterFindings(heat: number, ground: number, electric: number, auxiliary: number): readonly Finding[] {
  if (heat === 0) return [];
  const values = {
    winterEnergy: heat as Energy,
    extraFromGround: ground as Energy,
    extraElectricEnergy: electric as ElectricEnergy,
    extraUnmetEnergy: auxiliary as Energy,
  };
  return [{ code: 'desuperheater-not-free', level: 'note', values, source: 'common practice' }];
}
