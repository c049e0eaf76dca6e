import { describe, expect, test } from 'vitest';
import {
  arc,
  line,
  point,
  polyline,
  svgPath,
  svgPathSink,
  writeContour,
  type PathSink,
} from '../../src/geometry/index.ts';

const square = polyline([point(0, 0), point(4, 0), point(4, 4), point(0, 4)], true);

/** A sink that keeps what it is told. */
function recorder(): PathSink & { readonly told: unknown[][] } {
  const told: unknown[][] = [];
  return {
    told,
    moveTo: (to) => void told.push(['move', to.x, to.y]),
    lineTo: (to) => void told.push(['line', to.x, to.y]),
    arcTo: (to, radius, left) => void told.push(['arc', to.x, to.y, radius, left]),
    closePath: () => void told.push(['close']),
  };
}

describe('writing a contour to a sink', () => {
  test('tells lines and arcs one by one, exactly', () => {
    const sink = recorder();
    writeContour(
      [
        line(point(0, 1 / 3), point(2, 0)),
        arc(point(2, 0), point(4, 0), 1),
        arc(point(4, 0), point(6, 0), -1),
      ],
      sink,
    );
    expect(sink.told).toEqual([
      ['move', 0, 1 / 3],
      ['line', 2, 0],
      ['arc', 4, 0, 1, true],
      ['arc', 6, 0, 1, false],
    ]);
  });

  test('closes what is closed', () => {
    const sink = recorder();
    writeContour(square, sink);
    expect(sink.told).toHaveLength(6);
    expect(sink.told[5]).toEqual(['close']);
  });

  test('writes an arc over half a circle as two', () => {
    const sink = recorder();
    // three quarters of the circle of radius 5 about the origin; half way at 135°
    writeContour([arc(point(5, 0), point(0, -5), 1 + Math.SQRT2)], sink);
    expect(sink.told).toHaveLength(3);
    expect(sink.told[1]?.[1]).toBeCloseTo(-5 * Math.SQRT1_2, 13);
    expect(sink.told[1]?.[2]).toBeCloseTo(5 * Math.SQRT1_2, 13);
    expect(sink.told[1]?.[3]).toBeCloseTo(5, 13);
    expect(sink.told[2]?.slice(0, 3)).toEqual(['arc', 0, -5]);
    const other = recorder();
    writeContour([arc(point(0, -5), point(5, 0), -1 - Math.SQRT2)], other);
    expect(other.told).toHaveLength(3);
    expect(other.told[2]?.[4]).toBe(false);
  });

  test('writes nothing for an empty contour', () => {
    const sink = recorder();
    writeContour([], sink);
    expect(sink.told).toEqual([]);
  });
});

describe('the SVG sink', () => {
  test('rounds to three decimals unless told otherwise', () => {
    const path = [line(point(1 / 3, -1e-9), point(2 / 3, 12.3456))];
    expect(svgPath(path)).toBe('M0.333 0L0.667 12.346');
    expect(svgPath(path, 1)).toBe('M0.3 0L0.7 12.3');
    expect(svgPath(path, 0)).toBe('M0 0L1 12');
  });

  test('closes the path', () => {
    expect(svgPath(square)).toBe('M0 0L4 0L4 4L0 4L0 0Z');
  });

  test('maps to the paper and turns y over, arcs included', () => {
    const bend = [arc(point(1, 0), point(0, 1), Math.SQRT2 - 1)];
    expect(svgPath(bend)).toBe('M1 0A1 1 0 0 1 0 1');
    expect(svgPath(bend, 3, { scale: 10, dx: 100, dy: 50, flipY: true })).toBe(
      'M110 50A10 10 0 0 0 100 40',
    );
    const back = [arc(point(0, 1), point(1, 0), 1 - Math.SQRT2)];
    expect(svgPath(back)).toBe('M0 1A1 1 0 0 0 1 0');
    expect(svgPath(back, 3, { scale: 10, dx: 100, dy: 50, flipY: true })).toBe(
      'M100 40A10 10 0 0 1 110 50',
    );
    expect(svgPath(bend, 3, { scale: -2, dx: 0, dy: 0, flipY: false })).toBe(
      'M-2 0A2 2 0 0 1 0 -2',
    );
  });

  test('gathers several contours into one path', () => {
    const sink = svgPathSink(0);
    writeContour(polyline([point(0, 0), point(1, 0)]), sink);
    writeContour(polyline([point(5, 5), point(6, 5)]), sink);
    expect(sink.toString()).toBe('M0 0L1 0M5 5L6 5');
  });
});
