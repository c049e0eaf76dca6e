import {
  findNodeAtLocation,
  parseTree,
  type JSONPath,
  type Node,
  type ParseError,
} from 'jsonc-parser';
import {
  compileLimits,
  LimitsError,
  parseLimitSet,
  type CompiledLimitSet,
  type LimitSet,
} from '../limits/index.ts';
import type { Message } from '../units/index.ts';

/** Something wrong with a limit set: where in it, on which line of its text, and why. */
export interface LimitsProblem {
  /** `criteria[2].max.mm`; '' for the whole */
  readonly path: string;
  readonly line: number | null;
  readonly reason: Message;
}

export type ReadLimits =
  | { readonly ok: true; readonly set: LimitSet; readonly compiled: CompiledLimitSet }
  | { readonly ok: false; readonly problems: readonly LimitsProblem[] };

/** Far more than the longest published table comes to. */
export const LONGEST_LIMITS = 400_000;

/** The limit set in a file's text, whole, or everything that is wrong with it and on which line. */
export async function readLimits(text: string): Promise<ReadLimits> {
  if (text.length > LONGEST_LIMITS) return refused('', null, { key: 'bench_limits_file_too_long' });
  const errors: ParseError[] = [];
  const tree = treeOf(text, errors);
  const [slip] = errors;
  if (slip !== undefined || tree === undefined) {
    const line = lineAt(text, slip?.offset ?? 0);
    return refused('', line, { key: 'bench_limits_file_no_json' });
  }
  const read = await checkLimits(JSON.parse(text));
  if (read.ok) return read;
  return {
    ok: false,
    problems: read.problems.map((problem) => ({
      ...problem,
      line: lineAt(text, nearestOffset(pathOf(problem.path))),
    })),
  };

  /** Where the field stands, or the nearest thing round it that is there. */
  function nearestOffset(path: JSONPath): number {
    for (let length = path.length; length > 0; length--) {
      const node = tree && findNodeAtLocation(tree, path.slice(0, length));
      if (node) return node.offset;
    }
    return 0;
  }
}

/** The parsed text; nothing where it is nested deeper than any set, which no parser follows. */
function treeOf(text: string, errors: ParseError[]): Node | undefined {
  try {
    return parseTree(text, errors, { allowTrailingComma: false, disallowComments: true });
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** A set in plain data, parsed and compiled; every formula that can't be taken is named. */
export async function checkLimits(value: unknown): Promise<ReadLimits> {
  let set: LimitSet;
  try {
    set = parseLimitSet(value);
  } catch (error) {
    if (!(error instanceof LimitsError)) throw error;
    return refused(error.field, null, error.reason);
  }
  const compiled = await compileLimits(set);
  if (compiled.ok) return { ok: true, set, compiled: compiled.limits };
  const problems = compiled.problems.map(({ criterion, field, reason }): LimitsProblem => {
    const at = set.criteria.findIndex(({ id }) => id === criterion);
    return { path: `criteria[${at}].${field}`, line: null, reason };
  });
  return { ok: false, problems };
}

const refused = (path: string, line: number | null, reason: Message): ReadLimits => ({
  ok: false,
  problems: [{ path, line, reason }],
});

/** `criteria[2].max.mm` as the steps to it. */
function pathOf(path: string): JSONPath {
  return [...path.matchAll(/\[(\d+)\]|[^.[\]]+/gu)].map(([step, index]) =>
    index === undefined ? step : Number(index),
  );
}

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;
