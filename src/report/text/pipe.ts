import type { PipeFindingValues } from '../../findings/pipe.js';
import { type FindingTexts, whole } from './finding-texts.js';

/** Texts of the findings of the pipe room. */
export const pipeFindingTexts: FindingTexts<PipeFindingValues> = {
  'laminar-flow': ({ reynolds, film, wall }, show) =>
    `Flow in the pipe is laminar (Reynolds number ${whole(reynolds)}). Its film, ${show('pipe resistance', film)} beside ` +
    `${show('pipe resistance', wall)} of the wall, is counted in the result. A stronger pump would seldom pay for itself.`,
  'transitional-flow': ({ reynolds, film }, show) =>
    `Flow in the pipe is between laminar and turbulent (Reynolds number ${whole(reynolds)}). The film resistance, ` +
    `${show('pipe resistance', film)}, and the pressure drop may be off by a factor of two.`,
  'flow-regime-open': ({ lowReynolds, highReynolds }) =>
    `It is open whether the flow is laminar or turbulent: within the limits of the viscosity the Reynolds number lies between ` +
    `${whole(lowReynolds)} and ${whole(highReynolds)}. The limits of the pressure drop hold for either; choose the pump by the upper one.`,
  'coil-laminar': ({ reynolds, criticalReynolds, frictionRatio }) =>
    `Laid in rings, the pipe keeps the flow laminar up to a Reynolds number of ${whole(criticalReynolds)}; here it is ${whole(reynolds)}. ` +
    `Friction is ${frictionRatio.toFixed(2).replace('-', '−')} times that of straight pipe, and a film reckoned as turbulent is too good.`,
  'hazen-williams-off': ({ hazenWilliams, gradient }, show) =>
    `A Hazen–Williams table would give ${show('pressure gradient', hazenWilliams)}; with the viscosity of this fluid the pipe loses ` +
    `${show('pressure gradient', gradient)}. Do not choose a pump for a loop by such a table.`,
  'pipe-derated': ({ rating, coldRating, temperature }, show) =>
    `At ${show('temperature', temperature)} the pipe bears ${show('pressure', rating)} for long, not the ${show('pressure', coldRating)} of cold pipe. ` +
    `Keep a test below it, or let the pipe cool first; what the maker and the local code say goes first.`,
  'bend-tight': ({ bendRadius, leastBendRadius }, show) =>
    `A bend of ${show('length', bendRadius)} radius is tighter than the ${show('length', leastBendRadius)} for pipe bent cold from straight. Pipe with the ` +
    `set of its coil is often laid tighter; ask the maker, look for kinks, and never force a bend: a held pipe springs back. Else use fused elbows.`,
};
