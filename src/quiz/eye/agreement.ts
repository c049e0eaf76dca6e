import { estimate, type Estimate } from './estimate.ts';

/** Cohen's kappa, and what it is tested with. */
export interface Agreement {
  readonly kappa: Estimate;
  readonly standardError: number;
  /** standard error where there is no agreement but by chance */
  readonly standardErrorOfNone: number;
}

/**
 * Cohen's kappa of a square table of counts: agreement past what chance gives, 1 for all, 0 for no
 * more than chance; asymptotic standard errors of J. L. Fleiss, J. Cohen and B. S. Everitt, 1969.
 * Null where nothing was counted, or only one answer was ever given or right.
 */
export function agreementOf(table: readonly (readonly number[])[]): Agreement | null {
  const all = sum(table.map(sum));
  if (all === 0) return null;
  const shares = table.map((row) => row.map((count) => count / all));
  const rows = shares.map(sum);
  const columns = shares.map((_, j) => sum(shares.map((row) => row[j] ?? 0)));
  const agreed = sum(shares.map((row, i) => row[i] ?? 0));
  const byChance = sum(rows.map((row, i) => row * (columns[i] as number)));
  if (byChance > 1 - 1e-12) return null;
  const kappa = (agreed - byChance) / (1 - byChance);
  const away = 1 - kappa;
  const spread = sum(
    shares.map((row, i) =>
      sum(
        row.map((share, j) => {
          const both = (columns[i] as number) + (rows[j] as number);
          return share * (i === j ? (1 - both * away) ** 2 : (both * away) ** 2);
        }),
      ),
    ),
  );
  const expected = (kappa - byChance * away) ** 2;
  const ofNone = sum(
    rows.map((row, i) => row * (columns[i] as number) * (row + (columns[i] as number))),
  );
  const error = (variance: number): number =>
    Math.sqrt(Math.max(0, variance) / all) / (1 - byChance);
  const standardError = error(spread - expected);
  return {
    kappa: estimate(kappa, standardError),
    standardError,
    standardErrorOfNone: error(byChance + byChance * byChance - ofNone),
  };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
