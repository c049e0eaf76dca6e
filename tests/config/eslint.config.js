/**
 * Lint rules of the house. Patterns are relative to the project folder, from which npm runs:
 * `eslint --config tests/config/eslint.config.js src tests`.
 */
import { fileURLToPath } from 'node:url';
import svelte from 'eslint-plugin-svelte';
import ts from 'typescript-eslint';
import { explainedSuppressions } from './explained-suppressions.js';
import { FLOORS, floorRules } from './floors.js';

const PURE = `src/{${Object.keys(FLOORS).join(',')}}/**/*.ts`;

/** What only a page has; a floor that reaches for one of these doesn't run in plain Node. */
const PAGE_GLOBALS = [
  ...['window', 'document', 'navigator', 'location', 'history', 'screen', 'self', 'name', 'event'],
  ...['localStorage', 'sessionStorage', 'indexedDB', 'caches', 'crypto', 'fetch', 'performance'],
  ...['setTimeout', 'setInterval', 'requestAnimationFrame', 'requestIdleCallback', 'matchMedia'],
  ...['Element', 'HTMLElement', 'SVGElement', 'DOMParser', 'Image', 'XMLHttpRequest', 'WebSocket'],
  ...['alert', 'confirm', 'prompt', 'process', 'Buffer', 'require'],
].map((name) => ({ name, message: 'Below state there is no page, no Node and no clock.' }));

const CHANCE_AND_CLOCK = [
  { object: 'Math', property: 'random', message: 'Take a seeded generator as an argument.' },
  { object: 'Date', property: 'now', message: 'Take the time as an argument.' },
];

const NO_MARKUP_FROM_DATA = {
  selector: 'MemberExpression[property.name=/^(innerHTML|outerHTML|insertAdjacentHTML)$/]',
  message: 'Outside data never becomes markup.',
};

export default ts.config(
  {
    ignores: [
      'src/view/messages/compiled/**',
      'src/view/messages/toeline.inlang/**',
      'tests/{config,bench}/*.js',
      'dist/**',
    ],
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  ...ts.configs.strictTypeChecked,
  ...ts.configs.stylisticTypeChecked,
  ...svelte.configs.recommended,
  {
    plugins: { house: explainedSuppressions },
    languageOptions: {
      parserOptions: {
        projectService: true,
        tsconfigRootDir: fileURLToPath(new URL('../..', import.meta.url)),
        extraFileExtensions: ['.svelte'],
      },
    },
    rules: {
      'house/explained-suppressions': 'error',
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-restricted-syntax': ['error', NO_MARKUP_FROM_DATA],
      '@typescript-eslint/ban-ts-comment': ['error', { minimumDescriptionLength: 10 }],
      '@typescript-eslint/consistent-type-definitions': 'off',
      '@typescript-eslint/dot-notation': ['error', { allowIndexSignaturePropertyAccess: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // `points[i] as Point` names what it asserts; the other style, `!`, stays forbidden.
      '@typescript-eslint/non-nullable-type-assertion-style': 'off',
      // A branded number is a number: -mm(3) is meant.
      '@typescript-eslint/no-unsafe-unary-minus': 'off',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser } },
    rules: {
      // State is replaced whole and held raw, collections included.
      'svelte/prefer-svelte-reactivity': 'off',
      // `void bench.joint` is how an effect says what it follows.
      '@typescript-eslint/no-meaningless-void-operator': 'off',
    },
  },
  {
    files: ['**/*.svelte'],
    rules: {
      // The linter sees a component's callbacks as `any`; svelte-check knows and checks their types.
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      'no-restricted-syntax': [
        'error',
        NO_MARKUP_FROM_DATA,
        {
          selector: 'SvelteAttribute[key.name="style"] > SvelteLiteral',
          message: 'A static style attribute breaks the content security policy; use a class.',
        },
      ],
    },
  },
  {
    files: ['src/**/*.ts'],
    rules: {
      'no-restricted-exports': ['error', { restrictDefaultExports: { direct: true } }],
      'max-lines': ['error', { max: 300, skipBlankLines: true }],
    },
  },
  {
    files: [PURE, 'src/core.ts'],
    rules: {
      'no-restricted-globals': ['error', ...PAGE_GLOBALS],
      'no-restricted-properties': ['error', ...CHANCE_AND_CLOCK],
      'no-restricted-syntax': [
        'error',
        NO_MARKUP_FROM_DATA,
        {
          selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
          message: 'Take the time as an argument.',
        },
      ],
    },
  },
  ...floorRules(),
);
