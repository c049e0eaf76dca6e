import { flushSync, mount, unmount, type Component } from 'svelte';
import { afterEach, expect, it } from 'vitest';
import { PreferenceSession } from '../../../src/state/preferences.svelte.ts';
import NumberField from '../../../src/view/control/NumberField.svelte';
import { setWording, Wording } from '../../../src/view/wording.svelte.ts';

const nowhere = { read: () => null, write: () => true };
let close: (() => void) | null = null;
afterEach(() => close?.());

/** A field for whole numbers, and what its value stands at. */
function fieldOf(start: string) {
  const held = $state({ shown: start });
  const taken: number[] = [];
  const props = {
    name: 'Leg 1',
    get shown() {
      return held.shown;
    },
    parse: (text: string) =>
      /^\d+$/u.test(text)
        ? { value: Number(text) }
        : { problem: { key: 'units_no_number', values: {} } },
    onvalue: (value: number) => {
      taken.push(value);
      held.shown = String(value);
    },
  };
  const WithWords: Component<typeof props> = (anchor, own) => {
    setWording(new Wording(new PreferenceSession(nowhere)));
    return NumberField(anchor, own);
  };
  const mounted = mount(WithWords, { target: document.body, props });
  close = () => {
    void unmount(mounted);
    close = null;
  };
  flushSync();
  const input = document.querySelector('input');
  if (input === null) throw new Error('no field');
  const type = (text: string): void => {
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    flushSync();
    input.dispatchEvent(new Event('change', { bubbles: true }));
    flushSync();
  };
  return { input, held, taken, type };
}

it('keeps bad text to be mended until the value moves on without it', () => {
  const { input, held, taken, type } = fieldOf('8');
  type('foo');
  expect([input.value, input.ariaInvalid ?? input.getAttribute('aria-invalid')]).toEqual([
    'foo',
    'true',
  ]);
  type('9');
  expect([input.value, input.getAttribute('aria-invalid'), taken]).toEqual(['9', null, [9]]);
  type('foo');
  held.shown = '12';
  flushSync();
  expect([input.value, input.getAttribute('aria-invalid')]).toEqual(['12', null]);
  type('13');
  expect([input.value, taken]).toEqual(['13', [9, 13]]);
  type('bar');
  expect([input.value, input.getAttribute('aria-invalid')]).toEqual(['bar', 'true']);
});
