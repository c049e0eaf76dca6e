/**
 * A reading of the JSON Schema keywords (draft 2020-12, validation vocabulary)
 * that the joint and limit set schemas use, written from the specification and
 * knowing nothing of joints or limits. An unknown keyword is an error, so that none is passed over.
 */
type Schema = Readonly<Record<string, unknown>>;

const ANNOTATIONS = ['$schema', 'title', 'description'];

export function accepts(schema: Schema, value: unknown): boolean {
  return Object.entries(schema).every(([keyword, wanted]) => {
    if (ANNOTATIONS.includes(keyword)) return true;
    const check = keywords[keyword];
    if (!check) throw new Error(`keyword ${keyword} isn't known here`);
    return check(value, wanted, schema);
  });
}

type Keyword = (value: unknown, wanted: unknown, schema: Schema) => boolean;

const keywords: Readonly<Record<string, Keyword>> = {
  type: (value, wanted) => typeOf(value) === wanted,
  const: (value, wanted) => value === wanted,
  enum: (value, wanted) => (wanted as readonly unknown[]).includes(value),
  minimum: (value, wanted) => typeof value !== 'number' || value >= (wanted as number),
  maximum: (value, wanted) => typeof value !== 'number' || value <= (wanted as number),
  maxItems: (value, wanted) => !Array.isArray(value) || value.length <= (wanted as number),
  items: (value, wanted) =>
    !Array.isArray(value) || value.every((item) => accepts(wanted as Schema, item)),
  required: (value, wanted) =>
    !isObject(value) || (wanted as readonly string[]).every((name) => Object.hasOwn(value, name)),
  properties: (value, wanted) =>
    !isObject(value) ||
    Object.entries(wanted as Readonly<Record<string, Schema>>).every(
      ([name, inner]) => !Object.hasOwn(value, name) || accepts(inner, value[name]),
    ),
  minItems: (value, wanted) => !Array.isArray(value) || value.length >= (wanted as number),
  maxLength: (value, wanted) =>
    typeof value !== 'string' || Array.from(value).length <= (wanted as number),
  pattern: (value, wanted) =>
    typeof value !== 'string' || new RegExp(wanted as string, 'u').test(value),
  minProperties: (value, wanted) =>
    !isObject(value) || Object.keys(value).length >= (wanted as number),
  maxProperties: (value, wanted) =>
    !isObject(value) || Object.keys(value).length <= (wanted as number),
  propertyNames: (value, wanted) =>
    !isObject(value) || Object.keys(value).every((name) => accepts(wanted as Schema, name)),
  additionalProperties: (value, wanted, schema) => {
    const known = Object.keys(schema['properties'] ?? {});
    return (
      !isObject(value) ||
      Object.keys(value).every(
        (name) =>
          known.includes(name) || (wanted !== false && accepts(wanted as Schema, value[name])),
      )
    );
  },
  not: (value, wanted) => !accepts(wanted as Schema, value),
  oneOf: (value, wanted) =>
    (wanted as readonly Schema[]).filter((inner) => accepts(inner, value)).length === 1,
};

function typeOf(value: unknown): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'array';
  return typeof value === 'number' && !Number.isFinite(value) ? 'not JSON' : typeof value;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeOf(value) === 'object';
}
