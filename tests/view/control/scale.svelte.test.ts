import { flushSync, mount, unmount } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import Scale from '../../../src/view/control/Scale.svelte';

let close: (() => void) | null = null;
afterEach(() => close?.());

/** A scale whose value is what `settle` makes of what is asked; its native thumb. */
function thumbOf(start: number, settle: (asked: number) => number): HTMLInputElement {
  const held = $state({ value: start });
  const props = {
    id: 'scale',
    min: 0,
    max: 20,
    get value() {
      return held.value;
    },
    unit: 'mm' as const,
    allowed: null,
    focused: false,
    name: 'Leg 1',
    valueText: '',
    onstep: () => undefined,
    onpropose: (asked: number) => (held.value = settle(asked)),
    oncommit: () => undefined,
    oncancel: () => undefined,
  };
  const mounted = mount(Scale, { target: document.body, props });
  close = () => {
    void unmount(mounted);
    close = null;
  };
  flushSync();
  const thumb = document.querySelector('input');
  if (thumb === null) throw new Error('no thumb');
  return thumb;
}

function drag(thumb: HTMLInputElement, to: number): void {
  thumb.valueAsNumber = to;
  thumb.dispatchEvent(new Event('input', { bubbles: true }));
  flushSync();
}

describe('the thumb of a scale', () => {
  it('stands at the step that a drag came to', () => {
    const thumb = thumbOf(8, Math.round);
    drag(thumb, 9.7);
    expect(thumb.valueAsNumber).toBe(10);
    drag(thumb, 10.2);
    expect(thumb.valueAsNumber).toBe(10);
    drag(thumb, 3.4);
    expect(thumb.valueAsNumber).toBe(3);
  });

  it('goes back to where the value was held', () => {
    const thumb = thumbOf(8, (asked) => Math.min(asked, 12));
    drag(thumb, 15);
    expect(thumb.valueAsNumber).toBe(12);
    for (const further of [18, 20, 12.5]) {
      drag(thumb, further);
      expect(thumb.valueAsNumber).toBe(12);
    }
    drag(thumb, 11);
    expect(thumb.valueAsNumber).toBe(11);
  });
});
