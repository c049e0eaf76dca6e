/**
 * The floors of the house, lowest first. A floor may import from the floors listed in `stands on`,
 * and from those only; `limits` and `gauge`, and likewise `quiz`, `lesson` and `record`, stand
 * side by side. `gauge` and `record` have no folder yet: their places are kept for later floors.
 */
export const FLOORS = {
  units: [],
  geometry: ['units'],
  joint: ['units', 'geometry'],
  measure: ['units', 'geometry', 'joint'],
  limits: ['units', 'geometry', 'joint', 'measure'],
  gauge: ['units', 'geometry', 'joint', 'measure'],
  quiz: ['units', 'geometry', 'joint', 'measure', 'limits', 'gauge'],
  lesson: ['units', 'geometry', 'joint', 'measure', 'limits', 'gauge'],
  record: ['units', 'geometry', 'joint', 'measure', 'limits', 'gauge'],
};

/** Above the pure floors: sessions with runes, then the components. */
export const UPPER = ['state', 'view'];

const names = [...Object.keys(FLOORS), ...UPPER];

/** Import patterns that no file of the named pure floor may use, each with the reason shown. */
function forbiddenIn(floor) {
  const above = names.filter((name) => name !== floor && !FLOORS[floor].includes(name));
  const below = FLOORS[floor];
  const patterns = [
    {
      regex: `(^|/)(${above.join('|')})/`,
      message: `src/${floor} stands on ${below.join(', ') || 'nothing'}; imports point down only.`,
    },
    {
      regex: '(^|/)core\\.ts$',
      message: 'core.ts is the face of the floors; no floor looks at its own face.',
    },
    {
      // d3-random draws numbers and d3-dsv reads tables, not pages.
      regex: '^(node:|svelte|@inlang|d3($|/|-(?!(?:random|dsv)$)))',
      message:
        'Below state: plain TypeScript, no Svelte, no d3 but d3-random and d3-dsv, no Node module.',
    },
    {
      regex: '^\\.{1,2}/.*(?<!\\.(ts|json))$',
      message: 'Relative imports below state carry their extension, so that bare Node runs them.',
    },
  ];
  if (below.length > 0) patterns.push(onlyByIndex(below));
  return patterns;
}

function onlyByIndex(floors) {
  return {
    regex: `(^|/)(${floors.join('|')})/(?!index\\.ts$)`,
    message: 'Another floor is reached through its index.ts.',
  };
}

const MATHJS = {
  regex: '^mathjs($|/)',
  message: 'mathjs is loaded late and by src/limits/compile only.',
};

/** One restriction block for each pure floor, then state, view and the public face. */
export function floorRules() {
  const restrict = (files, patterns, ignores = []) => ({
    files,
    ignores,
    rules: { 'no-restricted-imports': ['error', { patterns }] },
  });
  const pure = Object.keys(FLOORS);
  const compiler = 'src/limits/compile/**';
  return [
    ...pure.map((floor) =>
      restrict([`src/${floor}/**/*.ts`], [...forbiddenIn(floor), MATHJS], [compiler]),
    ),
    restrict([`${compiler}/*.ts`], forbiddenIn('limits')),
    restrict(
      ['src/state/**/*.ts'],
      [
        { regex: '(^|/)view/(?!messages/)', message: 'state stands below view.' },
        { regex: '^d3($|/|-(?!(?:random|dsv)$))', message: 'd3 belongs to view.' },
        MATHJS,
        onlyByIndex(pure),
      ],
    ),
    restrict(
      ['src/view/**/*.{ts,svelte}'],
      [
        { regex: '(^|/)core\\.ts$', message: 'Views import floor indexes.' },
        MATHJS,
        onlyByIndex(pure),
      ],
    ),
    restrict(
      ['src/core.ts'],
      [
        { regex: `/(${UPPER.join('|')})/`, message: 'The public face has no page behind it.' },
        MATHJS,
        onlyByIndex(pure),
      ],
    ),
  ];
}
