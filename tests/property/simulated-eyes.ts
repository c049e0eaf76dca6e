import type { CallRecord } from '../../src/quiz/index.ts';
import { random, type Random } from '../../src/quiz/random.ts';
import { chanceOfReject, type Curve } from '../../src/quiz/eye/curve.ts';
import { callWith } from '../quiz/any-call.ts';

/** A call of a section at a distance whose truth is known by it, with what a test wants otherwise. */
export const callAt = (
  distance: number,
  call: CallRecord['answer']['call'],
  other: Partial<CallRecord> = {},
): CallRecord =>
  callWith({
    distance,
    truth: distance > 0 ? 'reject' : 'accept',
    fault: distance > 0 ? 'undercut.max' : null,
    answer: { call, fault: null, sure: 80 },
    ...other,
  });

/** What an eye calls a section at a distance. */
export const calls = (eye: Curve, distance: number, chance: Random): 'accept' | 'reject' =>
  chance.unit() < chanceOfReject(distance, eye) ? 'reject' : 'accept';

/** So many eyes from a fixed seed: bias −15 to 15 and scatter 3 to 15 per cent of the limit, evenly spread. */
export function simulatedEyes(count: number, seed: number): readonly Curve[] {
  const { unit } = random(seed);
  return Array.from({ length: count }, () => ({
    bias: -0.15 + 0.3 * unit(),
    scatter: 0.03 + 0.12 * unit(),
    lapse: 0.01,
  }));
}
