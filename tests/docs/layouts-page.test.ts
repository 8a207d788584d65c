import { describe, expect, it } from 'vitest';
import { compareLayouts } from '../../examples/layouts/page.js';
import { layeredCollector } from '../operation/support/guideline-collector.js';
import { projectFile } from '../support/page.js';

const written = (temperature: number): string => `${temperature.toFixed(1).replace('-', '−')} °C`;

describe('the page about layouts', () => {
  const page = projectFile('docs/what-your-layout-costs.md').replaceAll('\n', ' ');

  it('tells what layers of enthalpy make of the guideline, as does the page about ice', () => {
    const { plain, iced } = layeredCollector();
    const [without, withIce] = [plain, iced].map(({ plane }) => written(Math.min(...plane)));
    expect(page).toContain(`gives ${without ?? ''} and ${withIce ?? ''}`);
    expect(projectFile('docs/ice-around-the-pipes.md').replaceAll('\n', ' ')).toContain(
      `plane of ${without ?? ''} without ice and ${withIce ?? ''} with it`,
    );
  });

  it('begins with what the table holds', () => {
    expect(page).toContain('400 m of pipe in 400 m of trench, or on four times the pipe in a third of the trench');
    const rows = compareLayouts();
    const [least, most] = [rows[0], rows.at(-1)];
    if (least === undefined || most === undefined) throw new Error('no layouts');
    expect([least.pipe, least.trench, most.pipe / least.pipe]).toEqual([400, 400, 4]);
    expect(Math.round(least.trench / most.trench)).toBe(3);
  });

  it('has the collector below the guideline without ice and within it with ice, as it says', () => {
    expect(page).toContain('Without ice it lies below the band, with ice within it');
    const [low, high, without, withIce] = [
      ...(/guideline: (\d+) to (\d+) kWh.*?the house: (\d+) kWh\/m² sized without ice, (\d+) with it/u.exec(page) ?? []),
    ]
      .slice(1)
      .map(Number);
    expect(without).toBeLessThan(low ?? 0);
    expect(withIce).toBeGreaterThanOrEqual(low ?? Infinity);
    expect(withIce).toBeLessThanOrEqual(high ?? 0);
  });
});
