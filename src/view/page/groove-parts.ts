import type { Toleranced } from '../../limits/index.ts';

/** One column of the table of the preparation: what it reads of a dimension, and the dimension with it changed. */
export interface GroovePart {
  readonly id: string;
  /** message keys: the column's head, and "{name}, …" for the field */
  readonly head: string;
  readonly label: string;
  /** an empty field means that nothing is said */
  readonly optional: boolean;
  readonly read: <T>(of: Toleranced<T>) => T | null;
  /** `nothing` stands where a tolerance has one side only */
  readonly write: <T>(of: Toleranced<T>, value: T | null, nothing: T) => Toleranced<T>;
}

const named = (id: string, head: string, label: string, optional: boolean) =>
  ({ id, head, label, optional }) as const;

/** What the WPS asks: a nominal, and how far the fit-up may be under and over. */
export const fittedParts: readonly GroovePart[] = [
  {
    ...named('nominal', 'bench_sheet_head_nominal', 'bench_sheet_nominal', true),
    read: ({ nominal }) => nominal,
    write: (of, nominal) => ({ ...of, nominal }),
  },
  {
    ...named('minus', 'bench_sheet_head_minus', 'bench_sheet_minus', false),
    read: ({ minus }) => minus,
    write: (of, value, nothing) => ({ ...of, minus: value ?? nothing }),
  },
  {
    ...named('plus', 'bench_sheet_head_plus', 'bench_sheet_plus', false),
    read: ({ plus }) => plus,
    write: (of, value, nothing) => ({ ...of, plus: value ?? nothing }),
  },
];

/** What the drawing details in place of the nominal, and how far a drawing may go from it. */
export const detailedParts: readonly GroovePart[] = [
  {
    ...named('drawn', 'sheet_detail_head_drawn', 'sheet_detail_drawn', true),
    read: ({ drawn }) => drawn ?? null,
    write({ nominal, minus, plus, detailed }, drawn) {
      const others = { nominal, minus, plus, ...(detailed === undefined ? {} : { detailed }) };
      return drawn === null ? others : { ...others, drawn };
    },
  },
  {
    ...named('minus', 'sheet_detail_head_minus', 'sheet_detail_minus', true),
    read: ({ detailed }) => detailed?.minus ?? null,
    write: (of, value, nothing) => within(of, 'minus', value, nothing),
  },
  {
    ...named('plus', 'sheet_detail_head_plus', 'sheet_detail_plus', true),
    read: ({ detailed }) => detailed?.plus ?? null,
    write: (of, value, nothing) => within(of, 'plus', value, nothing),
  },
];

function within<T>(
  of: Toleranced<T>,
  side: 'minus' | 'plus',
  value: T | null,
  nothing: T,
): Toleranced<T> {
  // an empty field of a tolerance that isn't there says nothing
  if (value === null && of.detailed === undefined) return of;
  const both = of.detailed ?? { minus: nothing, plus: nothing };
  return { ...of, detailed: { ...both, [side]: value ?? nothing } };
}
