// The main job on the embedded demo: npm run demo, or npm run demo -- --units us
import { demoDocument, inputDocument } from 'loamloop';
import { planLoop } from 'loamloop/plan';
import { planPage } from 'loamloop/report';

const system = process.argv.join(' ').includes('--units us') ? 'us' : 'metric';
const { format: _, ...job } = inputDocument().read(demoDocument);
console.log(planPage(planLoop(job), system));
