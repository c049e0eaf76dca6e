/** What a session takes from outside: time, names, chance. */
export interface World {
  readonly now: () => Date;
  /** ms, for how long an answer took */
  readonly clock: () => number;
  readonly name: () => string;
  /** a whole number from 0 to 2^32 - 1 */
  readonly seed: () => number;
}

export const browserWorld: World = {
  now: () => new Date(),
  clock: () => performance.now(),
  name: () => uniqueName(),
  seed: () => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0,
};

/** A version 4 UUID (RFC 9562). The browser's own is only there on a secure origin, a classroom's server may be none. */
function uniqueName(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/u, '$1-$2-$3-$4-');
}
