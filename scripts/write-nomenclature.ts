import { writeFileSync } from 'node:fs';
import { ambiguousNames, nomenclaturePage } from './nomenclature.js';
import { publicFields } from './public-fields.js';

const uses = publicFields();
writeFileSync(new URL('../docs/nomenclature.md', import.meta.url), nomenclaturePage(uses));
const ambiguous = ambiguousNames(uses);
console.log(`docs/nomenclature.md: ${String(new Set(uses.map(({ name }) => name)).size)} names`);
for (const line of ambiguous) console.log(`more than one meaning: ${line}`);
process.exitCode = ambiguous.length === 0 ? 0 : 1;
