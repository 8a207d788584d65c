import { type AnyFluid, fluidHazards, fluidSituations, freezingPoint, mixtureFlashPoint, warmestFreezingPoint } from '../fluid/index.js';
import { noticesFor } from '../safety/index.js';
import type { MassFraction } from '../units/index.js';
import { entry, paragraph, section, type Write } from './page/layout.js';
import { show, type UnitSystem } from './show.js';
import { FLUID_USE_WORDS, FLUID_WORDS, HANDLING_WORDS, HAZARD_WORDS } from './text/fluid-words.js';

/** A mixture to handle. */
export interface HandledFluid {
  /** The antifreeze, by name or record. */
  readonly fluid: AnyFluid;
  /** Mass share of antifreeze in the finished mixture [kg/kg]. */
  readonly massFraction: MassFraction;
}

/**
 * A sheet for whoever mixes and fills: what the antifreeze can do, how to handle it, and what to write on the loop.
 *
 * It does not replace the safety data sheet of the product nor the local code, and says so.
 *
 * @param mixture - the antifreeze and its mass fraction [kg/kg]
 * @param system - metric or US units
 * @returns lines of at most 96 characters
 * @throws InputError for another system, plain water, or a mass fraction outside the fits
 * @remarks Data: `fluidHazards`, `mixtureFlashPoint`; notices: `noticesFor`.
 * @example
 * ```ts @import.meta.vitest
 * const { ETHANOL } = await import('../fluid/index.js');
 * const { massPercent } = await import('../units/index.js');
 * const sheet = fluidSheet({ fluid: ETHANOL, massFraction: massPercent(20) }, 'metric');
 * expect(sheet).toContain('36');
 * expect(sheet).toContain('never in a cellar');
 * ```
 */
export function fluidSheet(mixture: HandledFluid, system: UnitSystem): string {
  const write = show(system);
  const { fluid, use, concentrateFlashPoint, hazardStatements, waterHazardClass, oxygenDemand } = fluidHazards(mixture.fluid);
  const warmest = warmestFreezingPoint(mixture);
  return [
    section(
      'Before anything else',
      noticesFor(fluidSituations(mixture.fluid)).map(({ text }) => paragraph(text)),
    ),
    section('The antifreeze', [
      entry('What it is', FLUID_WORDS[fluid]),
      entry('Where it may go', FLUID_USE_WORDS[use]),
      entry(
        'Undiluted',
        hazardStatements.length === 0
          ? 'not classified as dangerous'
          : hazardStatements.map((code) => `${HAZARD_WORDS[code] ?? code} (${code})`).join('; '),
      ),
      entry(
        'Fire',
        concentrateFlashPoint === undefined
          ? 'does not burn'
          : `undiluted, gives off vapour that lights from ${write('temperature', concentrateFlashPoint)}`,
      ),
      ...mixtureFire(mixture, write),
      entry(
        'In ground water',
        `hazard class ${String(waterHazardClass)} of 3 in Germany; a kilogram uses up ${oxygenDemand.toFixed(2)} kg of oxygen as it decays`,
      ),
      paragraph(
        'Hazard statements and water class are recalled from tables. Inhibitors, denaturants and dyes change them: the safety data sheet of the product goes first.',
      ),
    ]),
    section(
      'How to handle it',
      HANDLING_WORDS[fluid].map((words) => paragraph(words)),
    ),
    section('To write on the loop', [
      entry('Fluid', `${FLUID_WORDS[fluid]}, ${write('mass fraction', mixture.massFraction)} by mass`),
      entry('Freezing point', `${write('temperature', freezingPoint(mixture))}; by the warmest source ${write('temperature', warmest)}`),
      entry('Filled on', '________'),
    ]),
  ].join('\n\n');
}

/** What the mixture itself does near a flame, where there is a table of it. */
function mixtureFire(mixture: HandledFluid, write: Write): string[] {
  const { flashPointsFrom = Infinity, flashPointsTo = 0 } = fluidHazards(mixture.fluid);
  if (mixture.massFraction < flashPointsFrom || mixture.massFraction > flashPointsTo) return [];
  const { flashPoint, flashPointError, liquidClass } = mixtureFlashPoint(mixture);
  const about = `from about ${write('temperature', flashPoint)}, give or take ${write('temperature difference', flashPointError)}`;
  return [entry('Mixed', `gives off vapour that lights ${about}: a liquid of class ${liquidClass} by NFPA 30`)];
}
