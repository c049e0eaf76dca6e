/** A list or an object: what has parts. */
type Whole = Readonly<Record<string, unknown>>;

const isWhole = (value: unknown): value is Whole => typeof value === 'object' && value !== null;

/** Whether two plain JSON values say the same, whatever the order of their keys. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (!isWhole(a) || !isWhole(b)) return a === b;
  const keys = Object.keys(a);
  return (
    Array.isArray(a) === Array.isArray(b) &&
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && sameValue(a[key], b[key]))
  );
}
