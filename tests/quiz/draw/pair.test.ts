import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/joint/index.ts';
import { distanceOf } from '../../../src/quiz/distance.ts';
import type { SkillId } from '../../../src/quiz/index.ts';
import { drawPlaced, type Target } from '../../../src/quiz/draw/pair.ts';
import { drawn, patience, wantedOf } from './wanted.ts';

/** The fields in which joints differ. */
const differing = (joints: readonly Joint[]): readonly string[] => {
  const [first, ...others] = joints;
  return Object.keys(first ?? {}).filter((name) =>
    others.some((other) => Reflect.get(other, name) !== Reflect.get(first ?? {}, name)),
  );
};

describe('joints at each of the wanted distances', () => {
  it.each<readonly [SkillId, readonly string[]]>([
    ['fillet.welded.undercut.max', ['undercut1Depth', 'undercut2Depth']],
    ['fillet.welded.leg.min', ['leg1', 'leg2']],
    ['butt.welded.faceReinforcement.max', ['capHeight']],
    ['butt.fitUp.rootOpening.max', ['rootOpening']],
    ['butt.welded.misalignment.max', ['offset']],
  ])('of %s differ in what drives them alone', (id, fields) => {
    const all = drawn(wantedOf(id));
    expect(all.length).toBeGreaterThan(25);
    for (const placed of all) {
      const changed = differing(placed.map(({ joint }) => joint));
      expect(changed).toHaveLength(1);
      expect(fields).toContain(changed[0]);
      expect(placed.map(({ decisive }) => distanceOf(decisive))).toEqual([
        expect.closeTo(0.2, 6),
        expect.closeTo(-0.2, 6),
      ]);
      expect(new Set(placed.map(({ decisive }) => decisive.measurement)).size).toBe(1);
    }
  });

  it('are none at all where that is the only way to be inside', () => {
    const clean = drawn(
      wantedOf('fillet.welded.overlap.max', {
        distances: () => [0.8, -0.8, Number.NEGATIVE_INFINITY],
      }),
    );
    expect(clean.length).toBeGreaterThan(10);
    for (const placed of clean) {
      expect(placed.map(({ decisive }) => decisive.measured)).toEqual([
        expect.closeTo(0.8, 6),
        0,
        0,
      ]);
    }
    const none = drawn(
      wantedOf('fillet.welded.undercut.max', { distances: () => [Number.NEGATIVE_INFINITY] }),
    );
    for (const [only] of none) expect(only?.decisive.measured).toBe(0);
    expect(none.length).toBeGreaterThan(10);
  });

  it('are about either toe, and every place that the skill is measured at', () => {
    const places = drawn(wantedOf('fillet.welded.undercut.max')).map(
      ([placed]) => placed?.decisive.measurement,
    );
    expect(new Set(places)).toEqual(new Set(['undercut1', 'undercut2']));
    const legs = drawn(wantedOf('fillet.welded.leg.min')).map(
      ([placed]) => placed?.decisive.measurement,
    );
    expect(new Set(legs)).toEqual(new Set(['leg1', 'leg2']));
  });

  it('are asked about with the limit that they have, each form once', () => {
    const targets: Target[] = [];
    const wanted = wantedOf('fillet.welded.undercut.max', {
      distances: (target) => {
        targets.push(target);
        return [0.1];
      },
    });
    const placed = drawPlaced(7, wanted, patience);
    expect(placed).toHaveLength(1);
    for (const { sense, unit, limit } of targets) {
      expect([sense, unit]).toEqual(['max', 'mm']);
      // ISO 5817 level C: a tenth of the thickness, at most 0.5 mm
      expect(limit).toBeLessThanOrEqual(0.5);
      expect(limit).toBeGreaterThan(0.2);
    }
  });

  it('have everything else out of question: comfortably inside, or left open before', () => {
    for (const id of ['butt.welded.undercut.max', 'fillet.welded.leg.min'] as const) {
      for (const placed of drawn(wantedOf(id))) {
        for (const { checks, decisive } of placed) {
          const rejects = checks.filter(({ call }) => call === 'reject');
          const own = distanceOf(decisive) > 0;
          expect(rejects.some((check) => check.id === decisive.id)).toBe(own);
          if (!own) expect(rejects).toEqual([]);
        }
      }
    }
  });

  it('are the same for the same seed', () => {
    const wanted = wantedOf('butt.welded.underfill.max');
    expect(drawPlaced(3, wanted, patience)).toEqual(drawPlaced(3, wanted, patience));
    expect(drawPlaced(3, wanted, patience)).not.toEqual(drawPlaced(4, wanted, patience));
  });
});

describe('patience', () => {
  it('ends with the forms', () => {
    expect(
      drawPlaced(1, wantedOf('fillet.welded.undercut.max'), { forms: 0, tried: 9 }),
    ).toBeNull();
  });

  it('ends with so many forms that had the check and did not serve', () => {
    for (const tried of [1, 3, 6]) {
      let asked = 0;
      let looked = 0;
      const wanted = wantedOf('butt.fitUp.rootOpening.max', {
        distances: () => {
          asked++;
          return [0.1];
        },
        suits: () => {
          looked++;
          return false;
        },
      });
      expect(drawPlaced(1, wanted, { forms: 150, tried })).toBeNull();
      expect(asked).toBe(tried);
      expect(looked).toBeLessThanOrEqual(tried);
      expect(looked).toBeGreaterThan(0);
    }
  });

  it('does not count forms that have no such check: square edges have no groove angle', () => {
    let asked = 0;
    const wanted = wantedOf('butt.fitUp.grooveAngle.max', {
      distances: () => {
        asked++;
        return [0.1];
      },
      suits: () => false,
    });
    expect(drawPlaced(1, wanted, { forms: 40, tried: 40 })).toBeNull();
    // one preparation of seven
    expect(asked).toBeLessThan(40);
    expect(asked).toBeGreaterThan(25);
  });

  it('asks whether each of them suits, in their order', () => {
    const seen: (readonly [number, number])[] = [];
    const wanted = wantedOf('butt.fitUp.rootOpening.max', {
      suits: (_, distance, index) => seen.push([distance, index]) > 0,
    });
    expect(drawPlaced(2, wanted, patience)).toHaveLength(2);
    expect(seen.slice(-2)).toEqual([
      [0.2, 0],
      [-0.2, 1],
    ]);
  });

  it('is for nothing of a skill of another kind of joint', () => {
    expect(drawPlaced(1, wantedOf('butt.fitUp.leg.min'), { forms: 20, tried: 9 })).toBeNull();
    expect(
      drawPlaced(1, wantedOf('fillet.welded.rootOpening.max'), { forms: 20, tried: 9 }),
    ).toBeNull();
  });
});
