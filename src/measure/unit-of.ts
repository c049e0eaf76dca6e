import type { MeasurementId, MeasurementUnit } from './measurement.ts';

/** The measurements that are no length. */
const others: Readonly<Partial<Record<MeasurementId, MeasurementUnit>>> = {
  dihedralAngle: 'deg',
  bevelAngle1: 'deg',
  bevelAngle2: 'deg',
  grooveAngle: 'deg',
  rootBevelAngle1: 'deg',
  rootBevelAngle2: 'deg',
  rootGrooveAngle: 'deg',
  angularMisalignment: 'deg',
  toeAngle1: 'deg',
  toeAngle2: 'deg',
  toeAngle: 'deg',
  grooveArea: 'mm2',
  weldArea: 'mm2',
  mass: 'kg/m',
};

/** The unit that a measurement's value is in; the catalogue says the same beside everything else it knows. */
export const unitOf = (id: MeasurementId): MeasurementUnit => others[id] ?? 'mm';
