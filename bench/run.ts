// Holds the speed of the library to the floors in floors.json: node scripts/run.mjs bench/run.ts
// A floor is a ratio to the reference work measured in the same run; the budget in milliseconds is what it stands for on an ordinary machine.
import { isDeepStrictEqual } from 'node:util';
import floors from './floors.json' with { type: 'json' };
import { measure } from './measure.js';
import { WORKS } from './works.js';

const named = floors.map(({ name }) => name);
if (!isDeepStrictEqual(named, Object.keys(WORKS)))
  throw new Error(`floors.json names ${named.join(', ')}; works.ts has ${Object.keys(WORKS).join(', ')}`);

let broken = 0;
for (const { name, atMost, budget } of floors) {
  const work = WORKS[name];
  if (work === undefined) throw new Error(`no work named ${name}`);
  const { ratio, time } = measure(work);
  const holds = ratio <= atMost;
  if (!holds) broken += 1;
  console.log(
    `${holds ? '  ok' : 'FAIL'}  ${ratio.toPrecision(3).padStart(8)} of ${String(atMost).padStart(6)} references  ${time.toPrecision(3).padStart(8)} ms (budget ${String(budget)})  ${name}`,
  );
}
process.exitCode = broken === 0 ? 0 : 1;
