import { hotWaterDemand } from '../../src/building/index.js';
import { btu, celsius, fahrenheit, type Flow, gallonsPerDay, kilowattHours, litresPerDay, type Temperature, watts } from '../../src/units/index.js';
import { loadFixture } from '../support/fixture.js';
import type { PublishedCheck } from '../support/published.js';

/** Heat of one day of a draw out of cold water that is the same all year [J]. */
const heatOfDay = (dailyDraw: Flow, cold: Temperature, hotTemperature: Temperature): ReturnType<typeof kilowattHours> => {
  const coldWater = { from: 'months', monthlyMeans: Array.from({ length: 12 }, () => cold) } as const;
  const { loads } = hotWaterDemand({
    draw: { by: 'household', dailyDraw },
    hotTemperature,
    coldWater,
    tankLoss: watts(0),
    circulationLoss: watts(0),
  });
  return kilowattHours(loads.slice(0, 24).reduce((sum, load) => sum + load, 0) / 1000);
};

const lutz = loadFixture('hot-water-lutz');
const steam = loadFixture('hot-water-steam-tables');

/** Heat of hot water against constants and tables of others. */
export const hotWaterChecks: readonly PublishedCheck[] = [
  {
    id: 'HW-lutz',
    room: 'building',
    quantity: 'heat of a day of hot water',
    unit: 'Btu',
    source: `${lutz.meta.source} (${lutz.meta.at})`,
    seen: lutz.meta.seen,
    tolerance: lutz.meta.columns['density_lb_gal']?.tolerance ?? { reason: 'none' },
    values: lutz.rows.map((row) => ({
      label: `line ${String(row.line)}`,
      expected:
        row.number('draw_gal') * row.number('density_lb_gal') * row.number('specific_heat_Btu_lbF') * (row.number('hot_F') - row.number('cold_F')),
      compute: () => btu.of(heatOfDay(gallonsPerDay(row.number('draw_gal')), fahrenheit(row.number('cold_F')), fahrenheit(row.number('hot_F')))),
    })),
  },
  {
    id: 'HW-steam tables',
    room: 'building',
    quantity: 'heat of 200 L of hot water',
    unit: 'kWh',
    source: `${steam.meta.source} (${steam.meta.at})`,
    seen: steam.meta.seen,
    tolerance: steam.meta.columns['hot_enthalpy_kJ_kg']?.tolerance ?? { reason: 'none' },
    values: steam.rows.map((row) => ({
      label: `line ${String(row.line)}`,
      expected: ((200 / row.number('cold_volume_L_kg')) * (row.number('hot_enthalpy_kJ_kg') - row.number('cold_enthalpy_kJ_kg'))) / 3600,
      compute: () => kilowattHours.of(heatOfDay(litresPerDay(200), celsius(row.number('cold_C')), celsius(row.number('hot_C')))),
    })),
  },
];
