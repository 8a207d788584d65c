import { describe, expect, it } from 'vitest';
import { effectiveConductivity, type LayeredGround, type LoggedGround, type SoilLayer } from '../../src/soil/index.js';
import { metres } from '../../src/units/index.js';
import { log, thermal } from '../published/soil-layers.checks.js';
import { pipes } from './logs.js';

const EVEN = log([1.3, 0.8], [1.3, 1.7], [1.3, 2.5]);
const ground: LayeredGround = { layers: EVEN, pipes: pipes([0, 1.5]) };
const found = (given: Partial<LayeredGround>): readonly (readonly string[])[] =>
  effectiveConductivity({ ...ground, ...given }).findings.map(({ code, level }) => [code, level]);
const called = (which: number, name: LoggedGround): readonly SoilLayer[] =>
  EVEN.map((layer, index) => (index === which ? { ...layer, ground: name } : layer));
const sand = { thickness: metres(0.15), thermal: thermal(0.8) };

describe('what a log is told of', () => {
  it('is nothing where it is plain soil', () => {
    expect(found({})).toEqual([]);
    expect(found({ layers: called(1, 'soil') })).toEqual([]);
  });

  it('is peat and made ground where the pipes feel them, above or below', () => {
    for (const which of [0, 1, 2]) {
      expect(found({ layers: called(which, 'peat') })).toEqual([['peat-in-log', 'warning']]);
      expect(found({ layers: called(which, 'made ground') })).toEqual([['made-ground-in-log', 'warning']]);
    }
    const deep = log([1.3, 2.1], [1.3, 3]).map((layer, index) => (index === 1 ? { ...layer, ground: 'peat' as const } : layer));
    expect(found({ layers: deep })).toEqual([]);
  });

  it('is rock that the trench cuts, unless the pipes are bedded', () => {
    expect(found({ layers: called(1, 'rock') })).toEqual([['rock-without-bedding', 'warning']]);
    expect(found({ layers: called(1, 'rock'), bedding: sand })).toEqual([]);
    expect(found({ layers: called(2, 'rock') })).toEqual([]);
    expect(found({ layers: called(2, 'rock'), pipes: pipes([0, 1.6]) })).toEqual([['rock-without-bedding', 'warning']]);
  });

  it('is water that stands in the trench', () => {
    const wet = [['water-table-in-trench', 'warning']];
    expect(found({ waterTable: metres(1.4) })).toEqual(wet);
    expect(found({ waterTable: metres(1.6) })).toEqual([]);
    const fill = { width: metres(0.6), depth: metres(1.7), thermal: thermal(1.3) };
    expect(found({ waterTable: metres(1.6), fill })).toEqual([...wet, ['trench-fill-around-pipes', 'note']]);
  });

  it('is layers that months and years feel differently', () => {
    expect(found({ layers: log([0.9, 1.2], [1.34, 2.5]) })).toEqual([]);
    expect(found({ layers: log([0.9, 1.2], [1.36, 2.5]) })).toEqual([['layers-felt-late', 'note']]);
    expect(found({ layers: log([1.3, 2.1], [0.5, 3]) })).toEqual([]);
  });
});
