// One invented house on every layout: node scripts/run.mjs examples/compare-layouts.ts, or with --units us behind it
import { compareLayouts, comparisonPage } from './layouts/page.js';

const system = process.argv.join(' ').includes('--units us') ? 'us' : 'metric';
console.log(comparisonPage(compareLayouts(), system).join('\n'));
