import { describe, expect, it } from 'vitest';
import { misreadings } from '../../src/quiz/wrong-rules.ts';
import { about, butt, misread, mm, said, tee, valueIn } from './misread-cases.ts';

describe('a wrong rule', () => {
  it('is none where there is nothing to misread', () => {
    const plain = about(tee());
    const possible = misreadings.filter((rule) => misread(rule, plain).length > 0);
    // a leg that may be taken for a throat; the other leg; and penetration that might be counted
    expect(possible).toEqual(['legAsThroat', 'otherLeg', 'penetrationCounted']);
  });

  it('of a fillet is none of a butt weld', () => {
    const plain = about(butt());
    const possible = misreadings.filter((rule) => misread(rule, plain).length > 0);
    expect(possible).toEqual([]);
  });
});

describe('the size on the sheet, misread', () => {
  it('is a throat for a leg, without its second leg', () => {
    const one = said({ size: { as: 'leg', first: mm(6), second: mm(9) } });
    const [sheet] = misread('legAsThroat', about(tee(), one)).map((found) => found.sheet);
    expect(sheet).toEqual({
      ...one.sheet,
      size: { ...one.sheet.size, as: 'throat', second: null },
    });
    expect(misread('throatAsLeg', about(tee(), one))).toEqual([]);
  });

  it('is a leg for a throat', () => {
    const one = said({ size: { as: 'throat', first: mm(5), second: null } });
    const question = about(tee(), one, '5213:isoscelesThroat');
    expect(misread('throatAsLeg', question)).toEqual([
      { sheet: { ...one.sheet, size: { ...one.sheet.size, as: 'leg' } } },
    ]);
    expect(misread('legAsThroat', question)).toEqual([]);
  });

  it('has its legs on the wrong plates, where there are two', () => {
    const two = said({ size: { as: 'leg', first: mm(6), second: mm(9) } });
    expect(misread('legsSwapped', about(tee(), two))).toEqual([
      { sheet: { ...two.sheet, size: { ...two.sheet.size, first: mm(9), second: mm(6) } } },
    ]);
    expect(misread('legsSwapped', about(butt(), two))).toEqual([]);
    const throat = { ...two.sheet, size: { ...two.sheet.size, as: 'throat' as const } };
    expect(misread('legsSwapped', { ...about(tee(), two), sheet: throat })).toEqual([]);
  });
});

describe('another measurement put to the limit', () => {
  it('is the other leg, where it is another', () => {
    const question = about(tee());
    expect(misread('otherLeg', question)).toEqual([
      { values: { leg1: valueIn(question, 'leg2') } },
    ]);
    const second = about(tee(), said(), 'sheet_leg:leg2');
    expect(misread('otherLeg', second)).toEqual([{ values: { leg2: valueIn(second, 'leg1') } }]);
    expect(misread('otherLeg', about(butt()))).toEqual([]);
  });

  it('is what is seen of a leg, where metal lies over the plate beyond it', () => {
    const rolled = tee({ overlap1: 1.5, overlap2: 1 });
    const first = about(rolled);
    expect(misread('visibleLeg', first)).toEqual([
      { values: { leg1: valueIn(first, 'visibleLeg1') } },
    ]);
    expect(valueIn(first, 'visibleLeg1')).toBeGreaterThan(valueIn(first, 'leg1') + 1);
    const second = about(rolled, said(), 'sheet_leg:leg2');
    expect(misread('visibleLeg', second)).toEqual([
      { values: { leg2: valueIn(second, 'visibleLeg2') } },
    ]);
    expect(misread('visibleLeg', about(butt()))).toEqual([]);
  });

  it('is a cap from the other lines', () => {
    const stepped = about(butt({ offset: 1 }));
    expect(misread('otherDatum', stepped)).toEqual([
      { values: { 'faceReinforcement.higher': valueIn(stepped, 'faceReinforcement.lower') } },
      { values: { 'faceReinforcement.higher': valueIn(stepped, 'faceReinforcement.toes') } },
    ]);
    const root = about(butt({ offset: 1 }), said(), '504:rootReinforcement.higher');
    expect(misread('otherDatum', root)).toHaveLength(2);
    expect(misread('otherDatum', about(tee()))).toEqual([]);
  });

  it('is an underfill from the plate that stands higher', () => {
    const low = about(butt({ capHeight: -0.8, offset: 1 }), said(), '511:underfill');
    expect(misread('otherDatum', low)).toEqual([
      { values: { underfill: valueIn(low, 'underfillHigh') } },
    ]);
  });

  it('is a dip that stays above the plates', () => {
    const dipped = about(butt({ capDip: 0.6 }), said(), '511:underfill');
    expect(misread('dipAsUnderfill', dipped)).toEqual([
      { values: { underfill: valueIn(dipped, 'capDip') } },
    ]);
    expect(valueIn(dipped, 'capDip')).toBeGreaterThan(0.1);
    expect(misread('dipAsUnderfill', about(butt(), said(), '511:underfill'))).toEqual([]);
  });

  it('is the thickness of the other plate, where they differ', () => {
    const uneven = about(butt({ t2: 15 }));
    expect(misread('otherThickness', uneven)).toEqual([
      { values: { t1: 15, t2: 12, tMin: 15, tMax: 12 } },
    ]);
    const turned = about(butt({ t1: 15 }));
    expect(misread('otherThickness', turned)).toEqual([
      { values: { t1: 12, t2: 15, tMin: 15, tMax: 12 } },
    ]);
    expect(misread('otherThickness', about(butt()))).toEqual([]);
  });

  it('leaves the gap out, of all but the gap', () => {
    const gap = about(tee({ rootGap: 1 }));
    expect(misread('gapOverlooked', gap)).toEqual([{ values: { rootGap: 0 } }]);
    const itself = { ...gap, decisive: { ...gap.decisive, measurement: 'rootGap' } } as const;
    expect(misread('gapOverlooked', itself)).toEqual([]);
    expect(misread('gapOverlooked', about(tee()))).toEqual([]);
  });
});

describe('a throat, taken otherwise', () => {
  const one = said({ size: { as: 'throat', first: mm(5), second: null } });
  const throat = (changed: object) => about(tee(changed), one, '5213:isoscelesThroat');

  it('runs to the straight line between the toes', () => {
    const hollow = throat({ convexity: -1 });
    expect(misread('chordThroat', hollow)).toEqual([
      { values: { isoscelesThroat: valueIn(hollow, 'chordThroat') } },
    ]);
    // legs 8 and 9: 8 · 9 / √(64 + 81) = 5.979 from the corner to the line between the toes
    expect(valueIn(hollow, 'chordThroat')).toBeCloseTo(5.979, 3);
  });

  it('runs to the crown, where there is one', () => {
    const proud = throat({ convexity: 1 });
    const more = valueIn(proud, 'chordThroat') + valueIn(proud, 'convexity');
    expect(misread('crownCounted', proud)).toEqual([{ values: { isoscelesThroat: more } }]);
    expect(misread('crownCounted', throat({ convexity: -1 }))).toEqual([]);
    expect(misread('crownCounted', throat({ convexity: 0 }))).toEqual([]);
  });

  // a size is the leg of an equal triangle: its throat over cos(90° / 2)
  it('of a size goes by the leg of the same triangle', () => {
    const hollow = throat({ convexity: -1 });
    const sized = {
      ...hollow,
      decisive: { ...hollow.decisive, measurement: 'sizeEqual' },
    } as const;
    const [found] = misread('chordThroat', sized);
    expect(found?.values?.sizeEqual).toBeCloseTo(valueIn(hollow, 'chordThroat') * Math.SQRT2, 9);
  });

  it('is nothing to a leg, nor to a throat that may not be more', () => {
    expect(misread('chordThroat', about(tee({ convexity: -1 })))).toEqual([]);
    const hollow = throat({ convexity: -1 });
    const most = { ...hollow, decisive: { ...hollow.decisive, sense: 'max' } } as const;
    expect(misread('chordThroat', most)).toEqual([]);
    const cap = about(butt());
    const named = {
      ...cap,
      decisive: { ...cap.decisive, measurement: 'isoscelesThroat', sense: 'min' },
    } as const;
    expect(misread('chordThroat', named)).toEqual([]);
  });
});
