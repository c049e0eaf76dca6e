import { build } from '../../src/joint/index.ts';
import type { Joint } from '../../src/joint/index.ts';
import { judge } from '../../src/limits/index.ts';
import { measure } from '../../src/measure/index.ts';
import { faultOn } from '../../src/quiz/index.ts';
import type { Question } from '../../src/quiz/index.ts';
import type { SheetCase } from './question-sheets.ts';

/** A question about a joint made by hand, decided by the check with this id. */
export function questionAbout(joint: Joint, { sheet, limits }: SheetCase, id: string): Question {
  const measurements = measure(build(joint));
  const checks = judge(measurements, sheet, limits);
  const decisive = checks.find((check) => check.id === id);
  if (decisive === undefined)
    throw new Error(`no check ${id} among ${checks.map((c) => c.id).join(' ')}`);
  const truth = decisive.call as Question['truth'];
  return {
    spec: { version: 1, seed: 0, skill: 'fillet.welded.leg.min', view: 'cut', asked: 0 },
    sheet,
    joint,
    measurements,
    checks,
    either: checks,
    decisive,
    truth,
    fault: truth === 'reject' ? faultOn(joint, decisive) : null,
    scale: 'ratio',
    distance: 0,
    exceedance: 0,
    known: 't1',
    mirrored: false,
    recorded: [],
    choices: [...new Set(checks.map((check) => faultOn(joint, check)))],
  };
}
