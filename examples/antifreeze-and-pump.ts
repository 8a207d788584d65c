// From the antifreeze to the pump and the readings of its meters, in metric and in US units: node scripts/run.mjs examples/antifreeze-and-pump.ts
import {
  circuitHead,
  equipmentDrop,
  expectedLoopReadings,
  flushLoop,
  loopVolume,
  pumpCurve,
  pumpSeasons,
  pumpShare,
  purgeFlow,
  type LoopReading,
} from 'loamloop/circuit';
import { antifreezeCharge, antifreezeForProtection, fluidProperties, fluidPropertyBands, protectionTemperature } from 'loamloop/fluid';
import { nusseltBlend, pipeDimensions, pipeResistance, pressureDropBand, type HydraulicFluid } from 'loamloop/pipe';
import { describeFinding, show, type UnitSystem } from 'loamloop/report';
import { noticesFor } from 'loamloop/safety';
import type { Band, FluidState } from 'loamloop/states';
import {
  celsius,
  electricKilowattHours,
  electricWatts,
  fahrenheit,
  gallonsPerMinute,
  headFeet,
  hours,
  kelvinDifference,
  kilowatts,
  litres,
  massPercent,
  minutes,
  pipeFeet,
  psi,
  type Flow,
  type Kind,
  type Pressure,
  type TemperatureDifference,
} from 'loamloop/units';

/** The loop: four circuits of a whole coil each, and a header to the house and back. */
const pipe = pipeDimensions({ series: 'IPS', size: '3/4', dimensionRatio: '11' });
const headerPipe = pipeDimensions({ series: 'IPS', size: '1-1/4', dimensionRatio: '11' });
const loop = { circuit: { pipe, length: pipeFeet(500) }, circuits: 4, header: { pipe: headerPipe, length: pipeFeet(80) } };
const groundHeat = kilowatts(9);
const designFlow = gallonsPerMinute(11);

/** What the simulation of the loop said of its coldest hour. */
const coldest = { lowestEntering: fahrenheit(30), lowestLeaving: fahrenheit(24.5) };
const { protectTo } = protectionTemperature(coldest);
const fluid = 'propylene-glycol';
const proposal = antifreezeForProtection({ fluid, protectTo, freezingRule: 'warmest source' });
const { massFraction } = proposal;
const { total: contents } = loopVolume({
  pipes: [
    { pipe, length: loop.circuit.length, count: loop.circuits },
    { pipe: headerPipe, length: loop.header.length },
  ],
  equipment: litres(12),
});
const charge = antifreezeCharge({ fluid, massFraction, loopVolume: contents });

const winter = fluidPropertyBands({ fluid, massFraction, temperature: fahrenheit(27.25) });
const summer = fluidProperties({ fluid, massFraction, temperature: fahrenheit(68) });
const testDay = fluidProperties({ fluid: 'water', massFraction: massPercent(0), temperature: celsius(12) });

/** A circuit in the coldest hour: what the film costs at the heat of a metre, between the least and the most that fluid and regime leave open. */
const circuitFlow = (designFlow / loop.circuits) as Flow;
const friction = pressureDropBand({
  pipe,
  flow: circuitFlow,
  length: loop.circuit.length,
  fluid: { density: winter.density.estimate, viscosity: winter.viscosity },
});
const filmOf = (state: FluidState, limit: 'leastNusselt' | 'nusselt' | 'greatestNusselt'): TemperatureDifference => {
  const { film, nusselt, reynolds, prandtl } = pipeResistance({ pipe, fluid: state, flow: circuitFlow });
  const perLength = groundHeat / (loop.circuits * loop.circuit.length);
  return kelvinDifference((perLength * film * nusselt) / nusseltBlend({ reynolds, prandtl })[limit]);
};
const film = {
  low: filmOf({ ...winter.thinnest, conductivity: winter.conductivity.high }, 'greatestNusselt'),
  estimate: filmOf(winter.expected, 'nusselt'),
  high: filmOf({ ...winter.thickest, conductivity: winter.conductivity.low }, 'leastNusselt'),
};

/** The unit's loop side as its data sheet has it, for water. */
const waterSide = { ratedFlow: gallonsPerMinute(11), ratedDrop: psi(3.2), ratedFluid: testDay };
const headAt = (flow: Flow, of: HydraulicFluid): ReturnType<typeof circuitHead> =>
  circuitHead({ ...loop, flow, fluid: of, equipmentDrop: equipmentDrop({ waterSide, fluid: of, flow }) });
const head = headAt(designFlow, winter.expected);

const curve = pumpCurve({
  points: [
    [0, 36, 150],
    [6, 31, 195],
    [12, 22, 235],
    [18, 8, 255],
  ].map(([flow = 0, rise = 0, input = 0]) => ({ flow: gallonsPerMinute(flow), head: headFeet(rise), electricPower: electricWatts(input) })),
});
const dropAt = (flow: Flow, of: HydraulicFluid): Pressure => headAt(flow, of).pressureDrop;
const seasons = pumpSeasons({ curve, dropAt, coldest: winter.expected, summer, testDay });
const thick = pumpSeasons({ curve, dropAt, coldest: winter.thickest, summer }).coldest;
const share = pumpShare({
  electricPower: seasons.coldest.electricPower ?? electricWatts(0),
  capacity: kilowatts(12),
  runningTime: hours(2300),
  unitElectricity: electricKilowattHours(7000),
});

const purge = purgeFlow({ ...loop, headers: [{ ...loop.header, circuits: loop.circuits }], fluid: testDay });
const cartFlow = gallonsPerMinute(16);
const flush = flushLoop({ ...loop, headers: [{ ...loop.header, circuits: loop.circuits }], flow: cartFlow, fluid: testDay });
/** What the loop's own circulator would do on that day: too little. */
const unflushed = flushLoop({ ...loop, flow: seasons.testDay?.flow ?? designFlow, fluid: testDay });
const readings = expectedLoopReadings({
  ...loop,
  flow: seasons.coldest.flow,
  groundHeat,
  fluid,
  massFraction,
  testTemperature: celsius(12),
  readTemperatures: [fahrenheit(27.25), fahrenheit(41), fahrenheit(68)],
  sensorError: kelvinDifference(0.1),
});

function page(system: UnitSystem): readonly string[] {
  const write = show(system);
  const line = (name: string, text: string): string => `  ${name.padEnd(22)}${text}`;
  const band = <K extends Kind>(kind: K, { low, estimate, high }: Omit<Band<K>, 'coverage'>): string =>
    `${write(kind, estimate)} (${write(kind, low)} to ${write(kind, high)})`;
  const reynolds = ({ low, estimate, high }: Band<'ratio'>): string => `${estimate.toFixed(0)} (${low.toFixed(0)} to ${high.toFixed(0)})`;
  const reading = (name: string, { temperature, regimes, pressureDrop, temperatureDifference }: LoopReading): string =>
    line(
      `${name}, ${write('temperature', temperature)}`,
      `drop ${band('pressure', pressureDrop)}, difference ${band('temperature difference', temperatureDifference)}, ${regimes.join(' or ')}`,
    );
  const pumped = [
    { name: 'winter', point: seasons.coldest },
    { name: 'winter, thickest', point: thick },
    { name: 'summer', point: seasons.summer },
    ...(seasons.testDay === undefined ? [] : [{ name: 'test day, water', point: seasons.testDay }]),
  ];
  return [
    `Antifreeze and pump, ${system === 'us' ? 'US' : 'metric'} units`,
    'Before anything else',
    ...noticesFor(['pressure-test', 'antifreeze', 'electrical'])
      .filter(({ code }) => code !== 'qualified-heat-loss')
      .map(({ text }) => `  - ${text}`),
    'Antifreeze',
    line('free of ice to', write('temperature', protectTo)),
    line('propylene glycol', `${write('volume fraction', proposal.volumeFraction)} by volume, ${write('mass fraction', massFraction)} by mass`),
    line(
      'freezes at',
      `${write('temperature', proposal.freezingPoint)}, by the warmest source at ${write('temperature', proposal.warmestFreezingPoint)}`,
    ),
    line('loop holds', write('volume', contents)),
    line('pour', `${write('volume', charge.concentrateVolume)} of pure glycol, ${write('volume', charge.waterVolume)} of water`),
    `A circuit in the cold, ${write('flow', circuitFlow)}`,
    line('Reynolds number', `${reynolds(friction.reynolds)}, ${friction.regimes.join(' or ')}`),
    line('friction', band('pressure', friction.pressureDrop)),
    line('film costs', band('temperature difference', film)),
    `Head in the cold, ${write('flow', designFlow)}`,
    line('circuit', write('pressure', head.circuit.pressureDrop)),
    line('header', write('pressure', head.header?.pressureDrop ?? 0)),
    line('heat pump', write('pressure', head.equipmentDrop)),
    line('together', `${write('pressure', head.pressureDrop)}, ${write('head', head.head)}`),
    ...[...friction.findings, ...head.findings, ...share.findings, ...purge.findings, ...flush.findings].map(
      (finding) => `  - ${describeFinding(finding, system)}`,
    ),
    'Where the pump works',
    ...pumped.map(({ name, point }) =>
      line(
        name,
        `${write('flow', point.flow)} at ${write('head', point.head)}, ${write('electric power', point.electricPower ?? 0)}, ` +
          `${write('fraction', point.pumpEfficiency ?? 0)} of it reaches the fluid`,
      ),
    ),
    line('in a season', `${write('electric energy', share.circulatorElectricity)}, ${write('fraction', share.electricityShare)} of the electricity`),
    'Flushing with water',
    line('cart has to give', `${write('flow', purge.flow)} at ${write('head', purge.head)}, hoses and filter not counted`),
    line('cart at hand', `${write('flow', cartFlow)} at ${write('head', flush.head)}, ${write('velocity', flush.circuit.velocity)} in a circuit`),
    ...unflushed.findings.map((finding) => line('the loop’s own pump', describeFinding(finding, system))),
    line(
      'minutes',
      `${minutes.of(flush.turnoverTime).toFixed(0)} for the contents once, ${minutes.of(flush.purgeTime).toFixed(0)} past the last bubble`,
    ),
    `Readings to expect at ${write('flow', seasons.coldest.flow)}`,
    reading('water', readings.onTestDay),
    ...readings.filled.map((each) => reading('filled', each)),
    '',
  ];
}

console.log([...page('metric'), ...page('us')].join('\n'));
