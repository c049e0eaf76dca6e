import type { JobSheet } from '../limits/index.ts';
import { drawQuestion } from './draw/draw-question.ts';
import type { LimitSet } from './limit-set.ts';
import type { Question } from './question.ts';
import { QuizError } from './quiz-error.ts';
import type { SkillId } from './skill.ts';
import { skillsOf } from './skills.ts';

/** Parts of a skill's reach that questions are drawn at, on either side. */
const PLACES = [0.8, -0.8, 0.4, -0.4] as const;

/** So many questions of one skill as a run of it may ask them, from seeds of their own; fewer where some can't be drawn. */
export function possibleQuestions(
  skill: SkillId,
  sheet: JobSheet,
  limits: LimitSet,
  count: number,
): readonly Question[] {
  const found = skillsOf(sheet, limits).find(({ id }) => id === skill);
  const [view] = found?.views ?? [];
  if (found === undefined || view === undefined) return [];
  return Array.from({ length: count }, (_, seed) => seed).flatMap((seed) => {
    const asked = found.refers
      ? (found.truths[seed % found.truths.length] ?? 'refer')
      : found.reach * (PLACES[seed % PLACES.length] ?? 0);
    try {
      return [drawQuestion({ version: 1, seed, skill, view, asked }, sheet, limits)];
    } catch (error) {
      if (error instanceof QuizError) return [];
      throw error;
    }
  });
}
