import ts from 'typescript';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { BREAKDOWNS } from './shared-names.data.js';

const ROOT = fileURLToPath(new URL('../', import.meta.url));

/** Rooms by floor, lowest first: a name gets the meaning it has where it first comes up. */
const FLOORS: readonly string[] = [
  ...['units', 'states', 'findings', 'references', 'safety', 'errors'],
  ...['soil', 'climate', 'fluid', 'pipe', 'ground', 'building', 'heat-pump'],
  ...['operation', 'circuit', 'site', 'plan', 'cost', 'commissioning', 'document', 'study', 'report'],
];

/** One field of one public interface. */
export interface Use {
  readonly name: string;
  readonly room: string;
  readonly owner: string;
  /** The kind of quantity, or what else the field is: `whole number`, `choice`, `flag`, `text`, `parts`, `function`, `any kind`. */
  readonly kind: string;
  /** Whether the field holds many of them, or one with its limits. */
  readonly form: 'one' | 'list' | 'band';
  readonly meaning: string;
}

/** Interfaces that describe other interfaces; their fields are no quantities. */
const DESCRIPTIONS: readonly string[] = ['Shape', 'ShapeNode', 'BandShape'];

/** Every field of every interface that the rooms make public, in the order of the floors. */
export function publicFields(): readonly Use[] {
  const folders = readdirSync(`${ROOT}src`, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() && entry.name !== 'numerics' ? [entry.name] : [],
  );
  const known = folders.sort((a, b) => FLOORS.indexOf(a) - FLOORS.indexOf(b));
  const unknown = known.filter((room) => !FLOORS.includes(room));
  if (unknown.length > 0) throw new Error(`a room without a floor: ${unknown.join(', ')}`);
  const onUnRecoverableConfigFileDiagnostic = ({ messageText }: ts.Diagnostic): never => {
    throw new Error(ts.flattenDiagnosticMessageText(messageText, '\n'));
  };
  const host = { ...ts.sys, onUnRecoverableConfigFileDiagnostic };
  const options = ts.getParsedCommandLineOfConfigFile(`${ROOT}tsconfig.json`, {}, host)?.options ?? {};
  const doors = known.map((room) => ({ room, file: `${ROOT}src/${room}/index.ts` })).filter(({ file }) => ts.sys.fileExists(file));
  const program = ts.createProgram(
    doors.map(({ file }) => file),
    options,
  );
  const seen = new Set<ts.Symbol>();
  return doors.flatMap(({ room, file }) => {
    const source = program.getSourceFile(file);
    const door = source === undefined ? undefined : program.getTypeChecker().getSymbolAtLocation(source);
    return door === undefined ? [] : fieldsOfRoom(program.getTypeChecker(), door, room, seen);
  });
}

function fieldsOfRoom(checker: ts.TypeChecker, door: ts.Symbol, room: string, seen: Set<ts.Symbol>): readonly Use[] {
  const uses: Use[] = [];
  const visit = (symbol: ts.Symbol, owner: string): void => {
    if (seen.has(symbol) || DESCRIPTIONS.includes(owner)) return;
    seen.add(symbol);
    for (const declaration of symbol.declarations ?? []) {
      if (ts.isInterfaceDeclaration(declaration)) members(declaration.members, owner, Object.hasOwn(BREAKDOWNS, owner) ? owner : '');
      else if (ts.isTypeAliasDeclaration(declaration)) literals(declaration.type, owner);
    }
  };
  const literals = (node: ts.Node, owner: string): void => {
    if (ts.isTypeLiteralNode(node)) members(node.members, owner);
    else if (ts.isUnionTypeNode(node) || ts.isIntersectionTypeNode(node) || ts.isParenthesizedTypeNode(node))
      ts.forEachChild(node, (part) => literals(part, owner));
  };
  const members = (list: readonly ts.TypeElement[], owner: string, within = ''): void => {
    for (const member of list) {
      const symbol =
        ts.isPropertySignature(member) && (ts.isIdentifier(member.name) || ts.isStringLiteral(member.name))
          ? checker.getSymbolAtLocation(member.name)
          : undefined;
      if (symbol === undefined || symbol.getName().startsWith('~')) continue;
      const name = `${within === '' ? '' : `${within}.`}${symbol.getName()}`;
      uses.push({ name, room, owner, ...kindOf(checker, checker.getTypeOfSymbol(symbol)), meaning: meaningOf(checker, symbol) });
      inside(member, `${owner}.${name}`, name);
    }
  };
  // A field written as an unnamed object has fields of its own, which are read with it: `spent.pipe`.
  const inside = (node: ts.Node, owner: string, within: string): void => {
    ts.forEachChild(node, (part) => {
      if (ts.isTypeLiteralNode(part)) members(part.members, owner, within);
      else inside(part, owner, within);
    });
  };
  for (const exported of checker.getExportsOfModule(door)) {
    const target = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    if (target.flags & (ts.SymbolFlags.Interface | ts.SymbolFlags.TypeAlias)) visit(target, target.getName());
  }
  return uses;
}

function meaningOf(checker: ts.TypeChecker, symbol: ts.Symbol): string {
  return ts.displayPartsToString(symbol.getDocumentationComment(checker)).replace(/\s+/gu, ' ').trim();
}

function kindOf(checker: ts.TypeChecker, given: ts.Type): Pick<Use, 'kind' | 'form'> {
  const type = checker.getNonNullableType(given);
  const label = type.getProperty('~si');
  if (label !== undefined) {
    const text = checker.getTypeOfSymbol(label);
    return { kind: text.isStringLiteral() ? text.value.replace(/ \[.*\]$/u, '') : 'any kind', form: 'one' };
  }
  const element = checker.isArrayType(type) ? checker.getIndexTypeOfType(type, ts.IndexKind.Number) : undefined;
  if (element !== undefined) return { kind: kindOf(checker, element).kind, form: 'list' };
  if (type.getSymbol()?.getName() === 'Band') {
    const estimate = type.getProperty('estimate');
    return { kind: estimate === undefined ? 'any kind' : kindOf(checker, checker.getTypeOfSymbol(estimate)).kind, form: 'band' };
  }
  const is = (flag: ts.TypeFlags): boolean => (type.flags & flag) !== 0;
  if (is(ts.TypeFlags.BooleanLike)) return { kind: 'flag', form: 'one' };
  if (is(ts.TypeFlags.NumberLike)) return { kind: 'whole number', form: 'one' };
  if (is(ts.TypeFlags.String)) return { kind: 'text', form: 'one' };
  const members = type.isUnion() ? type.types : [type];
  if (members.every((member) => member.isStringLiteral())) return { kind: 'choice', form: 'one' };
  const kinds = new Set(type.isUnion() ? members.map((member) => kindOf(checker, member).kind) : []);
  if (kinds.size === 1) return { kind: [...kinds][0] ?? '', form: 'one' };
  if (type.getCallSignatures().length > 0) return { kind: 'function', form: 'one' };
  return { kind: type.isUnion() && kinds.size > 1 && !kinds.has('parts') ? [...kinds].sort().join(' or ') : 'parts', form: 'one' };
}
