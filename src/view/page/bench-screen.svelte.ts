import type { Group } from './groups.ts';

/** What is open on the bench's screen; no part of the work itself. */
export class BenchScreen {
  /** the group of controls that is unfolded; null for none (on a phone: the checks) */
  group = $state.raw<Group | null>(null);
  presenting = $state.raw(false);
  /** the screen's true scale is being measured */
  calibrating = $state.raw(false);
  /** the whole drawing at life size instead of as large as fits */
  lifeSize = $state.raw(false);
  /** the frame that the drawing stands in */
  frame = $state.raw<HTMLElement>();

  /** The drawing as it stands on the page. */
  readonly drawing = (): SVGSVGElement | null => this.frame?.querySelector('svg') ?? null;
}
