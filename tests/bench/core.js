/**
 * How long build + measure + judge of each ready section takes in plain Node, on the built core.
 * Printed, never asserted. `npm run bench` builds the core first.
 */
import { readdirSync, readFileSync } from 'node:fs';
import {
  build,
  judge,
  limitSets,
  measure,
  parseJobSheet,
  parseJoint,
} from '../../dist-core/core.js';
import { median, percentile } from './statistics.js';

const WARM_UP = 300;
const ROUNDS = 1000;
const folder = new URL('../../src/state/ready-sections/', import.meta.url);

/** One timed pass from plain joint to checks, in milliseconds. */
function pass(joint, sheet, limits) {
  const start = performance.now();
  judge(measure(build(joint)), sheet, limits);
  return performance.now() - start;
}

console.log('build + measure + judge, ms                 median     p95');
const medians = [];
for (const name of readdirSync(folder).sort()) {
  const document = JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
  const joint = parseJoint(document.joint);
  const sheet = parseJobSheet(document.sheet);
  const limits = limitSets.find(({ id }) => id === sheet.limitSet);
  for (let i = 0; i < WARM_UP; i++) pass(joint, sheet, limits);
  const times = Array.from({ length: ROUNDS }, () => pass(joint, sheet, limits));
  medians.push(median(times));
  console.log(
    `${name.padEnd(42)} ${median(times).toFixed(4)}  ${percentile(times, 0.95).toFixed(4)}`,
  );
}
console.log(`${'slowest ready section'.padEnd(42)} ${Math.max(...medians).toFixed(4)}`);
