/**
 * A second reading of a row's condition, by pattern and not by the program's formula parser: terms
 * such as `rootGap <= 1/16 in` or `sheetLeg1 == sheetLeg2`, joined by "and", then by "or", no brackets.
 */
export interface Term {
  readonly symbol: string;
  readonly absolute: boolean;
  readonly operator: string;
  /** a number in the unit of the text, or the other symbol */
  readonly right: number | string;
}

const TERM =
  /^(abs\()?(\w+)\)? (<=|>=|<|>|==) (?:(\d+(?:\.\d+)?)(?:\/(\d+))? (?:mm|in|deg)|(\w+))$/u;

function termOf(text: string): Term {
  const found = TERM.exec(text);
  if (found === null) throw new Error(`no term of a condition: ${text}`);
  const [, absolute, symbol = '', operator = '', top, bottom, other = ''] = found;
  const right = top === undefined ? other : Number(top) / Number(bottom ?? 1);
  return { symbol, absolute: absolute !== undefined, operator, right };
}

/** Any of the lists holds when all of its terms do. */
export const readCondition = (text: string): readonly (readonly Term[])[] =>
  text.split(' or ').map((all) => all.split(' and ').map(termOf));

/** Two figures this near are one: a measurement on the edge of a band is on it. */
const SAME = 1e-8;

/** Whether a condition holds for values in the unit of its text. */
export function holds(
  condition: readonly (readonly Term[])[],
  valueOf: (symbol: string) => number,
): boolean {
  return condition.some((terms) =>
    terms.every(({ symbol, absolute, operator, right }) => {
      const left = absolute ? Math.abs(valueOf(symbol)) : valueOf(symbol);
      const difference = left - (typeof right === 'number' ? right : valueOf(right));
      const sign = Math.abs(difference) < SAME ? 0 : Math.sign(difference);
      return { '<': sign < 0, '<=': sign <= 0, '>': sign > 0, '>=': sign >= 0, '==': sign === 0 }[
        operator
      ];
    }),
  );
}
