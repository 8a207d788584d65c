// The public surface, one page per entry under etc: node scripts/run.mjs scripts/api.ts checks the pages, with --write it rewrites them.
// Every exported name with its declaration, in alphabetical order and without comments, so that a change of the surface shows in review.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import ts from 'typescript';
import { entryFile, project, publicRooms } from './rooms.js';

const root = project.pathname;
const folder = new URL('etc/', project);
const { options } = ts.parseJsonConfigFileContent(ts.readConfigFile(`${root}tsconfig.json`, (path) => ts.sys.readFile(path)).config, ts.sys, root);
const files = new Map(publicRooms().map((room) => [room, root + entryFile(room)]));
const program = ts.createProgram([...files.values()], options);
const checker = program.getTypeChecker();
const declarations = new Map<ts.SourceFile, ts.SourceFile>();

/** The declarations of a module as a reader of the package sees them, without comments; `isolatedDeclarations` makes this a matter of one file. */
function declared(file: ts.SourceFile): ts.SourceFile {
  const known = declarations.get(file);
  if (known) return known;
  const { outputText } = ts.transpileDeclaration(file.text, {
    fileName: file.fileName,
    compilerOptions: { ...options, noEmit: false, removeComments: true },
  });
  const made = ts.createSourceFile('declarations.d.ts', outputText, ts.ScriptTarget.ES2022, true);
  declarations.set(file, made);
  return made;
}

/** The text of the declaration of `name` in a file of declarations. */
function statementOf(file: ts.SourceFile, name: string): string {
  const found = file.statements.filter((statement) =>
    ts.isVariableStatement(statement)
      ? statement.declarationList.declarations.some((one) => one.name.getText() === name)
      : (ts.isFunctionDeclaration(statement) ||
          ts.isInterfaceDeclaration(statement) ||
          ts.isTypeAliasDeclaration(statement) ||
          ts.isClassDeclaration(statement)) &&
        statement.name?.text === name,
  );
  if (found.length === 0) throw new Error(`no declaration of ${name}`);
  return found.map((statement) => statement.getText()).join('\n');
}

function page(room: string, path: string): string {
  const source = program.getSourceFile(path);
  const module = source && checker.getSymbolAtLocation(source);
  if (module === undefined) throw new Error(`${path} exports nothing`);
  const texts = checker
    .getExportsOfModule(module)
    .map((symbol) => {
      const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      const declaration = target.declarations?.[0];
      if (declaration === undefined) throw new Error(`${path}: ${symbol.name} leads nowhere`);
      const text = statementOf(declared(declaration.getSourceFile()), target.name);
      return { name: symbol.name, text: symbol.name === target.name ? text : `${text}\nexport { ${target.name} as ${symbol.name} };` };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map(({ text }) => text);
  return `# loamloop${room === 'index' ? '' : `/${room}`}\n\nWritten by \`npm run api\`.\n\n\`\`\`ts\n${texts.join('\n\n')}\n\`\`\`\n`;
}

const pages = new Map([...files].map(([room, path]) => [`${room}.api.md`, page(room, path)]));
const present = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.api.md')) : [];
const stale = present.filter((name) => !pages.has(name));

if (process.argv.includes('--write')) {
  mkdirSync(folder, { recursive: true });
  for (const name of stale) rmSync(new URL(name, folder));
  for (const [name, text] of pages) writeFileSync(new URL(name, folder), text);
  console.log(`etc: ${String(pages.size)} pages`);
} else {
  const changed = [...pages].filter(([name, text]) => !present.includes(name) || readFileSync(new URL(name, folder), 'utf8') !== text);
  for (const name of [...changed.map(([first]) => first), ...stale]) console.error(`etc/${name} is not what src says; npm run api writes it`);
  if (changed.length + stale.length > 0) process.exitCode = 1;
  else console.log(`etc: ${String(pages.size)} pages are what src says`);
}
