/**
 * How long the next question takes, from a spec to a joint whose truth is known, in plain Node on the
 * built core; and what can be asked at all. Printed, never asserted. `npm run bench` builds the core
 * first.
 */
import {
  defaultJobSheet,
  drawQuestion,
  gradeAnswer,
  limitSets,
  skillsOf,
} from '../../dist-core/core.js';
import { median, percentile } from './statistics.js';

const EACH = 40;

const timed = (work) => {
  const start = performance.now();
  const made = work();
  return [performance.now() - start, made];
};

console.log(
  'questions, ms                     skills  found in    median     p95   slowest     grade',
);
for (const limits of limitSets) {
  const sheet = { ...defaultJobSheet(), limitSet: limits.id, column: limits.columns[0] };
  const [found, skills] = timed(() => skillsOf(sheet, limits));
  const [times, grades] = [[], []];
  for (const { id, reach } of skills.filter((skill) => skill.reach > 0)) {
    for (let seed = 0; seed < EACH; seed++) {
      const asked = ((seed % 2 ? 1 : -1) * reach * (seed + 1)) / EACH;
      const spec = { version: 1, seed, skill: id, view: 'cut', asked };
      const [took, question] = timed(() => drawQuestion(spec, sheet, limits));
      times.push(took);
      const call = question.truth === 'accept' ? 'reject' : 'accept';
      grades.push(timed(() => gradeAnswer(question, { call, fault: null, sure: 80 }, limits))[0]);
    }
  }
  const figures = [median(times), percentile(times, 0.95), Math.max(...times), median(grades)];
  console.log(
    `${limits.id.padEnd(32)} ${String(skills.length).padStart(7)} ${found.toFixed(0).padStart(9)} ` +
      figures.map((figure) => figure.toFixed(2).padStart(9)).join(' '),
  );
}
