/**
 * How long the model of the eye takes in plain Node, on the built core: a QUEST+ step with 60 calls
 * behind it (promised: 8 ms), and fitting 60 and 1000 calls. Printed, never asserted.
 */
import { eyeOf, tellingDistance } from '../../dist-core/core.js';
import { median, percentile } from './statistics.js';

const ROUNDS = 200;

/** Calls at whole steps about the limit, accepted inside and rejected past it but for every ninth. */
const calls = Array.from({ length: 1000 }, (_, i) => {
  const distance = (((i * 37) % 101) - 50) / 160;
  const rejected = distance > 0 !== (i % 9 === 0);
  return {
    ...{ kind: 'call', id: String(i), scale: 'ratio', way: 'limit', pxPerMm: 20, distance },
    spec: { asked: distance },
    truth: distance > 0 ? 'reject' : 'accept',
    answer: { call: rejected ? 'reject' : 'accept', fault: null, sure: 80 },
  };
});

const row = (name, work) => {
  for (let i = 0; i < 20; i++) work();
  const times = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  console.log(
    `${name.padEnd(42)} ${median(times).toFixed(4)}  ${percentile(times, 0.95).toFixed(4)}`,
  );
};

console.log('\nmodel of the eye, ms                       median     p95');
row('QUEST+ step, 60 calls', () => tellingDistance(calls.slice(0, 60), 'ratio', 0.7));
row('bias and scatter, 60 calls', () => eyeOf(calls.slice(0, 60)));
row('bias and scatter, 1000 calls', () => eyeOf(calls));
