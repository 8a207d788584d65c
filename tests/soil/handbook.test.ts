import { describe, expect, it } from 'vitest';
import { HANDBOOK_MATERIALS, HANDBOOK_STATES, handbookConductivity, type HandbookQuestion } from '../../src/soil/index.js';
import { HANDBOOK_ROWS, HEAT_LOSS_ROWS } from '../../src/soil/handbook.data.js';
import { REFERENCES } from '../../src/references/index.js';
import type { Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';

const questionShape: Shape<HandbookQuestion> = { material: HANDBOOK_MATERIALS, state: HANDBOOK_STATES };

describe('handbookConductivity', () => {
  it('carries every row of the tables, heat capacities with them', () => {
    const rows = loadFixture('soil-handbook-k').rows;
    expect(HANDBOOK_ROWS.length + HEAT_LOSS_ROWS.length).toBe(rows.length);
    const capacities = rows
      .map((row) => row.text('C_MJ_m3K'))
      .filter((text) => /^\d/u.test(text))
      .map((text) => text.split('-').map(Number))
      .map(([low, high = low]) => [low, high]);
    expect(HANDBOOK_ROWS.flatMap(({ heatCapacity }) => (heatCapacity === undefined ? [] : [[...heatCapacity]]))).toEqual(capacities);
    const losses = rows.filter((row) => row.text('source').startsWith('Minenergo')).map((row) => row.number('k_recommended_W_mK'));
    expect(HEAT_LOSS_ROWS.map(({ conductivity }) => conductivity)).toEqual(losses);
  });

  it('says honestly how each handbook was seen', () => {
    const recalled = HANDBOOK_ROWS.filter(({ source }) => REFERENCES[source].seen === 'from memory').map(({ source }) => source);
    expect([...new Set(recalled)]).toEqual(['vdi4640of2010', 'ashraeSoils']);
  });

  it('orders low, recommended and high for every question it answers', () => {
    const answered = HANDBOOK_MATERIALS.flatMap((material) =>
      HANDBOOK_STATES.filter((state) => HANDBOOK_ROWS.some((row) => row.materials.includes(material) && row.state === state)).map((state) =>
        handbookConductivity({ material, state }),
      ),
    );
    expect(answered).toHaveLength(26);
    for (const { low, recommended, high } of answered) {
      expect(low).toBeLessThanOrEqual(recommended);
      expect(recommended).toBeLessThanOrEqual(high);
    }
  });

  it('takes the lowest that a handbook recommends, and shows the code for heat loss only for contrast', () => {
    const loam = handbookConductivity({ material: 'loam', state: 'natural' });
    expect(loam.values.map(({ recommended }) => recommended)).toEqual([2.4, 0.952, 1.15]);
    expect([loam.low, loam.recommended, loam.high]).toEqual([0.865, 0.952, 2.9]);
    const sand = handbookConductivity({ material: 'sand', state: 'dry' });
    expect(sand.recommended).toBe(0.4);
    expect(sand.heatLossPractice).toBe(1.1);
    expect(sand.high).toBeLessThan(1.1);
  });

  it('refuses a state that is not tabled, and names those that are', () => {
    expect(() => handbookConductivity({ material: 'clay', state: 'moist' })).toThrow('"dry", "saturated", "natural" (for clay)');
    refuses(handbookConductivity, questionShape, { material: 'sand', state: 'moist' });
  });
});
