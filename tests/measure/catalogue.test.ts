import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import type { MeasurementId } from '../../src/measure/index.ts';
import { measure, measurementCatalogue, measurementIds } from '../../src/measure/index.ts';
import messages from '../../src/view/messages/en/measure.json';
import { at, handButt, handFillet, pathOf } from '../section-fixtures.ts';

const text = messages as Readonly<Record<string, string>>;
const entries = Object.values(measurementCatalogue);

describe('the catalogue of measurements', () => {
  it('has one entry for every id, in their order', () => {
    expect(Object.keys(measurementCatalogue)).toEqual([...measurementIds]);
    expect(entries.map(({ id }) => id)).toEqual([...measurementIds]);
  });

  it.each(entries)('has words for both names and the definition of $id', (entry) => {
    for (const key of [entry.us, entry.iso, entry.definition]) {
      expect(key).toMatch(/^measure_[A-Za-z0-9_]+_(us|iso|definition)$/);
      expect(text[key]?.length).toBeGreaterThan(3);
    }
    expect(text[entry.definition]).toMatch(/\.$/);
  });

  it('has no words that nothing uses', () => {
    const used = new Set(entries.flatMap(({ us, iso, definition }) => [us, iso, definition]));
    const spare = Object.keys(text).filter((key) => !used.has(key) && !key.includes('_note_'));
    expect(spare).toEqual([]);
  });

  it.each(entries)('names the parameters that drive $id, and a source', (entry) => {
    const fields = new Set(
      entry.kinds.flatMap((kind) =>
        Object.keys(kind === 'fillet' ? defaultJoint('fillet') : defaultJoint('butt')),
      ),
    );
    expect(entry.drivenBy.length).toBeGreaterThan(0);
    expect(entry.drivenBy.filter((field) => !fields.has(field))).toEqual([]);
    expect(entry.source.length).toBeGreaterThan(6);
    expect(['seen', 'memory', 'derived']).toContain(entry.status);
    expect(entry.kinds.length).toBeGreaterThan(0);
    expect(entry.stages.length).toBeGreaterThan(0);
  });

  it('says verify wherever it relies on memory alone', () => {
    for (const { source, status } of entries) {
      if (status === 'seen') expect(source).not.toContain('memory');
      if (status === 'derived') expect(source).toMatch(/derived|decided here/);
    }
  });

  // which way is worse, of everything that may stand in a requirement; the rest is shown
  const judged: Readonly<Partial<Record<MeasurementId, 'more' | 'less' | 'neither'>>> = {
    rootGap: 'more',
    bevelAngle1: 'neither',
    bevelAngle2: 'neither',
    grooveAngle: 'neither',
    rootBevelAngle1: 'neither',
    rootBevelAngle2: 'neither',
    rootGrooveAngle: 'neither',
    rootOpening: 'neither',
    rootFace: 'neither',
    angularMisalignment: 'more',
    leg1: 'less',
    leg2: 'less',
    contactLeg2: 'less',
    legDifference: 'more',
    sizeEqual: 'less',
    'sizePair.1': 'less',
    'sizePair.2': 'less',
    theoreticalThroat: 'less',
    isoscelesThroat: 'less',
    actualThroat: 'less',
    effectiveThroat: 'less',
    deepThroat: 'less',
    rootPenetration: 'less',
    convexity: 'more',
    concavity: 'more',
    edgeRemaining: 'less',
    undercut1: 'more',
    undercut2: 'more',
    rootUndercut1: 'more',
    rootUndercut2: 'more',
    overlap1: 'more',
    overlap2: 'more',
    toeAngle: 'less',
    'faceReinforcement.higher': 'more',
    'faceReinforcement.lower': 'more',
    'faceReinforcement.toes': 'more',
    'rootReinforcement.higher': 'more',
    'rootReinforcement.lower': 'more',
    'rootReinforcement.toes': 'more',
    underfill: 'more',
    rootConcavity: 'more',
    incompletePenetration: 'more',
    jointThickness: 'less',
    capPastGroove1: 'more',
    capPastGroove2: 'more',
  };

  it.each(entries)('judges $id or only shows it, and knows which way is worse', (entry) => {
    expect(entry.judged).toBe(entry.id in judged);
    if (entry.judged) expect(entry.worse).toBe(judged[entry.id]);
    else expect(['more', 'less', 'neither']).toContain(entry.worse);
  });

  it('says which may come out less than nothing: what tells by its sign which way it goes', () => {
    expect(entries.filter(({ signed }) => signed).map(({ id }) => id)).toEqual([
      'faceStep',
      'rootStep',
      'centrelineOffset',
      'angularMisalignment',
      'capPastGroove1',
      'capPastGroove2',
    ]);
  });

  it('carries the numbers of ISO 6520-1', () => {
    // from memory, verify: 502 excess weld metal, 503 convexity, 504 excess penetration,
    // 506 overlap, 511 underfill, 512 asymmetry, 515 root concavity, 617 root gap
    const numbers = {
      convexity: '503',
      overlap1: '506',
      underfill: '511',
      legDifference: '512',
    } as const;
    for (const [id, number] of Object.entries(numbers)) {
      expect(measurementCatalogue[id as keyof typeof numbers].iso6520).toBe(number);
    }
    expect(measurementCatalogue['faceReinforcement.higher'].iso6520).toBe('502');
    expect(measurementCatalogue['rootReinforcement.higher'].iso6520).toBe('504');
    expect(measurementCatalogue.rootConcavity.iso6520).toBe('515');
    expect(measurementCatalogue.rootGap.iso6520).toBe('617');
  });
});

describe('what is measured', () => {
  const faceBead = pathOf([at(-7, 10), at(7, 10)]);
  const rootBead = pathOf([at(-2, 0), at(2, 0)]);
  const sections = [
    handFillet({ leg1: 8, leg2: 8, edge: [] }),
    handButt({ t1: 10 }),
    handButt({ t1: 10, faceBead, rootBead }),
  ];

  it.each(sections)('fits the catalogue in kind, stage and unit ($kind, $stage)', (section) => {
    for (const one of Object.values(measure(section).values)) {
      const entry = measurementCatalogue[one.id];
      expect(entry.kinds).toContain(section.kind);
      expect(entry.stages).toContain(section.stage);
      expect(one.unit).toBe(entry.unit);
    }
  });

  it.each(sections)(
    'includes everything judged that fits any such section ($kind, $stage)',
    (section) => {
      const values = measure(section).values;
      const twoSided = ['rootBevelAngle1', 'rootBevelAngle2', 'rootGrooveAngle'];
      const missing = entries.filter(
        ({ id, judged, kinds, stages }) =>
          judged &&
          kinds.includes(section.kind) &&
          stages.includes(section.stage) &&
          values[id] === undefined &&
          !twoSided.includes(id),
      );
      expect(missing).toEqual([]);
    },
  );
});
