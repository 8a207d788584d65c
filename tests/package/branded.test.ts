import { readdirSync } from 'node:fs';
import { build } from 'esbuild';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { FLOORS } from '../../eslint-rules/floors.mjs';
import { projectFile } from '../support/page.js';

const root = new URL('../../', import.meta.url).pathname;
const kernels = Object.entries(FLOORS).flatMap(([room, floor]) => (floor >= 2 && floor <= 5 ? [room] : []));
const files = readdirSync(`${root}src`, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts') && kernels.includes(path.split('/')[0] ?? ''))
  .map((path) => `src/${path}`)
  .sort();

const FROM_UNITS = /(?:^|\/)units\//u;

/** What the compiler makes of a module. */
function emitted(code: string): string {
  const { ES2022 } = ts.ScriptTarget;
  return ts.transpileModule(code, { compilerOptions: { target: ES2022, module: ts.ModuleKind.ESNext, verbatimModuleSyntax: true } }).outputText;
}

/** The same module written without brands: no import from units, `number` in the place of every type that came from there. */
function unbranded(code: string): string {
  const file = ts.createSourceFile('kernel.ts', code, ts.ScriptTarget.ES2022, true);
  const brands = new Set<string>();
  const edits: { readonly from: number; readonly to: number; readonly text: string }[] = [];
  for (const statement of file.statements) {
    if (!ts.isImportDeclaration(statement) || !FROM_UNITS.test((statement.moduleSpecifier as ts.StringLiteral).text)) continue;
    const names = statement.importClause?.namedBindings;
    if (names && ts.isNamedImports(names)) for (const { name } of names.elements) brands.add(name.text);
    edits.push({ from: statement.getStart(), to: statement.getEnd(), text: '' });
  }
  const visit = (node: ts.Node): void => {
    if (ts.isTypeReferenceNode(node) && ts.isIdentifier(node.typeName) && brands.has(node.typeName.text)) {
      edits.push({ from: node.getStart(), to: node.getEnd(), text: 'number' });
    } else ts.forEachChild(node, visit);
  };
  visit(file);
  return edits.sort((a, b) => b.from - a.from).reduce((text, { from, to, text: by }) => text.slice(0, from) + by + text.slice(to), code);
}

describe('brands cost nothing', () => {
  it('finds kernels to look at', () => {
    expect(new Set(files.map((path) => path.split('/')[1])).size).toBeGreaterThan(5);
  });

  it.each(files)('%s compiles to what its unbranded twin compiles to', (path) => {
    const code = projectFile(path);
    expect(emitted(code)).toBe(emitted(unbranded(code)));
  });

  it('would tell a constructor of quantities from its twin', () => {
    const code = `import { feet, type Length } from '../units/index.js';\nexport const depth: Length = feet(6);\n`;
    expect(unbranded(code).trim()).toBe('export const depth: number = feet(6);');
    expect(emitted(code)).not.toBe(emitted(unbranded(code)));
  });

  it('leaves nothing of units in a bundle of the kernels', async () => {
    const rooms = [...new Set(files.filter((path) => path.endsWith('/index.ts')))];
    const { metafile } = await build({
      stdin: { contents: rooms.map((path) => `export * from './${path}';`).join('\n'), resolveDir: root },
      bundle: true,
      write: false,
      metafile: true,
      format: 'esm',
      logLevel: 'silent',
    });
    const inputs = Object.keys(metafile.inputs);
    expect(inputs.length).toBeGreaterThan(rooms.length);
    expect(inputs.filter((path) => FROM_UNITS.test(path))).toEqual([]);
  });
});
