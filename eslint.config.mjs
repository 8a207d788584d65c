import { readdirSync, readFileSync } from 'node:fs';
import jsdoc from 'eslint-plugin-jsdoc';
import tseslint from 'typescript-eslint';
import { floors } from './eslint-rules/floors.mjs';

/** Names that the rooms' index files open to the outside; what stays inside a room is documented as far as its reader needs. */
const publicNames = readdirSync(new URL('src/', import.meta.url), { recursive: true })
  .filter((path) => /^(?:[^/\\]+[/\\])?index\.ts$/u.test(path) && !path.startsWith('numerics'))
  .map((path) => readFileSync(new URL(`src/${path}`, import.meta.url), 'utf8'))
  .flatMap((text) => [...text.matchAll(/export (?:type )?\{([^}]*)\}/gu)].flatMap(([, names = '']) => names.match(/\b(?!type\b)\w+/gu) ?? []));
const isPublic = `[id.name=/^(?:${publicNames.join('|')})$/]`;
const publicFunction = { contexts: [`FunctionDeclaration${isPublic}`, 'MethodDefinition[accessibility!="private"]'] };

const noDefaultExport = { selector: 'ExportDefaultDeclaration', message: 'Export by name.' };

export default tseslint.config(
  { ignores: ['dist/', 'coverage/', 'docs/', 'etc/', 'reports/', '**/*.md'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { project: './tsconfig.test.json', tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports', disallowTypeAnnotations: false }],
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_$', ignoreRestSiblings: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // Plain numbers are what the library is about; a template shows them as they are.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // A quantity is a plain number with a label; arithmetic on it is the point.
      '@typescript-eslint/no-unsafe-unary-minus': 'off',
      // A room without findings has an empty table of them.
      '@typescript-eslint/no-empty-object-type': ['error', { allowInterfaces: 'always' }],
      '@typescript-eslint/no-generated-empty-object-type': 'off',
    },
  },
  {
    files: ['src/**/*.ts'],
    plugins: { loamloop: { rules: { floors } }, jsdoc },
    settings: { jsdoc: { mode: 'typescript' } },
    rules: {
      'loamloop/floors': 'error',
      'no-console': 'error',
      'no-restricted-globals': [
        'error',
        'process',
        'Buffer',
        'global',
        'window',
        'document',
        'navigator',
        'performance',
        'fetch',
        'setTimeout',
        'setInterval',
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Random studies take a seed.' },
        { object: 'Date', property: 'now', message: 'The library has no clock.' },
      ],
      'no-restricted-syntax': [
        'error',
        noDefaultExport,
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'The library has no clock.' },
        { selector: "MemberExpression[object.type='MetaProperty']", message: 'The library does not ask where it runs.' },
        { selector: 'TSModuleDeclaration', message: 'No namespaces.' },
        { selector: 'TSEnumDeclaration', message: 'No enums: a union of texts is plain data.' },
      ],
      'max-lines': ['error', { max: 200 }],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      // Callers without types are refused by hand, so a check or a conversion may look needless to the compiler.
      '@typescript-eslint/no-unnecessary-condition': 'off',
      '@typescript-eslint/no-unnecessary-type-conversion': 'off',
      'jsdoc/require-jsdoc': [
        'error',
        {
          publicOnly: true,
          require: { FunctionDeclaration: true, ClassDeclaration: true, MethodDefinition: true, ArrowFunctionExpression: true },
          contexts: ['TSInterfaceDeclaration', 'TSTypeAliasDeclaration', 'VariableDeclaration'],
        },
      ],
      'jsdoc/require-description': ['error', { contexts: ['FunctionDeclaration', 'TSInterfaceDeclaration', 'TSTypeAliasDeclaration'] }],
      'jsdoc/require-param': ['error', { ...publicFunction, checkDestructured: false }],
      'jsdoc/check-param-names': ['error', { checkDestructured: false }],
      'jsdoc/require-param-description': 'error',
      'jsdoc/require-returns': ['error', publicFunction],
      'jsdoc/require-returns-description': 'error',
      'jsdoc/no-types': 'error',
      'jsdoc/check-tag-names': ['error', { definedTags: ['remarks', 'typeParam'] }],
    },
  },
  { files: ['src/**/*.data.ts'], rules: { 'max-lines': 'off' } },
  {
    // Every room has its table of sources; the empty ones add nothing to the union of their keys.
    files: ['src/references/index.ts'],
    rules: { '@typescript-eslint/no-redundant-type-constituents': 'off', '@typescript-eslint/no-duplicate-type-constituents': 'off' },
  },
  {
    files: ['tests/**/*.ts', 'bench/**/*.ts', 'scripts/**/*.ts', 'examples/**/*.ts', '*.config.ts'],
    rules: {
      '@typescript-eslint/no-unnecessary-condition': 'off',
      '@typescript-eslint/no-unnecessary-type-parameters': 'off',
    },
  },
  {
    // Tests hand the library what no type allows, and read data that has none.
    files: ['tests/**/*.ts'],
    rules: {
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      '@typescript-eslint/no-base-to-string': 'off',
      '@typescript-eslint/no-meaningless-void-operator': 'off',
    },
  },
  { files: ['tests/**/*.ts', 'bench/**/*.ts', 'scripts/**/*.ts', 'examples/**/*.ts'], rules: { 'no-restricted-syntax': ['error', noDefaultExport] } },
);
