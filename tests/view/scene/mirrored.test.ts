import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Section } from '../../../src/joint/index.ts';
import { measure, measurementIds } from '../../../src/measure/index.ts';
import { buttDimensions } from '../../../src/view/scene/butt-dimensions.ts';
import type { DimensionContext } from '../../../src/view/scene/dimension-context.ts';
import type { DimensionRequest } from '../../../src/view/scene/dimension-request.ts';
import { filletDimensions } from '../../../src/view/scene/fillet-dimensions.ts';
import { fitView } from '../../../src/view/scene/fit-view.ts';
import { mirrored } from '../../../src/view/scene/mirrored.ts';
import { runs } from '../../runs.ts';
import { anySection, butt, sceneOf } from './any-scene.ts';

const WIDTH = 748;

/** Every dimension that could be asked for of a section, on a sheet whose middle is x = 0 of the view. */
function requestsOf(section: Section, isTurned: boolean): readonly DimensionRequest[] {
  const { show, sheet, words } = sceneOf(section);
  const view = fitView(section, sheet, null);
  const measurements = measure(section);
  const context: DimensionContext = {
    section: isTurned ? mirrored(section) : section,
    measurements: isTurned ? mirrored(measurements) : measurements,
    tones: new Map(measurementIds.map((id) => [id, 'reject'])),
    checks: [],
    judges: () => true,
    lit: null,
    told: new Set(),
    governing: null,
    show,
    view: isTurned ? { ...view, originX: WIDTH - view.originX } : view,
    sheet,
    words,
  };
  return section.kind === 'butt' ? buttDimensions(context) : filletDimensions(context);
}

/** What a request comes to on the paper, turned left to right if asked for; to a thousandth of a px. */
function placed(request: DimensionRequest, turn: boolean): object {
  const near = (value: number) => Math.round(value * 1000) / 1000 + 0;
  const x = (value: number) => near(turn ? WIDTH - value : value);
  const dx = (value: number) => near(turn ? -value : value);
  const point = (p: { x: number; y: number }) => [x(p.x), near(p.y)];
  const direction = (p: { x: number; y: number }) => [dx(p.x), near(p.y)];
  const { key } = request.asked;
  switch (request.kind) {
    case 'linear': {
      const { from, to, off, levels, outer, bare, instead } = request;
      const others = (instead === undefined ? [] : [instead()]).map((way) => [
        direction(way.off),
        way.levels.map(near),
      ]);
      return {
        key,
        line: [point(from), point(to), direction(off)],
        levels: levels.map(near),
        others,
        outer,
        bare,
      };
    }
    case 'running':
      return { key, line: [point(request.from), point(request.to)] };
    case 'angle': {
      const { vertex, start, end, radii } = request;
      const arms = [start, end].map((angle) =>
        direction({ x: Math.cos(angle), y: Math.sin(angle) }),
      );
      return {
        key,
        vertex: point(vertex),
        arms: turn ? arms.reverse() : arms,
        sweep: near(end - start),
        radii: radii.map(near),
      };
    }
    default:
      return { key };
  }
}

/** The dimensions of the section turned, and the turned picture of those of the section itself. */
const bothWays = (section: Section) => [
  requestsOf(section, true).map((request) => placed(request, false)),
  requestsOf(section, false).map((request) => placed(request, true)),
];

describe('The dimensions of a section turned left to right', () => {
  test('are the turned dimensions, over any joint and stage', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(anySection, (section) => {
        const [turned, picture] = bothWays(section);
        expect(turned).toEqual(picture);
      }),
      { numRuns: runs(1500) },
    );
  });

  test.each(['singleV', 'singleU', 'doubleV', 'singleBevel', 'singleJ', 'square'])(
    'are the turned dimensions of a %s fitted up out of line',
    (preparation) => {
      for (const angularMisalignment of [-4, 0, 4]) {
        for (const offset of [-1.5, 0, 1.5]) {
          const section = butt({ preparation, stage: 'fitUp', angularMisalignment, offset });
          const [turned, picture] = bothWays(section);
          expect(turned).toEqual(picture);
        }
      }
    },
  );

  test('draw a root face off the plate that it was measured on', () => {
    for (const preparation of ['singleV', 'singleU', 'doubleV']) {
      for (const angularMisalignment of [-6, -3, 0, 3, 6]) {
        const section = butt({ preparation, stage: 'fitUp', angularMisalignment, offset: 2 });
        for (const isTurned of [false, true]) {
          for (const request of requestsOf(section, isTurned)) {
            if (!request.asked.key.startsWith('rootFace') || request.kind !== 'linear') continue;
            // Away from the middle of the gap, which the witness stands to one side of.
            const { x } = requestsOf(section, isTurned).reduce(
              (middle, one) =>
                one.asked.key === 'rootOpening' && one.kind === 'linear'
                  ? { x: (one.from.x + one.to.x) / 2 }
                  : middle,
              { x: NaN },
            );
            expect(Math.sign(request.from.x - x)).toBe(Math.sign(request.off.x));
          }
        }
      }
    }
  });
});
