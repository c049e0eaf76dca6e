import { describe, expect, it } from 'vitest';
import { measure } from '../../src/measure/index.ts';
import { at, handButt, handFillet, pathOf } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

// ISO 6520-1, 5011/5012/5013; how it is measured: from memory, verify.

describe('undercut beside a fillet', () => {
  // a V 0.8 deep and 2 wide in plate 1; an arc of sagitta 0.5 over 3 in plate 2
  const notch = pathOf([at(8, 0), at(9, -0.8), at(10, 0)]);
  const gouge = pathOf([at(0, 8), at(0, 11)], [-(2 * 0.5) / 3]);
  const cut = handFillet({ leg1: 8, leg2: 8, undercuts: [notch, gouge] });

  it('is as deep as the groove below its own plate’s surface', () => {
    expect(valueOf(cut, 'undercut1')).toBeCloseTo(0.8, 12);
    expect(endsOf(cut, 'undercut1')).toEqual([9, 0, 9, -0.8]);
    expect(valueOf(cut, 'undercut2')).toBeCloseTo(0.5, 12);
    expect(endsOf(cut, 'undercut2')).toEqual([0, 9.5, -0.5, 9.5].map((n) => about(n)));
  });

  it('is as wide as the groove is open at the surface', () => {
    expect(valueOf(cut, 'undercutWidth1')).toBeCloseTo(2, 12);
    expect(valueOf(cut, 'undercutWidth2')).toBeCloseTo(3, 12);
    expect(endsOf(cut, 'undercutWidth1')).toEqual([8, 0, 10, 0]);
  });

  it('carries the surface from the toe over to the reading', () => {
    expect(read(cut, 'undercut1').witness).toMatchObject({ extensions: [[at(8, 0), at(9, 0)]] });
  });

  it('moves neither toe, leg, size nor throat', () => {
    const sound = handFillet({ leg1: 8, leg2: 8 });
    for (const id of [
      'leg1',
      'leg2',
      'sizeEqual',
      'theoreticalThroat',
      'toeAngle1',
      'faceWidth',
    ] as const) {
      expect(valueOf(cut, id)).toBe(valueOf(sound, id));
    }
  });

  it('is none beside a sound toe', () => {
    const sound = handFillet({ leg1: 8, leg2: 8 });
    for (const id of ['undercut1', 'undercut2', 'undercutWidth1', 'undercutWidth2'] as const) {
      expect(valueOf(sound, id)).toBe(0);
      expect(read(sound, id).witness).toEqual({ kind: 'none' });
    }
    expect(measure(sound).values.rootUndercut1).toBeUndefined();
  });
});

describe('undercut beside the cap of a butt weld', () => {
  // groove edge of plate 2 at (6, 10)
  const faceBead = pathOf([at(-7, 10), at(5, 10)]);

  it('counts only outside the groove edge', () => {
    // from the toe at 5 down 1 mm at 5.5, back up to the surface at 7: at the edge, 6, it is 2/3 deep
    const notch = pathOf([at(5, 10), at(5.5, 9), at(7, 10)]);
    const cut = handButt({ t1: 10, faceBead, faceUndercuts: [[], notch] });
    expect(valueOf(cut, 'undercut2')).toBeCloseTo(2 / 3, 12);
    expect(endsOf(cut, 'undercut2')[0]).toBeCloseTo(6, 9);
    expect(valueOf(cut, 'undercutWidth2')).toBeCloseTo(1, 12);
    expect(endsOf(cut, 'undercutWidth2')).toEqual([6, 10, 7, 10]);
  });

  it('counts in full when it lies outside', () => {
    const notch = pathOf([at(7, 10), at(8, 9.4), at(9, 10)]);
    const cut = handButt({
      t1: 10,
      faceBead: pathOf([at(-7, 10), at(7, 10)]),
      faceUndercuts: [[], notch],
    });
    expect(valueOf(cut, 'undercut2')).toBeCloseTo(0.6, 12);
    expect(valueOf(cut, 'undercutWidth2')).toBeCloseTo(2, 12);
    expect(valueOf(cut, 'undercut1')).toBe(0);
  });

  it('is no loss of base metal inside the groove', () => {
    const notch = pathOf([at(5, 10), at(5.5, 9.5), at(6, 10)]);
    const cut = handButt({ t1: 10, faceBead, faceUndercuts: [[], notch] });
    expect(valueOf(cut, 'undercut2')).toBe(0);
    expect(valueOf(cut, 'undercutWidth2')).toBe(0);
  });

  it('is measured from each plate’s own surface when the plates are offset', () => {
    // plate 2 stands 2 mm higher: its surface is at y = 12
    const notch = pathOf([at(7, 12), at(8, 11.3), at(9, 12)]);
    const cut = handButt({
      t1: 10,
      step: 2,
      faceBead: pathOf([at(-7, 10), at(7, 12)]),
      faceUndercuts: [[], notch],
    });
    expect(valueOf(cut, 'undercut2')).toBeCloseTo(0.7, 12);
  });

  it('can’t be told where the groove edge isn’t known', () => {
    const notch = pathOf([at(7, 10), at(8, 9.4), at(9, 10)]);
    const cut = handButt({ t1: 10, faceBead, faceUndercuts: [[], notch] });
    const unknown = { ...cut, face: { ...cut.face, grooveEdges: null } };
    expect(read(unknown, 'undercut2').value).toBeNull();
    expect(read(unknown, 'undercutWidth2').value).toBeNull();
    expect(read(unknown, 'undercut2').note).toEqual({ key: 'measure_note_groove_edge_unknown' });
    expect(valueOf(unknown, 'undercut1')).toBe(0);
  });

  it('can’t be told on the root side either where the edges aren’t known', () => {
    const notch = pathOf([at(-2, 0), at(-2.5, 0.4), at(-3, 0)]);
    const cut = handButt({
      t1: 10,
      faceBead,
      rootBead: pathOf([at(-2, 0), at(2, 0)]),
      rootUndercuts: [notch, []],
    });
    const unknown = { ...cut, root: cut.root && { ...cut.root, grooveEdges: null } };
    expect(read(unknown, 'rootUndercut1')).toEqual({
      id: 'rootUndercut1',
      value: null,
      unit: 'mm',
      witness: { kind: 'none' },
      note: { key: 'measure_note_groove_edge_unknown' },
    });
  });

  it('is measured on the root side as well, into the plate', () => {
    // root surface of plate 1 on y = 0, its edge at x = -1; the groove goes up into the plate
    const notch = pathOf([at(-2, 0), at(-2.5, 0.4), at(-3, 0)]);
    const cut = handButt({
      t1: 10,
      faceBead,
      rootBead: pathOf([at(-2, 0), at(2, 0)]),
      rootUndercuts: [notch, []],
    });
    expect(valueOf(cut, 'rootUndercut1')).toBeCloseTo(0.4, 12);
    expect(valueOf(cut, 'rootUndercut2')).toBe(0);
  });
});
