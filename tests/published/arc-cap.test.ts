/**
 * Closed forms for circular faces and caps (derived: R = (w²/4 + h²)/(2h),
 * φ = 2 atan(2h/w), area = R²(2φ - sin 2φ)/2, length = 2Rφ, toe angle through
 * the air = 180° - φ), worked with 50 significant digits and rounded to double.
 */
import { describe, expect, test } from 'vitest';
import {
  arcThroughSagitta,
  capArea,
  centre,
  contourArea,
  dot,
  line,
  point,
  radius,
  rotate,
  sagitta,
  segmentLength,
  tangentAt,
} from '../../src/geometry/index.ts';
import { deg, rad, toDeg, toRad } from '../../src/units/index.ts';

const CLOSED_FORM = 1e-9;

/** id, width, height, radius, area, arc length, toe angle through the air (degrees) */
const CAPS = [
  ['CAP-12-2', 12, 2, 10, 16.35011087932844, 12.870022175865689, 143.13010235415598],
  ['CAP-16-1p6', 16, 1.6, 20.8, 17.202430026904825, 16.42331057951008, 157.38013505195957],
  [
    'CAP-20-3',
    20,
    3,
    18.166666666666668,
    40.711009732863275,
    21.17919373205834,
    146.60151153201275,
  ],
  ['CAP-limit150', 10, 1.3397459621556136, 10, 9.058607370607955, 10.471975511965978, 150],
] as const;

/** id, leg 1, leg 2, dihedral angle, face sagitta, face length, radius, centre, weld area */
const FACES = [
  [
    'CX-8-60',
    8,
    8,
    60,
    1,
    8.329274546313382,
    8.5,
    -0.49519052838328986,
    -0.2858983848622454,
    33.112229742933906,
  ],
  [
    'CX-8-90',
    8,
    8,
    90,
    1,
    11.547957013935465,
    16.5,
    -6.960155108391486,
    -6.960155108391486,
    39.589404497835694,
  ],
  [
    'CX-8-105',
    8,
    8,
    105,
    1,
    12.902700091917888,
    20.641104721640332,
    -8.992023158065782,
    -11.718632732767036,
    39.41393003246145,
  ],
  [
    'CX-8-135',
    8,
    8,
    135,
    1,
    14.961815880306569,
    27.81370849898476,
    -9.089589127574657,
    -21.944209348189766,
    32.51811796964585,
  ],
  [
    'CX-6-half',
    6,
    6,
    90,
    0.5,
    8.5636318406653,
    18.25,
    -9.551145366061219,
    -9.551145366061219,
    20.83626834970355,
  ],
  [
    'CX-6-over',
    6,
    6,
    90,
    2.5,
    10.330146601272649,
    4.85,
    1.3382990642116133,
    1.3382990642116133,
    33.08039989335585,
  ],
  [
    'CX-6-10',
    6,
    10,
    90,
    1,
    11.889240165857156,
    17.5,
    -11.148633274256978,
    -3.4891799645541877,
    37.82014518630266,
  ],
  [
    'CX-7-9-120',
    7,
    9,
    120,
    0.8,
    14.014968484579096,
    30.55625,
    -15.444471899140012,
    -20.734755731168246,
    34.70872236713696,
  ],
  [
    'CX-5-8-60',
    5,
    8,
    60,
    0.6,
    7.136346782469159,
    10.508333333333333,
    -5.306706715235215,
    2.048625424661564,
    20.13689679524548,
  ],
  [
    'CV-10-60',
    10,
    10,
    60,
    -1,
    10.264569112193799,
    13,
    17.892304845413264,
    10.330127018922193,
    36.581570959962235,
  ],
  [
    'CV-10-90',
    10,
    10,
    90,
    -1,
    14.329949578859075,
    25.5,
    22.324116139070416,
    22.324116139070416,
    40.53430426025093,
  ],
  [
    'CV-10-105',
    10,
    10,
    105,
    -1,
    16.034599365047026,
    31.970476127563018,
    22.55953607898313,
    29.40015981765742,
    37.684710068937676,
  ],
  [
    'CV-10-135',
    10,
    10,
    135,
    -1,
    18.621573136849406,
    43.17766952966369,
    17.605161438839424,
    42.50261951341397,
    23.008129621466445,
  ],
  [
    'CV-8-half',
    8,
    8,
    90,
    -0.5,
    11.372542299830885,
    32.25,
    26.450640302672884,
    26.450640302672884,
    28.222877836610046,
  ],
  [
    'CV-10-near-limit',
    10,
    10,
    90,
    -1.9,
    14.813306810989141,
    14.107894736842105,
    13.632285152432615,
    13.632285152432615,
    31.830564927335647,
  ],
  [
    'CV-8-12',
    8,
    12,
    90,
    -1,
    14.606399812463815,
    26.5,
    25.217282505615014,
    20.14485500374334,
    38.348317533517914,
  ],
  [
    'CV-7-10-120',
    7,
    10,
    120,
    -0.7,
    14.886787494498638,
    39.457142857142856,
    23.680902310221587,
    35.75770714917029,
    23.392507393788932,
  ],
  [
    'CV-8-9-135',
    8,
    9,
    135,
    -0.4,
    15.737757291657221,
    77.33230515339464,
    31.981295957063523,
    73.51994875241328,
    21.264175365020133,
  ],
] as const;

/** id, leg 1, leg 2, dihedral angle, face length */
const FLAT_FACES = [
  ['FE-60', 8, 8, 60, 8],
  ['FE-80', 8, 8, 80, 10.28460175498463],
  ['FE-90', 8, 8, 90, 11.31370849898476],
  ['FE-110', 8, 8, 110, 13.106432708623869],
  ['FE-120', 8, 8, 120, 13.856406460551018],
  ['FE-90-in3_16', 4.7625, 4.7625, 90, 6.735192090801865],
  ['FU-3-4-5', 6, 8, 90, 10],
  ['FU-8-15-17', 8, 15, 90, 17],
  ['FU-6-10', 6, 10, 90, 11.661903789690601],
  ['FU-6-9-60', 6, 9, 60, 7.937253933193772],
  ['FU-6-9-75', 6, 9, 75, 9.436500576428095],
  ['FU-6-9-135', 6, 9, 135, 13.9056654773566],
  ['FU-4-12-60-footout', 4, 12, 60, 10.583005244258363],
] as const;

describe('a circular cap agrees with its closed form', () => {
  test.each(CAPS)('%s', (_id, width, height, arcRadius, area, arcLength, toeAngle) => {
    // walked right to left, the weld on the left and the crown on the right
    const cap = arcThroughSagitta(point(width, 0), point(0, 0), -height);
    expect(Math.abs(radius(cap) - arcRadius)).toBeLessThan(CLOSED_FORM);
    expect(Math.abs(capArea(cap) - area)).toBeLessThan(CLOSED_FORM);
    expect(Math.abs(segmentLength(cap) - arcLength)).toBeLessThan(CLOSED_FORM);
    expect(Math.abs(sagitta(cap) + height)).toBeLessThan(CLOSED_FORM);
    // through the air: from the plate beyond the toe (+x) back to the face tangent
    const leaving = tangentAt(cap, 0);
    const throughAir = toDeg(rad(Math.acos(dot(leaving, point(1, 0)))));
    expect(Math.abs(throughAir - toeAngle)).toBeLessThan(1e-7);
  });

  test('the cap and the root bead of a full single-V weld (SVF-12-60-3-2) have these areas', () => {
    const cap = arcThroughSagitta(point(17, 0), point(0, 0), -2);
    const root = arcThroughSagitta(point(0, 0), point(5, 0), -1);
    expect(Math.abs(capArea(cap) - 22.91569778045567)).toBeLessThan(CLOSED_FORM);
    expect(Math.abs(capArea(root) - 3.4376832234843397)).toBeLessThan(CLOSED_FORM);
  });
});

describe('a circular fillet face agrees with its closed form', () => {
  test.each(FACES)('%s', (_id, leg1, leg2, dihedral, rise, faceLength, arcRadius, cx, cy, area) => {
    const toe1 = point(leg1, 0);
    const toe2 = rotate(point(leg2, 0), toRad(deg(dihedral)));
    // from toe 1 to toe 2 the root is on the left, so a convex face stands to the right
    const face = arcThroughSagitta(toe1, toe2, -rise);
    expect(Math.abs(segmentLength(face) - faceLength)).toBeLessThan(CLOSED_FORM);
    expect(Math.abs(radius(face) - arcRadius)).toBeLessThan(CLOSED_FORM);
    expect(Math.abs((centre(face)?.x ?? NaN) - cx)).toBeLessThan(CLOSED_FORM);
    expect(Math.abs((centre(face)?.y ?? NaN) - cy)).toBeLessThan(CLOSED_FORM);
    const weld = [line(point(0, 0), toe1), face, line(toe2, point(0, 0))];
    expect(Math.abs(contourArea(weld) - area)).toBeLessThan(CLOSED_FORM);
  });

  test.each(FLAT_FACES)('%s (flat)', (_id, leg1, leg2, dihedral, faceLength) => {
    const face = line(point(leg1, 0), rotate(point(leg2, 0), toRad(deg(dihedral))));
    expect(Math.abs(segmentLength(face) - faceLength)).toBeLessThan(CLOSED_FORM);
    expect(radius(face)).toBe(Infinity);
    expect(centre(face)).toBeNull();
  });
});
