import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bind } from '../../../src/limits/evaluate.ts';
import { compileLimits } from '../../../src/limits/index.ts';
import { reach, reachOf } from '../../../src/limits/compile/reach.ts';
import type { Tree } from '../../../src/limits/tree.ts';
import { runs } from '../../runs.ts';
import { ownSet, row } from '../own-rows.ts';

const of = (tree: Tree, column: 'mm' | 'in' = 'mm') => reach(tree, 'underfill', {}, column);

describe('what a formula can come to', () => {
  it('follows from what its symbols can be: 0.1 t of plates from 2 to 40 mm is 0.2 to 4 mm', () => {
    expect(of(['*', 0.1, 'tMin'])).toEqual([expect.closeTo(0.2, 12), expect.closeTo(4, 12)]);
    expect(of(['-', 'tMin', ['mm', 50]])).toEqual([-48, -10]);
    expect(of(['min', ['*', 0.1, 'tMin'], ['mm', 1]])).toEqual([expect.closeTo(0.2, 12), 1]);
    expect(of(['max', ['*', 0.1, 'tMin'], ['mm', 1]])).toEqual([1, expect.closeTo(4, 12)]);
    expect(of('tMin', 'in')).toEqual([expect.closeTo(2 / 25.4, 12), expect.closeTo(40 / 25.4, 12)]);
  });

  it('says of a condition whether it is never or always true', () => {
    expect(of(['>', 'tMin', ['mm', 50]])).toEqual([0, 0]);
    expect(of(['>=', 'tMin', ['mm', 2]])).toEqual([1, 1]);
    expect(of(['<', 'tMin', ['mm', 10]])).toEqual([0, 1]);
    expect(of(['and', ['<', 'tMin', ['mm', 10]], ['>', 'tMin', ['mm', 50]]])).toEqual([0, 0]);
    expect(of(['not', ['>', 'tMin', ['mm', 50]]])).toEqual([1, 1]);
  });

  it('knows that a thing less itself is nothing, and refuses to divide by it', () => {
    expect(of(['-', 'tMin', 'tMin'])).toEqual([0, 0]);
    expect(() => of(['/', 'tMax', ['-', 'tMin', 'tMin']])).toThrow('division_by_zero');
    expect(of(['/', 'tMax', 'rootGap'])).toEqual([-Infinity, Infinity]);
  });

  it('holds every value that the formula takes', () => {
    const symbols = ['tMin', 'tMax', 'faceWidth', 'rootGap'];
    const { tree } = fc.letrec<{ tree: Tree }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        fc.constantFrom<Tree>(...symbols),
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc
          .tuple(fc.constantFrom('+', '-', '*', '/', 'min', 'max'), tie('tree'), tie('tree'))
          .map((parts) => parts as unknown as Tree),
        fc
          .tuple(fc.constantFrom('neg', 'abs', 'sqrt'), tie('tree'))
          .map((parts) => parts as unknown as Tree),
        tie('tree').map((part): Tree => ['^', part, 2]),
      ),
    }));
    const values = fc.record({
      tMin: fc.double({ min: 2, max: 40, noNaN: true }),
      tMax: fc.double({ min: 2, max: 40, noNaN: true }),
      faceWidth: fc.double({ min: 0, max: 200, noNaN: true }),
      rootGap: fc.double({ min: 0, max: 200, noNaN: true }),
    });
    let compared = 0;
    fc.assert(
      fc.property(tree, values, (formula, scope) => {
        let bounds: readonly [number, number];
        try {
          bounds = of(formula);
        } catch {
          return;
        }
        const value = bind<Record<string, number>>(formula, (name) => (at) => at[name] ?? 0)(scope);
        if (!Number.isFinite(value)) return;
        compared += 1;
        const slack = 1e-9 * Math.max(1, Math.abs(value));
        expect(value).toBeGreaterThanOrEqual(bounds[0] - slack);
        expect(value).toBeLessThanOrEqual(bounds[1] + slack);
      }),
      { numRuns: runs(20_000) },
    );
    expect(compared).toBeGreaterThan(runs(20_000) / 4);
  });

  it('knows which measurements may be less than nothing', () => {
    expect(reachOf('capPastGroove1')[0]).toBeLessThan(0);
    // a reinforcement is measured outward and never negative
    expect(reachOf('faceReinforcement.lower')[0]).toBe(0);
    expect(reachOf('underfill')[0]).toBe(0);
    expect(reachOf('toeAngle')).toEqual([0, 360]);
    // judged by size, whichever way the plates are out of line
    for (const by of ['misalignment', 'angleDeparture', 'angularMisalignment'] as const) {
      expect(reachOf(by)[0]).toBe(0);
    }
  });

  it('takes a condition on the sign of a step for one that may count', async () => {
    // positive when plate 2 lies towards the face side, negative the other way
    for (const step of ['faceStep', 'rootStep', 'centrelineOffset', 'angularMisalignment']) {
      const nothing: Tree = step === 'angularMisalignment' ? ['deg', 0] : ['mm', 0];
      expect(of(['<', step, nothing])).toEqual([0, 1]);
    }
    expect(of(['<', 'faceReinforcement.higher', ['mm', 0]])).toEqual([0, 0]);
    const down = { when: { mm: 'faceStep < 0 mm' }, max: { mm: '1 mm' } };
    const { ok } = await compileLimits(ownSet(row('down', 'underfill', down)));
    expect(ok).toBe(true);
  });
});

describe('the reach of each operator', () => {
  // m: a gap less a gap of another name, −200 to 200; g: 0 to 200; t: 2 to 40
  const m: Tree = ['-', 'rootGap', 'faceWidth'];
  const [g, t] = ['rootGap', 'tMin'] as const;
  const k5: Tree = ['mm', 5];
  const k300: Tree = ['mm', 300];
  const cases: readonly (readonly [Tree, readonly [number, number]])[] = [
    [m, [-200, 200]],
    [
      ['neg', t],
      [-40, -2],
    ],
    [
      ['abs', t],
      [2, 40],
    ],
    [
      ['abs', ['neg', t]],
      [2, 40],
    ],
    [
      ['abs', m],
      [0, 200],
    ],
    [
      ['abs', ['-', g, k300]],
      [100, 300],
    ],
    [
      ['abs', ['-', ['mm', 50], g]],
      [0, 150],
    ],
    [
      ['sqrt', ['*', t, t]],
      [2, 40],
    ],
    [
      ['sqrt', m],
      [0, Math.sqrt(200)],
    ],
    [
      ['sin', 'toeAngle'],
      [-1, 1],
    ],
    [
      ['cos', 'toeAngle'],
      [-1, 1],
    ],
    [
      ['tan', 'toeAngle'],
      [-Infinity, Infinity],
    ],
    [
      ['*', m, t],
      [-8000, 8000],
    ],
    [
      ['*', 0, ['/', t, g]],
      [0, 0],
    ],
    [
      ['/', t, g],
      [-Infinity, Infinity],
    ],
    [
      ['/', t, ['+', g, k5]],
      [2 / 205, 8],
    ],
    [
      ['/', t, ['neg', g]],
      [-Infinity, Infinity],
    ],
    [
      ['^', t, 2],
      [4, 1600],
    ],
    [
      ['^', m, 2],
      [0, 40000],
    ],
    [
      ['^', m, 3],
      [-8e6, 8e6],
    ],
    [
      ['^', ['-', g, k300], 2],
      [1e4, 9e4],
    ],
    [
      ['^', t, -1],
      [1 / 40, 1 / 2],
    ],
    [
      ['^', g, -1],
      [-Infinity, Infinity],
    ],
    [
      ['^', m, -1],
      [-Infinity, Infinity],
    ],
    [
      ['^', ['-', g, k300], -1],
      [-1 / 100, -1 / 300],
    ],
    [
      ['<', t, ['mm', 2]],
      [0, 0],
    ],
    [
      ['<', t, ['mm', 40]],
      [0, 1],
    ],
    [
      ['<', t, ['mm', 41]],
      [1, 1],
    ],
    [
      ['<=', t, ['mm', 40]],
      [1, 1],
    ],
    [
      ['<=', t, ['mm', 2]],
      [0, 1],
    ],
    [
      ['<=', t, ['mm', 1]],
      [0, 0],
    ],
    [
      ['>', t, ['mm', 40]],
      [0, 0],
    ],
    [
      ['>', t, ['mm', 2]],
      [0, 1],
    ],
    [
      ['>', t, ['mm', 1]],
      [1, 1],
    ],
    [
      ['>=', t, ['mm', 2]],
      [1, 1],
    ],
    [
      ['>=', t, ['mm', 40]],
      [0, 1],
    ],
    [
      ['>=', t, ['mm', 41]],
      [0, 0],
    ],
    [
      ['==', t, k5],
      [0, 1],
    ],
    [
      ['!=', t, k5],
      [0, 1],
    ],
    [
      ['and', ['>', t, ['mm', 1]], ['<', t, k5]],
      [0, 1],
    ],
    [
      ['and', ['>', t, ['mm', 1]], ['<', t, ['mm', 41]]],
      [1, 1],
    ],
    [
      ['or', ['>', t, ['mm', 41]], ['<', t, k5]],
      [0, 1],
    ],
    [
      ['or', ['>', t, ['mm', 41]], ['<', t, ['mm', 1]]],
      [0, 0],
    ],
    [
      ['or', ['>', t, ['mm', 1]], ['<', t, k5]],
      [1, 1],
    ],
    [
      ['not', ['<', t, k5]],
      [0, 1],
    ],
    [
      ['not', ['<', t, ['mm', 1]]],
      [1, 1],
    ],
    [
      ['not', ['<', t, ['mm', 41]]],
      [0, 0],
    ],
    [
      ['deg', 30],
      [30, 30],
    ],
    ['sheetAngle', [0, 180]],
    ['sheetLeg1', [0, 200]],
    ['toeAngle', [0, 360]],
    ['weldArea', [0, Infinity]],
    ['nothing of that name', [-Infinity, Infinity]],
  ];
  it.each(cases)('%j comes to %j', (tree, [least, most]) => {
    const [low, high] = of(tree);
    if (Number.isFinite(least)) expect(low).toBeCloseTo(least, 9);
    else expect(low).toBe(least);
    if (Number.isFinite(most)) expect(high).toBeCloseTo(most, 9);
    else expect(high).toBe(most);
  });

  it('turns lengths into the column’s unit, angles and plain numbers not', () => {
    expect(of('sheetLeg1', 'in')[1]).toBeCloseTo(200 / 25.4, 9);
    expect(of('toeAngle', 'in')).toEqual([0, 360]);
    expect(of('sheetAngle', 'in')).toEqual([0, 180]);
    expect(of(3, 'in')).toEqual([3, 3]);
  });

  it('names the division that it refuses', () => {
    expect(() => of(['/', 'tMax', ['-', 'tMin', 'tMin']])).toThrow('tMax / (tMin − tMin)');
  });

  it('takes each plate’s own thickness for what plates are drawn', () => {
    for (const id of ['t1', 't2', 'tMin', 'tMax'] as const) expect(reachOf(id)).toEqual([2, 40]);
    expect(reachOf('rootBevelAngle1')).toEqual([0, 360]);
    expect(reachOf('grooveAngle')).toEqual([0, 360]);
  });
});

async function problem(limits: object): Promise<string> {
  const result = await compileLimits(ownSet(row('own', 'underfill', limits)));
  return result.ok
    ? 'taken'
    : result.problems.map(({ field, reason }) => `${field} ${reason.key}`).join();
}

describe('a limit that can’t be meant', () => {
  it('is refused when no weld could ever meet it', async () => {
    expect(await problem({ max: { mm: '-1 mm' } })).toBe('max.mm limits_formula_never_met');
    expect(await problem({ max: { mm: 'tMin - 50 mm' } })).toBe('max.mm limits_formula_never_met');
    expect(await problem({ min: { mm: '300 mm' } })).toBe('min.mm limits_formula_never_met');
    expect(await problem({ measurements: ['toeAngle'], min: { any: '400 deg' } })).toBe(
      'min.any limits_formula_never_met',
    );
    expect(await problem({ measurements: ['t1'], min: { in: '2 in' } })).toBe(
      'min.in limits_formula_never_met',
    );
    const bothToes = { measurements: ['undercut1', 'undercut2'] };
    expect(await problem({ ...bothToes, max: { mm: '-1 mm' } })).toContain('never_met');
    // an angle of 170° is met by one of the two
    const either = { measurements: ['toeAngle', 'bevelAngle1'] };
    expect(await problem({ ...either, max: { any: '0.5 deg' } })).toBe('taken');
    // a plate of 39 mm meets 1.5 in
    expect(await problem({ measurements: ['tMin'], min: { in: '1.5 in' } })).toBe('taken');
  });

  it('is refused when its row would never count', async () => {
    const max = { mm: '1 mm' };
    expect(await problem({ when: { mm: 'tMin > 250 mm' }, max })).toBe(
      'when.mm limits_formula_never_counts',
    );
    // a document's bands go past the plates that are drawn here
    expect(await problem({ when: { mm: 'tMin > 45 mm' }, max })).toBe('taken');
    expect(await problem({ when: { mm: 'tMin < 1 mm' }, max })).toBe('taken');
    expect(await problem({ when: { mm: 'tMin < 3 mm and tMin > 5 mm' }, max })).toBe('taken');
  });

  it('is refused when it divides by what is always nothing', async () => {
    expect(await problem({ max: { any: 'tMin^2 / (tMin - tMin)' } })).toBe(
      'max.any limits_formula_division_by_zero',
    );
  });

  it('is taken where a measurement may be less than nothing', async () => {
    expect(await problem({ measurements: ['capPastGroove1'], max: { mm: '-1 mm' } })).toBe('taken');
  });
});
