import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { entryFile, packageEntries, project, publicRooms, readPackage } from '../../scripts/rooms.js';

describe('the entries of the package', () => {
  it('are the rooms under src with a door, and no others', () => {
    const { main, module, types, exports, typesVersions } = readPackage();
    const due = packageEntries();
    expect({ main, module, types, exports, typesVersions }).toEqual({
      main: due.main,
      module: due.module,
      types: due.types,
      exports: due.exports,
      typesVersions: due.typesVersions,
    });
  });

  it('lead to files', () => {
    expect(
      publicRooms()
        .map(entryFile)
        .filter((path) => !existsSync(new URL(path, project))),
    ).toEqual([]);
  });

  it('keep the numerics inside', () => {
    expect(publicRooms()).not.toContain('numerics');
    expect(publicRooms()).toContain('units');
  });

  it('name the types first, for either module system', () => {
    const { exports } = packageEntries(['index', 'pipe']);
    expect(JSON.stringify(exports)).toBe(
      '{".":{"import":{"types":"./dist/index.d.ts","default":"./dist/index.js"},"require":{"types":"./dist/index.d.cts","default":"./dist/index.cjs"}},' +
        '"./pipe":{"import":{"types":"./dist/pipe.d.ts","default":"./dist/pipe.js"},"require":{"types":"./dist/pipe.d.cts","default":"./dist/pipe.cjs"}},' +
        '"./package.json":"./package.json"}',
    );
  });
});
