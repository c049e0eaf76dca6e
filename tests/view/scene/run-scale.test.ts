import { describe, expect, test } from 'vitest';
import type { SkillId } from '../../../src/quiz/index.ts';
import { drawQuestion, QuizError, type Question } from '../../../src/quiz/index.ts';
import { callDrawing } from '../../../src/view/scene/call-drawing.ts';
import { mirrored } from '../../../src/view/scene/mirrored.ts';
import { heldScale, RUN_SAMPLE, runScale } from '../../../src/view/scene/run-scale.ts';
import { toPx } from '../../../src/view/scene/view-transform.ts';
import { sheetUnder } from '../../quiz/question-sheets.ts';

// The magnification of one run stays within a tenth, so that an eye is measured and not a lens:
// common practice, no source.

const { sheet, limits } = sheetUnder('iso5817-c');
const papers = [
  { width: 800, height: 600, phone: false },
  { width: 344, height: 330, phone: true },
] as const;
const skills: readonly SkillId[] = [
  'fillet.welded.leg.min',
  'butt.welded.undercut.max',
  'butt.fitUp.misalignment.max',
];

function questionsOf(skill: SkillId, count: number, from: number): readonly Question[] {
  const questions: Question[] = [];
  for (let seed = from; questions.length < count && seed < from + 4 * count; seed++) {
    const asked = seed % 2 === 0 ? 0.2 : -0.2;
    try {
      const spec = { version: 1, seed, skill, view: 'cut', asked } as const;
      questions.push(drawQuestion(spec, sheet, limits));
    } catch (error) {
      if (!(error instanceof QuizError)) throw error;
    }
  }
  return questions;
}

const shownOf = ({ measurements: { section, values }, known, mirrored: isTurned }: Question) => ({
  section: isTurned ? mirrored(section) : section,
  known: { plate: known === 't1' ? 0 : 1, mm: values[known]?.value ?? 0 } as const,
});

describe('The drawn size of a run', () => {
  test.each(skills)('of %s stays within a tenth of its first section’s', (skill) => {
    const sample = questionsOf(skill, RUN_SAMPLE, 9000).map(shownOf);
    const questions = questionsOf(skill, 30, 1).map(shownOf);
    for (const paper of papers) {
      const run = runScale(sample, paper);
      const drawn = (one: (typeof questions)[number], held: number | null) =>
        callDrawing({
          ...paper,
          ...one,
          view: 'cut',
          rootAccessible: true,
          held,
          runScale: run,
          trueScale: null,
        });
      let far = 0;
      for (const first of questions) {
        const held = drawn(first, null).view.scale;
        for (const later of questions) {
          const { scale } = drawn(later, held).view;
          if (Math.abs(scale / held - 1) > 0.1 + 1e-9) far++;
        }
      }
      expect(far).toBe(0);
    }
  });

  test.each(skills)('of %s leaves weld, toes and known size on the paper', (skill) => {
    const sample = questionsOf(skill, RUN_SAMPLE, 9000).map(shownOf);
    for (const paper of papers) {
      const run = runScale(sample, paper);
      for (const one of questionsOf(skill, 30, 1).map(shownOf)) {
        const { view, known } = callDrawing({
          ...paper,
          ...one,
          view: 'cut',
          rootAccessible: true,
          held: null,
          runScale: run,
          trueScale: null,
        });
        const { face, root, welds } = one.section;
        const points = [
          ...welds.flat().map(({ a }) => a),
          ...[face, root].flatMap((side) => side?.toes ?? side?.grooveEdges ?? []),
          ...known.points,
        ];
        for (const { x, y } of points.map((point) => toPx(view, point))) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(paper.width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(paper.height);
        }
      }
    }
  });

  test('is within a tenth of the one before, as near to what fits as that allows', () => {
    // fit · 0.92 between 9 and 11, and no closer than the paper allows
    expect(heldScale(11, 30, 10)).toBeCloseTo(10.12, 9);
    expect(heldScale(20, 30, 10)).toBeCloseTo(11, 9);
    expect(heldScale(5, 30, 10)).toBeCloseTo(9, 9);
    expect(heldScale(5, 8, 10)).toBe(8);
  });

  test('is unknown where no section is', () => {
    expect(runScale([], papers[0])).toBeNull();
  });
});
