// Writes into README.md how many outside checks there are and how they were seen: node scripts/run.mjs scripts/write-readme-counts.ts
import { readFileSync, writeFileSync } from 'node:fs';
import { publishedChecks } from '../tests/published/all.js';
import type { PublishedCheck } from '../tests/support/published.js';
import { project } from './rooms.js';

const valuesOf = (seen?: PublishedCheck['seen']): string =>
  String(publishedChecks.filter((check) => seen === undefined || check.seen === seen).reduce((sum, { values }) => sum + values.length, 0));

const file = new URL('README.md', project);
const before = readFileSync(file, 'utf8');
const after = before
  .replace(/\d+ checks with \d+ values/u, `${String(publishedChecks.length)} checks with ${valuesOf()} values`)
  .replace(
    /\d+ read in the original, \d+ as quoted elsewhere, \d+ from memory, and \d+ computed independently/u,
    `${valuesOf('original')} read in the original, ${valuesOf('quoted')} as quoted elsewhere, ${valuesOf('from memory')} from memory, and ${valuesOf('computed independently')} computed independently`,
  );
writeFileSync(file, after);
console.log(`README.md: ${String(publishedChecks.length)} checks with ${valuesOf()} values`);
