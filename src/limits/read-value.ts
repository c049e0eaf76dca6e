import { LimitsError } from './limits-error.ts';

/** A value from outside on its way to becoming data: each reader takes it or refuses it by its path. */
export type Fields = Readonly<Record<string, unknown>>;

/** Text from outside is shown, never run; this is far more than a name or a clause needs. */
export const longestText = 200;

export function fieldsOf(value: unknown, path: string): Fields {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Fields;
  throw new LimitsError(path, { key: 'limits_data_no_record' });
}

/** Refuses a field that nothing reads: a slip in its name would otherwise pass for its absence. */
export function refuseOthers(fields: Fields, known: readonly string[], path: string): void {
  const other = Object.keys(fields).find((name) => !known.includes(name));
  if (other !== undefined) {
    throw new LimitsError(joined(path, other), { key: 'limits_data_unknown_field' });
  }
}

export function textOf(value: unknown, path: string): string {
  if (typeof value !== 'string') throw new LimitsError(path, { key: 'limits_data_no_text' });
  if (value.length > longestText) {
    throw new LimitsError(path, {
      key: 'limits_data_text_too_long',
      values: { most: longestText },
    });
  }
  return value;
}

/** A text that has something in it. */
export function filledText(value: unknown, path: string): string {
  const text = textOf(value, path);
  if (text.trim() === '') throw new LimitsError(path, { key: 'limits_data_empty' });
  return text;
}

export function numberOf(value: unknown, path: string, least: number, most: number): number {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new LimitsError(path, { key: 'limits_data_no_number' });
  }
  if (value < least || value > most) {
    throw new LimitsError(path, { key: 'limits_data_out_of_range', values: { least, most } });
  }
  return value;
}

export function flagOf(value: unknown, path: string): boolean {
  if (typeof value === 'boolean') return value;
  throw new LimitsError(path, { key: 'limits_data_no_flag' });
}

export function choiceOf<Choice extends string>(
  value: unknown,
  choices: readonly Choice[],
  path: string,
): Choice {
  const found = choices.find((choice) => choice === value);
  if (found === undefined) {
    throw new LimitsError(path, {
      key: 'limits_data_no_choice',
      values: { choices: choices.join(', ') },
    });
  }
  return found;
}

/** The only version there is; a later one is a file from a later program. */
export function versionOf(value: unknown): 1 {
  if (value === 1) return 1;
  throw new LimitsError('version', { key: 'limits_data_other_version' });
}

export function listOf<Item>(
  value: unknown,
  path: string,
  read: (item: unknown, path: string) => Item,
): readonly Item[] {
  if (!Array.isArray(value)) throw new LimitsError(path, { key: 'limits_data_no_list' });
  return value.map((item, at) => read(item, `${path}[${at}]`));
}

export const joined = (path: string, name: string): string =>
  path === '' ? name : `${path}.${name}`;
