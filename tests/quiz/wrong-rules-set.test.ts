import { describe, expect, it } from 'vitest';
import { defaultJobSheet } from '../../src/limits/index.ts';
import type { JobSheet } from '../../src/limits/index.ts';
import { type Misreading } from '../../src/quiz/wrong-rules.ts';
import { about, butt, misread, said, tee } from './misread-cases.ts';

const { guard } = defaultJobSheet();

describe('the rules, misread', () => {
  it('are of every other column', () => {
    const inch = said({ column: 'in' }, 'aws-d11-static');
    expect(misread('otherColumn', about(tee(), inch, 'd11-conv2:convexity'), inch)).toEqual([
      { sheet: { ...inch.sheet, column: 'mm' } },
    ]);
  });

  it('line up another pair of surfaces, for a step alone', () => {
    const step = about(butt({ offset: 1 }), said(), '5071:misalignment');
    const { intendedAlignment } = step.sheet;
    const others = misread('otherAlignment', step).map(({ sheet }) => sheet?.intendedAlignment);
    expect([...others, intendedAlignment].sort()).toEqual([
      'centrelines',
      'faceFlush',
      'rootFlush',
    ]);
    expect(misread('otherAlignment', about(butt({ offset: 1 })))).toEqual([]);
  });

  it('take a short imperfection for one that runs on, or either for what nobody measured', () => {
    const extents = (extent: JobSheet['extent']) => {
      const one = said({ extent });
      const joint = butt({ capHeight: -0.3 });
      const question = about(joint, one, '511:underfill');
      return (['shortAsLong', 'lengthAssumedShort', 'lengthAssumedLong'] as const).map((rule) =>
        misread(rule, question, one).map(({ sheet }) => sheet?.extent),
      );
    };
    expect(extents('isolatedShort')).toEqual([['typical'], [], []]);
    expect(extents('unknown')).toEqual([[], ['isolatedShort'], ['typical']]);
    expect(extents('typical')).toEqual([[], [], []]);
  });

  it('count penetration or leave it out, whichever the sheet does not', () => {
    const proven = said({ penetrationProven: true });
    const as = (rule: Misreading, one = said(), joint = tee()) =>
      misread(rule, about(joint, one), one).map(({ sheet }) => sheet?.penetrationProven);
    expect(as('penetrationCounted')).toEqual([true]);
    expect(as('penetrationOverlooked')).toEqual([]);
    expect(as('penetrationCounted', proven)).toEqual([]);
    expect(as('penetrationOverlooked', proven)).toEqual([false]);
    expect(as('penetrationOverlooked', proven, butt())).toEqual([]);
  });

  it('pass over the doubt of an instrument, and a root that nobody sees', () => {
    const doubtful = said({ guard: { ...guard, factor: 2 } });
    expect(misread('doubtOverlooked', about(tee(), doubtful))).toEqual([
      { sheet: { ...doubtful.sheet, guard: { ...guard, factor: 0 } } },
    ]);
    const hidden = said({ rootAccessible: false });
    expect(misread('hiddenRootJudged', about(butt(), hidden))).toEqual([
      { sheet: { ...hidden.sheet, rootAccessible: true } },
    ]);
    expect(misread('hiddenRootJudged', about(tee(), hidden))).toEqual([]);
  });
});

describe('another row of the set', () => {
  const one = said({ column: 'mm' }, 'aws-d11-static');
  const question = about(tee({ convexity: 2.5 }), one, 'd11-conv2:convexity');

  it('stands alone in place of those for the same thing, without its conditions', () => {
    const found = misread('otherRow', question, one);
    expect(found.length).toBeGreaterThan(0);
    for (const { limits } of found) {
      const rows = (limits?.criteria ?? []).filter(
        ({ max, measurements }) => max !== undefined && measurements.includes('convexity'),
      );
      expect(rows).toHaveLength(1);
      const [row] = rows;
      expect(row?.id).not.toBe('d11-conv2');
      expect(row?.measurements).toEqual(['convexity']);
      expect(row).not.toHaveProperty('when');
      const id = row?.id ?? '';
      expect(limits?.trees[id]).not.toHaveProperty('when');
      expect(limits?.trees[id]).toHaveProperty('limit');
      expect(Object.keys(limits?.trees ?? {})).toEqual(Object.keys(one.limits.trees));
    }
  });

  it('is taken for every form, product and backing, whatever it was for', () => {
    const conditions = { forms: ['lap'], product: 'pipe', backing: 'strip', given: {} } as const;
    const isAbout = ({ id, max }: (typeof one.limits.criteria)[number]): boolean =>
      id.startsWith('d11-conv') && max !== undefined;
    const criteria = one.limits.criteria.map((row) =>
      isAbout(row) ? { ...row, ...conditions } : row,
    );
    const found = misread('otherRow', question, { ...one, limits: { ...one.limits, criteria } });
    expect(found.length).toBeGreaterThan(0);
    for (const { limits } of found) {
      const row = limits?.criteria.find(isAbout);
      expect(row).toBeDefined();
      for (const condition of ['when', ...Object.keys(conditions)])
        expect(row).not.toHaveProperty(condition);
    }
  });

  it('is one for each other row of the same sense', () => {
    const rows = one.limits.criteria.filter(
      ({ max, measurements }) => max !== undefined && measurements.includes('convexity'),
    );
    expect(misread('otherRow', question, one)).toHaveLength(rows.length - 1);
    const least = { ...question, decisive: { ...question.decisive, sense: 'min' } } as const;
    expect(misread('otherRow', least, one)).toEqual([]);
  });
});
