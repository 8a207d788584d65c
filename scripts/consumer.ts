// Installs the packed library into an empty project and runs the short example of README.md there:
// node scripts/run.mjs scripts/consumer.ts <tarball> esm|cjs|types|bundle|browser
// What it prints must be what README.md shows, to the letter.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { transformSync } from 'esbuild';
import { browserOutput } from './browser.js';
import { project } from './rooms.js';
import { type TenLines, tenLines } from './ten-lines.js';

/** Each way to use the package: what it prints when the code runs in the project at `folder`. */
const PLACES: Readonly<Record<string, (folder: string, example: TenLines) => string | Promise<string>>> = {
  esm: (folder, { code }) => node(folder, 'main.mjs', javascript(code, 'esm')),
  cjs: (folder, { code }) => node(folder, 'main.cjs', javascript(code, 'cjs')),
  types: (folder, { code, output }) => {
    writeFileSync(join(folder, 'main.mts'), code);
    writeFileSync(join(folder, 'main.cts'), code);
    const strict = ['--noEmit', '--strict', '--exactOptionalPropertyTypes', '--target', 'es2022', '--lib', 'es2023,dom'];
    compile(folder, [...strict, '--module', 'nodenext', 'main.mts', 'main.cts']);
    compile(folder, [...strict, '--module', 'esnext', '--moduleResolution', 'bundler', 'main.mts']);
    return output;
  },
  bundle: (folder, { code }) => browserOutput(folder, javascript(code, 'esm'), 'bundle'),
  browser: (folder, { code }) => browserOutput(folder, javascript(code, 'esm'), 'import map'),
};

const javascript = (code: string, format: 'esm' | 'cjs') => transformSync(code, { loader: 'ts', format, target: 'es2022' }).code;

function node(folder: string, file: string, code: string): string {
  writeFileSync(join(folder, file), code);
  return execFileSync(process.execPath, [file], { cwd: folder, encoding: 'utf8' });
}

/** Without skipLibCheck: the declarations of the package and of what it stands on are read in full. */
function compile(folder: string, options: readonly string[]): void {
  const compiler = new URL('node_modules/typescript/bin/tsc', project).pathname;
  execFileSync(process.execPath, [compiler, ...options], { cwd: folder, stdio: 'inherit' });
}

const [tarball = '', place = '', page = 'README.md'] = process.argv.slice(2);
const run = PLACES[place];
if (run === undefined) throw new Error(`${place} is none of ${Object.keys(PLACES).join(', ')}`);
const example = tenLines(readFileSync(new URL(page, project), 'utf8'));
const folder = mkdtempSync(join(tmpdir(), 'loamloop-consumer-'));
try {
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name: 'consumer', private: true }));
  execFileSync('npm', ['install', '--prefer-offline', '--no-audit', '--no-fund', '--loglevel=error', resolve(tarball)], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const printed = (await run(folder, example)).trimEnd();
  if (printed === example.output) {
    console.log(`${place}: prints the ${String(printed.split('\n').length)} lines that ${page} shows`);
  } else {
    console.error(`${place} prints\n${printed}\n\n${page} shows\n${example.output}`);
    process.exitCode = 1;
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
