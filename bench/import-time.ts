// How long a fresh process takes to import a subpath of the built package, beside what decimal.js and zod take:
// node scripts/run.mjs bench/import-time.ts
import { execFileSync } from 'node:child_process';
import { project } from '../scripts/rooms.js';

const ROUNDS = 9;
const built = (room: string): string => new URL(`dist/${room}.js`, project).href;
const MODULES: readonly (readonly [string, string])[] = [
  ['an empty module', new URL('nothing.mjs', import.meta.url).href],
  ['loamloop/pipe', built('pipe')],
  ['loamloop/ground', built('ground')],
  ['loamloop/operation', built('operation')],
  ['loamloop/document', built('document')],
  ['decimal.js', 'decimal.js'],
  ['zod', 'zod'],
];

function once(specifier: string): number {
  const code = `const start = performance.now(); await import(${JSON.stringify(specifier)}); console.log(performance.now() - start);`;
  return Number(execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: project.pathname, encoding: 'utf8' }));
}

for (const [name, specifier] of MODULES) {
  const times = Array.from({ length: ROUNDS }, () => once(specifier)).sort((a, b) => a - b);
  console.log(`${(times[Math.floor(ROUNDS / 2)] ?? NaN).toFixed(1).padStart(6)} ms  ${name}`);
}
