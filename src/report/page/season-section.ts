import type { LoopPlan, ServiceSeason } from '../../plan/index.js';
import { entry, paragraph, type Write } from './layout.js';

type Boundary = ServiceSeason['performance']['boundaries'][number]['boundary'];

const COUNTED: Readonly<Record<Boundary, string>> = {
  H1: 'of the unit alone (H1)',
  H2: 'with the circulator (H2)',
  H3: 'with the auxiliary heater and its heat (H3)',
  H4: 'with pumps and fans of the house (H4)',
  C1: 'of the unit alone (C1)',
  C2: 'with the circulator (C2)',
  C4: 'with pumps and fans of the house (C4)',
};

function serviceEntries(label: string, service: ServiceSeason, write: Write): string[] {
  const { performance, metEnergy, groundEnergy, unitElectricity, circulatorElectricity, auxiliaryElectricity, loadSideElectricity } = service;
  const { mode, boundaries } = performance;
  const parts = (
    [
      ['the circulator', circulatorElectricity],
      ['the auxiliary heater', auxiliaryElectricity],
      ['pumps and fans of the house', loadSideElectricity],
    ] as const
  ).flatMap(([taker, used]) => (used === undefined || used === 0 ? [] : `${write('electric energy', used)} for ${taker}`));
  const factors = boundaries.flatMap(({ boundary, performanceFactor }) =>
    performanceFactor === undefined ? [] : `${write('ratio', performanceFactor)} ${COUNTED[boundary]}`,
  );
  const ground = `${write('energy', Math.abs(groundEnergy))} ${mode === 'heating' ? 'from' : 'to'} the ground`;
  return [
    entry(
      label,
      `${write('energy', metEnergy)} of ${mode === 'heating' ? 'heat' : 'cold'}, ${ground}; electricity ${[`${write('electric energy', unitElectricity)} for the unit`, ...parts].join(', ')}`,
    ),
    ...(factors.length === 0 ? [] : [entry('', `${mode === 'heating' ? 'heat' : 'cold'} for one of electricity: ${factors.join('; ')}`)]),
  ];
}

/** What the year takes, and how much heat or cold there is for the electricity, within which boundary. */
export function seasonSection({ season, byHours }: LoopPlan, write: Write): string[] {
  const { heating, cooling, hotWater, usedElectricity } = season;
  const services = [heating, cooling, hotWater].flatMap((service) => service ?? []);
  const circulates = services.some(({ circulatorElectricity }) => circulatorElectricity !== undefined);
  const loadSide = services.some(({ loadSideElectricity }) => loadSideElectricity !== undefined);
  const untold = circulates
    ? ' The power of pumps and fans in the house, beyond what the rating holds, was not given; no figure holds them.'
    : ' No circulator was given; no figure holds its electricity.';
  return [
    ...(heating === undefined ? [] : serviceEntries('Heating', heating, write)),
    ...(hotWater === undefined ? [] : serviceEntries('Hot water', hotWater, write)),
    ...(cooling === undefined ? [] : serviceEntries('Cooling', cooling, write)),
    ...(byHours.cooling.unmetEnergy > 0 ? [entry('', `${write('energy', byHours.cooling.unmetEnergy)} stays uncooled`)] : []),
    entry('All electricity counted', write('electric energy', usedElectricity)),
    paragraph(
      `A figure says little without what it counts, so each has its boundary. They come from rating points; plants as installed were found to reach 80 to 90 % of that.${circulates && loadSide ? '' : untold}`,
    ),
  ];
}
