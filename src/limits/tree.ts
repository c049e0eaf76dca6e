/** What a formula may do; nothing here can loop, define, assign or reach outside. */
export type Operator =
  | 'mm'
  | 'in'
  | 'deg'
  | '+'
  | '-'
  | '*'
  | '/'
  | '^'
  | 'neg'
  | '<'
  | '<='
  | '>'
  | '>='
  | '=='
  | '!='
  | 'and'
  | 'or'
  | 'not'
  | 'min'
  | 'max'
  | 'abs'
  | 'sqrt'
  | 'sin'
  | 'cos'
  | 'tan';

/**
 * A compiled formula as plain JSON: a number, the name of a symbol, or an
 * operator with its parts. `["mm", 4]` is a number with its unit as printed.
 */
export type Tree = number | string | readonly [Operator, ...Tree[]];

/** Every symbol that a tree reads, each once, in the order it comes up. */
export function symbolsIn(tree: Tree): readonly string[] {
  if (typeof tree === 'number') return [];
  if (typeof tree === 'string') return [tree];
  const [, ...parts] = tree;
  return [...new Set(parts.flatMap(symbolsIn))];
}
