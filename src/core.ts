/**
 * The one public face of the floors: joint in; section, measurements and checks out. Pure, no
 * page; runs in plain Node once `npm run build:core` has built it. Views import the floors' own
 * indexes instead.
 */
export {
  build,
  defaultJoint,
  JointError,
  jointFaults,
  jointSchema,
  parametersFor,
  parametersOf,
  parseJoint,
} from './joint/index.ts';
export type { Joint, Section } from './joint/index.ts';
export { measure, measurementCatalogue, sizeForRatio } from './measure/index.ts';
export type { CatalogueEntry, Measurement, MeasurementId, Measurements } from './measure/index.ts';
export {
  compileLimits,
  defaultJobSheet,
  judge,
  judgeAll,
  limitSets,
  limitSetSchema,
  LimitsError,
  overallCall,
  parseJobSheet,
  parseLimitSet,
} from './limits/index.ts';
export type { Check, JobSheet } from './limits/index.ts';
export { drawQuestion, eyeOf, gradeAnswer, QuizError, skillsOf } from './quiz/index.ts';
export { tallyOf, tellingDistance } from './quiz/index.ts';
export type { Answer, Eye, Grade, Question, QuestionSpec, SheetSkill } from './quiz/index.ts';
export { formatLength, parseLength } from './units/index.ts';
export type { Message } from './units/index.ts';
