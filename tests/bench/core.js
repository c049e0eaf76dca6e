/**
 * How long build + measure + judge of each ready section takes in plain Node, on the built core.
 * Printed, never asserted. `npm run bench` builds the core first.
 */
import { readdirSync, readFileSync } from 'node:fs';
import {
  build,
  defaultJobSheet,
  defaultJoint,
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

/** Times of one set's judging, each in microseconds; the measuring is done before. */
function judging(limits, measured, sheet) {
  const once = () => {
    const start = performance.now();
    judge(measured, sheet, limits);
    return (performance.now() - start) * 1000;
  };
  for (let i = 0; i < WARM_UP; i++) once();
  return Array.from({ length: ROUNDS }, once);
}

const opening = defaultJobSheet();
const service = { stress: 'other', temperature: 'to350F', category: 'B', seam: 'girth' };
const sheet = { ...opening, service };
const welds = ['fillet', 'butt'].map((kind) => measure(build(defaultJoint(kind))));
console.log('\njudge alone, µs                            fillet    butt');
for (const limits of limitSets) {
  const column = limits.columns[0];
  const [fillet, butt] = welds.map((weld) => median(judging(limits, weld, { ...sheet, column })));
  console.log(
    `${limits.id.padEnd(42)} ${fillet.toFixed(1).padStart(6)}  ${butt.toFixed(1).padStart(6)}`,
  );
}

/** Reading the compiled sets from their text and tying their formulas, as when a set is first asked for. */
const setFolder = new URL('../../src/limits/sets/', import.meta.url);
const texts = readdirSync(setFolder)
  .filter((name) => name.endsWith('.compiled.json'))
  .map((name) => readFileSync(new URL(name, setFolder), 'utf8'));
const start = performance.now();
const read = texts.map((text) => JSON.parse(text));
const parsed = performance.now();
for (const limits of read) for (const weld of welds) judge(weld, sheet, limits);
const tied = performance.now();
console.log(
  `\nall ${read.length} compiled sets: read in ${(parsed - start).toFixed(1)} ms, ` +
    `tied and judged by once in ${(tied - parsed).toFixed(1)} ms`,
);
