import type { MeasurementId } from '../../measure/index.ts';
import type { Message } from '../../units/index.ts';

/** The pair of terms that names a measurement; a dotted tail takes an underscore in its key. */
export const measurementName = (id: MeasurementId): Message => ({
  key: `measure_${id.replace('.', '_')}`,
});
