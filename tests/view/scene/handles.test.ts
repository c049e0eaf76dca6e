import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  build,
  defaultJoint,
  JointError,
  type Joint,
  type Section,
} from '../../../src/joint/index.ts';
import { withNumber } from '../../../src/state/parameter.ts';
import { type HandleGroup, pulledValue, shownHandles } from '../../../src/view/scene/handles.ts';
import { handlesOf } from './any-scene.ts';
import { sheetOf } from '../../../src/view/scene/sheet.ts';
import type { View } from '../../../src/view/scene/view-transform.ts';
import { anyJoint } from '../../joint/any-joint.ts';
import { runs } from '../../runs.ts';

const GROUPS: readonly HandleGroup[] = [null, 'joint', 'fitUp', 'weld', 'discontinuities', 'sheet'];

/** Where a parameter's handle stands for a given value of it; null when the joint is refused. */
function placeOf(joint: Joint, field: string, value: number, group: HandleGroup) {
  try {
    const next = withNumber(joint, field, value);
    return handlesOf(next, build(next), group).find((handle) => handle.field === field)?.at ?? null;
  } catch (error) {
    if (error instanceof JointError) return null;
    throw error;
  }
}

function sectionOrNull(joint: Joint): Section | null {
  try {
    return build(joint);
  } catch (error) {
    if (error instanceof JointError) return null;
    throw error;
  }
}

const fieldsOf = (joint: Joint, group: HandleGroup): readonly string[] =>
  handlesOf(joint, build(joint), group).map(({ field }) => field);

describe('The handles of a joint', () => {
  test.each(
    (['fillet', 'butt'] as const).flatMap((kind) =>
      (['welded', 'fitUp'] as const).flatMap((stage) =>
        GROUPS.map((group) => ({ kind, stage, group })),
      ),
    ),
  )('follow the hand: $kind, $stage, $group', ({ kind, stage, group }) => {
    const joint: Joint = { ...defaultJoint(kind), stage };
    for (const handle of handlesOf(joint, build(joint), group)) {
      // 1/1000 of a unit: what is left of a curve is under a thousandth of the way
      const small = 1e-3;
      const moved = placeOf(joint, handle.field, handle.value + small, group);
      expect(moved, handle.field).not.toBeNull();
      if (moved === null) continue;
      const way = { x: (moved.x - handle.at.x) / small, y: (moved.y - handle.at.y) / small };
      // pulled back along the axis, the way it went is one unit of the parameter
      expect(pulledValue(handle, 0, way), handle.field).toBeCloseTo(1, 2);
    }
  });

  test('of an unfused root stands at its upper end, also below a bevel left bare by a dropped cap', () => {
    // nose 1 at x = -1: unfused from y = 0 to 1
    const joint: Joint = { ...defaultJoint('butt'), capPast1: 0, capDrop1: 2 };
    expect(fieldsOf(joint, 'discontinuities')).not.toContain('incompletePenetration');
    const unfused = { ...joint, incompletePenetration: 1 };
    const handles = handlesOf(unfused, build(unfused), 'discontinuities');
    const handle = handles.find(({ field }) => field === 'incompletePenetration');
    expect(handle?.at).toEqual({ x: -1, y: 1 });
    expect(handle?.axis).toEqual({ x: 0, y: 1 });
  });

  test('are at most six, none on another, each of a parameter that the joint has', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('fillet' as const, 'butt' as const).chain((kind) => anyJoint(kind)),
        fc.constantFrom(...GROUPS),
        (joint, group) => {
          const section = sectionOrNull(joint);
          if (section === null) return;
          const handles = handlesOf(joint, section, group);
          expect(handles.length).toBeLessThanOrEqual(6);
          handles.forEach((one, index) => {
            expect(Number.isFinite(one.at.x) && Number.isFinite(one.at.y)).toBe(true);
            expect(Math.hypot(one.axis.x, one.axis.y)).toBeGreaterThan(0);
            expect(one.value).toBeGreaterThanOrEqual(one.range.min);
            expect(one.value).toBeLessThanOrEqual(one.range.max);
            for (const other of handles.slice(index + 1)) {
              expect(Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y)).toBeGreaterThan(0);
            }
          });
        },
      ),
      { numRuns: runs(2000) },
    );
  });

  test('of a plain tee are its toes, its crown and where an undercut would begin', () => {
    const fields = fieldsOf(defaultJoint('fillet'), null);
    expect(fields.slice(0, 3)).toEqual(['leg1', 'leg2', 'convexity']);
    expect(fields).toContain('undercut1Depth');
  });

  test('of the weld group stand on the toes and the crown', () => {
    const joint = { ...defaultJoint('fillet'), leg1: 8, leg2: 8, convexity: 1 };
    const [leg1, leg2, convexity] = handlesOf(joint, build(joint), 'weld');
    expect(leg1?.at).toEqual({ x: 8, y: 0 });
    expect(leg2?.at.x).toBeCloseTo(0, 12);
    expect(leg2?.at.y).toBeCloseTo(8, 12);
    // 1 mm square to the middle (4, 4) of the chord: 4 + 1/√2 = 4.7071.
    expect(convexity?.at.x).toBeCloseTo(4.70710678, 8);
    expect(convexity?.at.y).toBeCloseTo(4.70710678, 8);
  });

  test('give a flaw that is there the place before one that is not', () => {
    const joint: Joint = { ...defaultJoint('butt'), rootUndercut2Depth: 0.5 };
    expect(fieldsOf(joint, 'discontinuities')).toContain('rootUndercut2Depth');
  });

  test('offer no undercut at a toe that rolls over', () => {
    const joint: Joint = { ...defaultJoint('fillet'), convexity: 1.5, overlap1: 2 };
    const fields = fieldsOf(joint, 'discontinuities');
    expect(fields).toContain('overlap1');
    expect(fields).not.toContain('undercut1Depth');
    expect(fields).toContain('undercut2Depth');
  });

  test('pulled along its axis a handle gives the length pulled, pulled across it nothing', () => {
    const [leg1] = handlesOf(defaultJoint('fillet'), build(defaultJoint('fillet')), 'weld');
    expect(leg1).toBeDefined();
    if (leg1 === undefined) return;
    expect(pulledValue(leg1, 8, { x: 1.5, y: 0 })).toBeCloseTo(9.5, 12);
    expect(pulledValue(leg1, 8, { x: 0, y: 3 })).toBeCloseTo(8, 12);
  });

  test('hide one that would stand on its neighbour while its flaw is none', () => {
    const joint: Joint = { ...defaultJoint('fillet'), undercut1Depth: 0 };
    const handles = handlesOf(joint, build(joint), null);
    const view: View = {
      scale: 4,
      originX: 50,
      originY: 200,
      width: 360,
      height: 330,
      subject: '',
    };
    const sheet = sheetOf(360, 330, 'phone');
    const shown = shownHandles(handles, view, sheet, 34).map(({ handle }) => handle.field);
    expect(shown).toContain('leg1');
    // 1 mm past toe 1, so 4 px from its ring
    expect(shown).not.toContain('undercut1Depth');
    // unless it has the focus, which it would take with it
    const held = shownHandles(handles, view, sheet, 34, 'undercut1Depth');
    expect(held.map(({ handle }) => handle.field)).toContain('undercut1Depth');
  });
});
