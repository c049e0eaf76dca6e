import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import type { Answer } from '../../src/quiz/index.ts';
import { measurementIds } from '../../src/measure/index.ts';
import {
  faultOf,
  faultOn,
  isOneWith,
  looksLike,
  nameIn,
  namesFault,
  quantityOf,
  reasonOf,
  sideOf,
} from '../../src/quiz/quantity.ts';

const most = (measurement: Parameters<typeof quantityOf>[0]) =>
  ({ measurement, sense: 'max' }) as const;

describe('a quantity', () => {
  it('is what is measured, at whichever toe, plate or datum', () => {
    const named = [
      'undercut1',
      'undercut2',
      'rootUndercut2',
      'leg1',
      'faceReinforcement.higher',
      'faceReinforcement.toes',
      'misalignment',
      'isoscelesThroat',
      't1',
    ] as const;
    expect(named.map(quantityOf)).toEqual([
      'undercut',
      'undercut',
      'rootUndercut',
      'leg',
      'faceReinforcement',
      'faceReinforcement',
      'misalignment',
      'isoscelesThroat',
      't',
    ]);
  });

  it('belongs to the plate that its last figure names; a thickness belongs to none', () => {
    expect((['undercut1', 'toeAngle2', 'rootGap', 't1', 't2'] as const).map(sideOf)).toEqual([
      1,
      2,
      null,
      null,
      null,
    ]);
    const sided = measurementIds.filter((id) => /[12]$/u.test(id) && !/^t\d$/u.test(id));
    expect(sided.length).toBeGreaterThan(20);
    for (const id of measurementIds)
      expect(sideOf(id)).toBe(sided.includes(id) ? Number(id.at(-1)) : null);
  });
});

describe('a fault', () => {
  it('is a quantity past a limit of one sense', () => {
    expect(faultOf(most('undercut2'))).toBe('undercut.max');
    expect(faultOf({ measurement: 'leg1', sense: 'min' })).toBe('leg.min');
  });

  it('of a root goes by the name of a face where the joint is welded from both sides', () => {
    const [single, double] = [
      defaultJoint('butt', 'singleV'),
      defaultJoint('butt', 'doubleV'),
    ] as const;
    const onRoot = [
      ['rootConcavity', 'underfill.max'],
      ['rootReinforcement.higher', 'faceReinforcement.max'],
      ['rootUndercut1', 'undercut.max'],
    ] as const;
    for (const [measurement, name] of onRoot) {
      expect(faultOn(double, most(measurement))).toBe(name);
      expect(faultOn(single, most(measurement))).toBe(`${quantityOf(measurement)}.max`);
    }
    expect(faultOn(double, { measurement: 'incompletePenetration', sense: 'max' })).toBe(
      'incompletePenetration.max',
    );
    expect(faultOn(double, { measurement: 'rootReinforcement.higher', sense: 'min' })).toBe(
      'faceReinforcement.min',
    );
    expect(faultOn(defaultJoint('fillet'), most('undercut1'))).toBe('undercut.max');
  });

  it('may be another by the same cause: a throat by any measure, what a short leg is short of', () => {
    expect(isOneWith('undercut.max', 'undercut.max')).toBe(true);
    expect(isOneWith('isoscelesThroat.min', 'theoreticalThroat.min')).toBe(true);
    expect(isOneWith('theoreticalThroat.min', 'sizeEqual.min')).toBe(true);
    expect(isOneWith('leg.min', 'isoscelesThroat.min')).toBe(true);
    expect(isOneWith('leg.min', 'contactLeg.min')).toBe(true);
    expect(isOneWith('contactLeg.min', 'effectiveThroat.min')).toBe(true);
    expect(isOneWith('overlap.max', 'toeAngle.min')).toBe(true);
  });

  it('is not what brings it about, nor what only looks like it', () => {
    expect(isOneWith('isoscelesThroat.min', 'leg.min')).toBe(false);
    expect(isOneWith('contactLeg.min', 'isoscelesThroat.min')).toBe(false);
    expect(isOneWith('toeAngle.min', 'overlap.max')).toBe(false);
    expect(isOneWith('undercut.max', 'overlap.max')).toBe(false);
    expect(isOneWith('isoscelesThroat.min', 'undercut.max')).toBe(false);
    expect(isOneWith('undercut.max', 'isoscelesThroat.min')).toBe(false);
  });

  it('looks like another either way round, and never like itself', () => {
    const alike = [
      ['undercut.max', 'overlap.max'],
      ['undercut.max', 'underfill.max'],
      ['concavity.max', 'isoscelesThroat.min'],
      ['leg.min', 'legDifference.max'],
      ['misalignment.max', 'angularMisalignment.max'],
      ['rootOpening.max', 'rootFace.max'],
    ] as const;
    for (const [one, other] of alike) {
      expect(looksLike(one, other)).toBe(true);
      expect(looksLike(other, one)).toBe(true);
      expect(looksLike(one, one)).toBe(false);
    }
    expect(looksLike('undercut.max', 'leg.min')).toBe(false);
    expect(looksLike('overlap.max', 'underfill.max')).toBe(false);
    expect(looksLike('rootOpening.max', 'misalignment.max')).toBe(false);
  });
});

describe('an answer to what is wrong', () => {
  it('names a fault, or none', () => {
    expect(nameIn('undercut.max')).toBe('undercut.max');
    expect([nameIn('somethingElse'), nameIn('notSure'), nameIn(null)]).toEqual([null, null, null]);
  });

  it('is right with the fault or what comes of its cause', () => {
    expect(namesFault('leg.min', 'leg.min')).toBe(true);
    expect(namesFault('leg.min', 'isoscelesThroat.min')).toBe(true);
    expect(namesFault('isoscelesThroat.min', 'leg.min')).toBe(false);
    for (const none of ['somethingElse', 'notSure', null] as const)
      expect(namesFault('leg.min', none)).toBe(false);
  });

  it('is a reason only of a rejection that a fault was to be named for', () => {
    const of = (call: Answer['call'], fault: Answer['fault']) => ({ call, fault, sure: 80 });
    expect(reasonOf('leg.min', of('reject', 'leg.min'))).toBe(true);
    expect(reasonOf('leg.min', of('reject', 'notSure'))).toBe(false);
    expect(reasonOf('leg.min', of('reject', null))).toBeNull();
    expect(reasonOf('leg.min', of('accept', 'leg.min'))).toBeNull();
    expect(reasonOf(null, of('reject', 'leg.min'))).toBeNull();
  });
});
