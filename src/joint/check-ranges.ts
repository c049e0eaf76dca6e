import type { Joint } from './joint.ts';
import { JointError } from './joint-error.ts';
import { rangeFaults, type Bounds } from './joint-fault.ts';
import { parametersFor, spatterBounds } from './ranges.ts';

/** Refuses a joint with a number outside its bounds, so that what follows may rely on them. */
export function checkRanges(joint: Joint): void {
  for (const range of parametersFor(joint.kind)) {
    const value = joint[range.field as keyof Joint];
    // most often in bounds: nothing to put together
    if (typeof value === 'number' && value >= range.min && value <= range.max) continue;
    throwFirst(value, range.field, range);
  }
  joint.spatter.forEach((bump, index) => {
    throwFirst(bump.place, `spatter.${index}.place`, spatterBounds.place);
    throwFirst(bump.height, `spatter.${index}.height`, spatterBounds.height);
  });
}

function throwFirst(value: unknown, field: string, bounds: Bounds): void {
  const [fault] = rangeFaults(value, field, bounds);
  if (fault) throw new JointError(fault.field, fault.bound, fault.reason);
}
