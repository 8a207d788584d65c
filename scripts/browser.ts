// Runs code on an empty page in Chromium and returns what it prints: bundled, or as it is with an import map.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';

const BROWSERS = [process.env['CHROMIUM'], '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const TYPES: Readonly<Record<string, string>> = { '.js': 'text/javascript', '.mjs': 'text/javascript' };
const END = 'end of the page';

/** What `code` prints on a page served from the project at `folder`. */
export async function browserOutput(folder: string, code: string, way: 'bundle' | 'import map'): Promise<string> {
  const script = way === 'bundle' ? await bundled(folder, code) : code;
  const map = JSON.stringify({ imports: way === 'bundle' ? {} : importMap(folder) });
  const server = await serve(folder, {
    '/': `<!doctype html><script type="importmap">${map}</script><script type="module" src="/main.js"></script>`,
    // The last line tells that the code came to its end; a page that fails to load never says it.
    '/main.js': `${script}\nconsole.log('${END}');`,
  });
  try {
    return await printedBy(`http://127.0.0.1:${String((server.address() as AddressInfo).port)}/`);
  } finally {
    server.close();
  }
}

async function bundled(folder: string, code: string): Promise<string> {
  const result = await build({
    stdin: { contents: code, resolveDir: folder },
    bundle: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    minify: true,
  });
  return result.outputFiles.map(({ text }) => text).join('');
}

interface Manifest {
  readonly exports: Readonly<Record<string, string | { readonly import: string | { readonly default: string } }>>;
}

/** Every package installed, with its subpaths, as a browser without a bundler finds them. */
function importMap(folder: string): Readonly<Record<string, string>> {
  const packages = readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'));
  const pairs = packages.flatMap((name) => {
    const { exports } = JSON.parse(readFileSync(join(folder, 'node_modules', name, 'package.json'), 'utf8')) as Manifest;
    return Object.entries(exports).flatMap(([subpath, entry]) => {
      if (typeof entry === 'string') return [];
      const target = typeof entry.import === 'string' ? entry.import : entry.import.default;
      return [[name + subpath.slice(1), `/node_modules/${name}/${target.slice(2)}`] as const];
    });
  });
  return Object.fromEntries(pairs);
}

function serve(folder: string, made: Readonly<Record<string, string>>): Promise<Server> {
  const server = createServer((request, response) => {
    const path = normalize(request.url ?? '/');
    const file = join(folder, path);
    const content = made[path] ?? (existsSync(file) && statSync(file).isFile() ? readFileSync(file) : undefined);
    if (content === undefined) response.writeHead(404).end();
    else response.setHeader('content-type', TYPES[extname(path)] ?? 'text/html').end(content);
  });
  return new Promise((done) => server.listen(0, '127.0.0.1', () => done(server)));
}

async function printedBy(address: string): Promise<string> {
  const executablePath = BROWSERS.find((path) => path !== undefined && existsSync(path));
  if (executablePath === undefined) throw new Error('no Chromium: install the package chromium or name one in CHROMIUM');
  const profile = mkdtempSync(join(tmpdir(), 'loamloop-browser-'));
  const browser = await chromium.launchPersistentContext(profile, { executablePath, headless: true, args: FLAGS });
  try {
    const page = await browser.newPage();
    const lines: string[] = [];
    const ended = new Promise<void>((done, failed) => {
      page.on('console', (message) => (message.text() === END ? done() : lines.push(message.text())));
      page.on('pageerror', failed);
      page.on('requestfailed', (request) => failed(new Error(`not loaded: ${request.url()}`)));
      setTimeout(() => failed(new Error(`the page did not come to its end; it printed: ${lines.join(' | ')}`)), 60_000).unref();
    });
    await page.goto(address);
    await ended;
    return lines.join('\n');
  } finally {
    await browser.close();
    rmSync(profile, { recursive: true, force: true });
  }
}
