// What the demo costs to run, beside other fuels and beside a shorter loop: node scripts/run.mjs examples/what-it-costs.ts
import { demoDocument, inputDocument } from 'loamloop';
import {
  compareHeatSources,
  compareLifeCycles,
  electricityCost,
  emissionsOverYears,
  type HeatSource,
  type LifeCyclePlan,
  type Payback,
  shorterLoopCosts,
  straightLineResidual,
} from 'loamloop/cost';
import { writeMoney } from 'loamloop/document';
import { planLoop } from 'loamloop/plan';
import { describeFinding, show, type UnitSystem } from 'loamloop/report';
import {
  electricJoules,
  electricKilowattHours,
  electricWatts,
  fraction,
  kilograms,
  type Mass,
  money,
  type Money,
  percentPerYear,
  perKilowattHour,
  ratio,
} from 'loamloop/units';
import { EXAMPLE_PRICES } from './prices/2026-invented.js';

const { format: _, ...job } = inputDocument().read(demoDocument);
/** The demo with a loop circulator, its power invented. */
const plan = planLoop({ ...job, pump: { power: electricWatts(120) } });
const { regret } = plan.byHours;
const { heating, cooling } = plan.season;
/** Unit, circulator and auxiliary heater with their heat, the third boundary. */
const within = heating?.performance.boundaries.find(({ boundary }) => boundary === 'H3');
if (heating === undefined || within?.performanceFactor === undefined) throw new Error('the demo heats, with a circulator');
const { energy, performanceFactor: performance } = within;

const use = {
  from: 'year',
  unitElectricity: electricJoules(heating.unitElectricity + (cooling?.unitElectricity ?? 0)),
  circulatorElectricity: electricJoules((heating.circulatorElectricity ?? 0) + (cooling?.circulatorElectricity ?? 0)),
  auxiliaryElectricity: electricJoules(heating.auxiliaryElectricity ?? 0),
} as const;

const terms = { discountRate: percentPerYear(3), years: 20 };
const rising = (low: number, estimate: number, high: number): NonNullable<LifeCyclePlan['outlook']> => ({
  escalation: { low: percentPerYear(low), estimate: percentPerYear(estimate), high: percentPerYear(high), coverage: fraction(0.8) },
});

function page(system: UnitSystem): readonly string[] {
  const prices = EXAMPLE_PRICES[system];
  const { currency, priceYear } = prices.tariff;
  const write = show(system);
  const kilowattHoursOf = (joules: number): string => `${String(Math.round(electricKilowattHours.of(electricJoules(joules))))} kWh`;
  const amount = (value: Money): string => `${currency} ${writeMoney(value, { decimals: 0 }).replace('-', '−')}`;
  const line = (...cells: readonly string[]): string =>
    `  ${cells.map((cell, index) => (index === 0 ? cell.padEnd(30) : cell.padStart(18))).join('')}`;
  const payback = (of: Payback): string => (of.outcome === 'paid back' ? `${of.paybackYears.toFixed(1)} years` : of.outcome);
  const tonnes = (mass: Mass): string => `${(kilograms.of(mass) / 1000).toFixed(1)} t`;

  const bill = electricityCost({ use, tariff: prices.tariff, dateYear: priceYear });
  const electric = (label: string, efficiency: HeatSource['efficiency']): HeatSource => ({
    label,
    supply: { soldBy: 'electricity', energyPrice: prices.energyPrice },
    efficiency,
    ...(prices.grid[0] === undefined ? {} : { emissionFactor: prices.grid[0].gridEmissionFactor }),
  });
  const heatSources = [electric('ground source', performance), ...prices.boilers, electric('electric heaters', ratio(1))];
  const compared = compareHeatSources({ currency, priceYear, energy, heatSources });
  const [ground, boiler] = compared.rows;
  if (ground === undefined || boiler === undefined) throw new Error('a heat pump and a boiler');

  const loopCost = money(plan.loop.circuits.activePipe * prices.lengthPrice);
  const residualValue = straightLineResidual({ firstCost: loopCost, lifeYears: ratio(50), ageYears: ratio(terms.years) });
  const studied = compareLifeCycles({
    ...terms,
    baseline: {
      label: boiler.label,
      firstCost: prices.boilerCost,
      yearlyEnergyCost: boiler.energyCost,
      yearlyUpkeep: boiler.fixedCost,
      outlook: rising(-1, 1, 4),
    },
    alternative: {
      label: ground.label,
      firstCost: money(prices.unitCost + loopCost),
      residualValue,
      yearlyEnergyCost: ground.energyCost,
      outlook: rising(-1, 0, 2),
    },
  });
  const fromYear = prices.grid[0]?.year ?? priceYear;
  const overYears = emissionsOverYears({ usedElectricity: electricJoules(ground.boughtEnergy), grid: prices.grid, fromYear, years: terms.years });
  const boilerEmissions = kilograms((boiler.emissions ?? 0) * terms.years);
  const { simplePayback, discountedPayback, savingsToInvestment, adjustedReturn } = studied.measures;
  const cut = shorterLoopCosts({
    loops: regret.filter(({ lengthRatio }) => lengthRatio <= 1),
    lengthPrice: prices.lengthPrice,
    energyPrice: prices.energyPrice,
    ...terms,
  });
  return [
    `What it costs: ${plan.name}`,
    `Every price, emission of the grid and rate below is an invented example of ${String(priceYear)}, in ${currency}; put your own in its place.`,
    'The year is the hard one that the loop was designed for. A usual year takes less, of every fuel alike.',
    '',
    'Electricity of the year, heating and cooling',
    ...bill.parts
      .filter(({ usedElectricity }) => usedElectricity > 0)
      .map(({ part, usedElectricity, energyCost }) => line(part, kilowattHoursOf(usedElectricity), amount(energyCost))),
    line('fixed charges and taxes', '', amount(money(bill.fixedCost + bill.demandCost + bill.taxCost))),
    line('all of it', kilowattHoursOf(bill.usedElectricity), amount(bill.totalCost)),
    '',
    `Ways to make the ${kilowattHoursOf(energy)} of heat; ${performance.toFixed(2)} of it for one of electricity`,
    line('', 'bought', 'a year', 'per kWh of heat', 'CO2 a year'),
    ...compared.rows.map(({ label, boughtEnergy, boughtVolume, totalCost, heatPrice, emissions }) =>
      line(
        label,
        boughtVolume === undefined ? kilowattHoursOf(boughtEnergy) : write('volume', boughtVolume),
        amount(totalCost),
        writeMoney(money(perKilowattHour.of(heatPrice)), { decimals: 3 }),
        emissions === undefined ? '' : tonnes(emissions),
      ),
    ),
    line(`CO2 of ${String(terms.years)} years, grid as forecast`, tonnes(overYears.totalEmissions), 'and of the boiler', tonnes(boilerEmissions)),
    '',
    `Over ${String(terms.years)} years at 3 % real interest, beside ${boiler.label}; the loop is worth ${amount(residualValue)} at the end`,
    ...studied.scenarios.map(({ scenario, baselineCost, alternativeCost, netSavings }) =>
      line(
        `${scenario} energy prices`,
        amount(alternativeCost.lifeCycleCost),
        `for ${amount(baselineCost.lifeCycleCost)}`,
        `saves ${amount(netSavings)}`,
      ),
    ),
    line('worst and best mixture', amount(studied.worstNetSavings), amount(studied.bestNetSavings)),
    line('payback, simple', payback(simplePayback)),
    line('payback, with interest', payback(discountedPayback)),
    line('savings over investment', savingsToInvestment === undefined ? 'no investment' : savingsToInvestment.toFixed(2)),
    line('return', adjustedReturn === undefined ? 'none' : write('yearly rate', adjustedReturn)),
    '',
    'If you cut the loop short',
    line('pipe', 'inside limits', 'auxiliary', 'more a year', 'saved digging', 'saves in all'),
    ...cut.lengths.map(({ lengthRatio, pipe, limitMargin, auxiliaryElectricity, yearlyExtraCost, firstCostSaved, netSavings }) =>
      line(
        `${write('pipe length', pipe)} (${lengthRatio === 1 ? 'as planned' : `${((1 - lengthRatio) * 100).toFixed(0)} % short`})`,
        write('temperature difference', limitMargin),
        kilowattHoursOf(auxiliaryElectricity),
        amount(yearlyExtraCost),
        amount(firstCostSaved),
        netSavings === undefined ? 'nothing: it stops' : amount(netSavings),
      ),
    ),
    '',
    'To be said',
    ...[...bill.findings, ...compared.findings, ...studied.findings, ...cut.findings].map((finding) => `  - ${describeFinding(finding, system)}`),
    '',
  ];
}

console.log([...page('metric'), ...page('us')].join('\n'));
