type Part = Readonly<Record<string, unknown>>;

/**
 * A section, or what was measured on it, turned left to right: points and directions change sides,
 * arcs their sense, and an angle is walked from its other leg. No value changes.
 */
export const mirrored = <Whole>(part: Whole): Whole => turned(part) as Whole;

function turned(part: unknown): unknown {
  if (Array.isArray(part)) return part.map(turned);
  if (typeof part !== 'object' || part === null) return part;
  const fields = Object.entries(part).map(([name, value]) => [name, sided(name, value)]);
  const other = Object.fromEntries(fields) as Part;
  return other['kind'] === 'angle' ? { ...other, from: other['to'], to: other['from'] } : other;
}

function sided(name: string, value: unknown): unknown {
  if (typeof value !== 'number') return turned(value);
  return name === 'x' || name === 'bulge' ? -value : value;
}
