import type { CircuitFindingValues } from '../../findings/circuit.js';
import type { Fraction } from '../../units/index.js';
import type { FindingTexts, Show } from './finding-texts.js';

/** A chance, which is never nothing. */
const chance = (share: Fraction, show: Show): string => (share < 0.005 ? `under ${show('fraction', 0.01)}` : show('fraction', share));

/** Texts of the findings of the circuit room. */
export const circuitFindingTexts: FindingTexts<CircuitFindingValues> = {
  'circuit-longer-than-coil': ({ circuitLength, longestCoil, coilsPerCircuit }, show) =>
    `Each circuit takes ${show('pipe length', circuitLength)} of pipe, but the longest coil delivered is ${show('pipe length', longestCoil)}: ` +
    `${String(coilsPerCircuit)} coils would have to be joined under the ground. Use more circuits or longer coils.`,
  'circuit-long': ({ circuitLength, longest }, show) =>
    `A circuit of ${show('pipe length', circuitLength)} is longer than the ${show('pipe length', longest)} asked for; check its pressure drop.`,
  'spare-pipe-high': ({ spare, share }, show) =>
    `Whole coils leave ${show('pipe length', spare)} (${show('fraction', share)}) more pipe in the ground than was needed. ` +
    `It works for the loop; another coil length may save digging.`,
  'circuits-unequal': ({ shortest, longest, spread }, show) =>
    `The circuits run from ${show('pipe length', shortest)} to ${show('pipe length', longest)}, a spread of ${show('fraction', spread)} of their mean. ` +
    `The longest gets the least flow: make them equal, or give each a balancing valve.`,
  'flow-split-uneven': ({ least, most, spread }, show) =>
    `The circuits get from ${show('flow', least)} to ${show('flow', most)}, a spread of ${show('fraction', spread)} of their mean. ` +
    `Widen the headers, make the circuits equal, or throttle those that get the most.`,
  'circuit-runs-backwards': ({ circuit, flow }, show) =>
    `Circuit ${String(circuit)} runs backwards, at ${show('flow', flow)}: the headers drop more than the circuits. Widen them or change the arrangement.`,
  'pump-head-high': ({ head, usual }, show) =>
    `The loop needs ${show('head', head)}; residential loops usually stay within ${show('head', usual)}. ` +
    `More circuits, wider pipe or a wider header save pump electricity every hour.`,
  'pump-share-high': ({ share, usual }, show) =>
    `The circulators take ${show('fraction', share)} of the electricity of unit and circulators; ${show('fraction', usual)} is already much. ` +
    `A smaller pump, a lower speed, or more and shorter circuits save it every hour.`,
  'pump-power-high': ({ electricPower, perHeat, usual }, show) =>
    `The pump would take ${show('electric power', electricPower)}, ${show('fraction', perHeat)} of the heat it brings; loops well laid out stay within ` +
    `${show('fraction', usual)}. More circuits, wider pipe or a better pump help.`,
  'fluid-slow': ({ velocity, usual }, show) =>
    `The fluid runs at only ${show('velocity', velocity)}; below ${show('velocity', usual)} air stays in high points. Use fewer circuits or narrower pipe.`,
  'circuit-length-unusual': ({ circuitLength, shortest, longest }, show) =>
    `A circuit of ${show('pipe length', circuitLength)} is outside what is usual with this pipe, ` +
    `${show('pipe length', shortest)} to ${show('pipe length', longest)}.`,
  'header-loss-high': ({ headerDrop, circuitDrop, share }, show) =>
    `The run to the house drops ${show('pressure', headerDrop)}, ${show('fraction', share)} of the ${show('pressure', circuitDrop)} in a circuit. ` +
    `A wider header costs little, as long as it can still be purged.`,
  'fluid-fast': ({ velocity, usual }, show) =>
    `The fluid runs at ${show('velocity', velocity)}; ${show('velocity', usual)} is usual as the limit in plastic pipe. Ask the pipe maker, or use wider pipe.`,
  'header-not-purged': ({ bore, widest, circuits }, show) =>
    `The header section that serves ${String(circuits)} ${circuits === 1 ? 'circuit' : 'circuits'} has a bore of ${show('diameter', bore)}; purged together, ` +
    `they push the air only through ${show('diameter', widest)} or less. Step the header down sooner, or purge with more flow.`,
  'section-not-purged': ({ section, velocity, wanted, leastFlow, widest }, show) =>
    `At the cart’s flow ${section === 0 ? 'the circuits run' : `header piece ${String(section)} runs`} at ${show('velocity', velocity)}; air is carried out ` +
    `from ${show('velocity', wanted)}. It takes ${show('flow', leastFlow)} from the cart, or a bore of ${show('diameter', widest)} or less there.`,
  'pressure-test-leak': ({ leakPerHour, leastLeak, falseAlarm }, show) =>
    `The pressure falls by ${show('pressure', leakPerHour)} an hour beyond what creep of the pipe explains, and by ${show('pressure', leastLeak)} at least. ` +
    `A tight loop would look like this in ${chance(falseAlarm, show)} of tests. Let the pressure off before anyone goes near, find the leak and test again; ` +
    `do not backfill.`,
  'pressure-test-tight': ({ leakToFind, missedLeak }, show) =>
    `The fall of pressure is the creep of the pipe. A leak that takes ${show('pressure', leakToFind)} an hour would look like this in ` +
    `${chance(missedLeak, show)} of tests; smaller ones are not ruled out, so look at every joint before backfilling.`,
  'pressure-test-open': ({ leastLeakTold, leakToFind, falseAlarm, missedLeak }, show) =>
    `These readings do not tell a leak from the creep of the pipe: they could show one from ${show('pressure', leastLeakTold)} an hour, and ` +
    `${show('pressure', leakToFind)} was to be found. Chance of a false alarm ${chance(falseAlarm, show)}, of a leak missed ${chance(missedLeak, show)}. ` +
    `Leave the loop shut and read on: twice the time tells more than twice the readings.`,
  'pressure-test-rising': ({ risePerHour, leakToFind }, show) =>
    `Against the creep of the pipe the pressure rises by ${show('pressure', risePerHour)} an hour: cooling pipe, a pump that still feeds, or a gauge that drifts. ` +
    `A leak of ${show('pressure', leakToFind)} an hour could hide behind it. Find the cause and read again.`,
  'pressure-test-still': ({ range, gaugeError }, show) =>
    `Through the whole test the pressure moves by ${show('pressure', range)}, less than the error of one reading, ${show('pressure', gaugeError)}. A loop under pressure ` +
    `creeps: look whether the gauge sticks or a valve shuts it off from the loop, and test again.`,
  'pressure-test-no-creep': ({ scatter, gaugeError }, show) =>
    `The readings follow neither curve, creep alone or creep with a leak: they scatter by ${show('pressure', scatter)} about the better, where the gauge errs by ` +
    `${show('pressure', gaugeError)}. A step, a burst or water let in or out between two readings looks like this. Find the cause and test again.`,
  'pressure-test-temperature-unread': ({ drift, leakToFind }, show) =>
    `The temperature was not read. If the pipe warmed by ${show('temperature difference', drift)} an hour, that alone took ${show('pressure', leakToFind)} an hour; ` +
    `cooling hides as much. Read the pipe’s temperature with the pressure, out of the sun.`,
  'test-pressure-within-ceiling': ({ testPressure, ceiling, rating }, show) =>
    `A test at ${show('pressure', testPressure)} is more than the rating of the weakest part, ${show('pressure', rating)} at its temperature. The rule for polyethylene ` +
    `allows up to 1.5 times the rating, ${show('pressure', ceiling)}, with water and only while the test lasts. Make sure that every part is made for that, ` +
    `that the pipe is no warmer than it was rated for, and that nobody stands near.`,
  'test-pressure-over-rating': ({ testPressure, ceiling, rating }, show) =>
    `A test at ${show('pressure', testPressure)} is more than the ${show('pressure', ceiling)} that the weakest part may be tested with, rated ${show('pressure', rating)} ` +
    `at its temperature. Let the pipe cool, take off the weak part, or ask the authority for another rule.`,
  'test-without-expansion': ({ duration }, show) =>
    `This rule allows no drop within ${show('time', duration)} and says nothing of creep. Polyethylene just pumped up loses pressure without a leak: ` +
    `keep it at pressure with added water for some hours first, then shut it and start the clock.`,
  'air-in-loop': ({ airVolume, leastAir, mostAir }, show) =>
    `About ${show('volume', airVolume)} of air is still in the loop (${show('volume', leastAir)} to ${show('volume', mostAir)}). Purge on, in both directions, ` +
    `and one circuit at a time where there are valves; then kick again.`,
  'air-not-seen': ({ mostAir }, show) =>
    mostAir > 0
      ? `The water that went in is what the pipe’s wall takes up by swelling. Up to ${show('volume', mostAir)} of air could hide in that.`
      : `Less water went in than the pipe’s wall takes up by swelling: check the readings and the volume of the loop.`,
  'sealed-pressure-low': ({ lowest, expected, least }, show) =>
    `The sealed loop is expected to come down to ${show('pressure', expected)}, and in the worst case to ${show('pressure', lowest)}; ` +
    `the pump’s inlet wants ${show('pressure', least)} or more. Charge it in the warm season, fit a vessel, or use a flow centre that is open to the air.`,
  'sealed-pressure-high': ({ highest, expected, rating }, show) =>
    `The sealed loop is expected to come up to ${show('pressure', expected)}, and in the worst case to ${show('pressure', highest)}; its weakest part, ` +
    `or what is usual where no rating was given, bears ${show('pressure', rating)}. Charge it with less, fit a vessel and a relief valve, or use a flow centre that is open to the air.`,
  'pipe-floats': ({ uplift, upliftEmpty }, show) =>
    uplift > 0
      ? `The pipe floats up with ${show('force per length', uplift)}; lying there empty it would be ${show('force per length', upliftEmpty)}. ` +
        `Fill it with water first, weigh it down, and backfill with material that does not flow.`
      : `Filled as it is, the pipe stays down; empty it would float up with ${show('force per length', upliftEmpty)}. Keep it filled until the trench is closed.`,
};
