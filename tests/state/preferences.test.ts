import { describe, expect, it } from 'vitest';
import { readPreferences, startingPreferences } from '../../src/state/preferences.ts';
import { PreferenceSession } from '../../src/state/preferences.svelte.ts';
import type { Shelf } from '../../src/state/shelf.ts';

describe('preferences', () => {
  it('start in millimetres, US terms and the theme of the system', () => {
    expect(readPreferences(null)).toEqual(startingPreferences);
  });

  it('keep what is known and drop what is not, one by one', () => {
    const kept = readPreferences('{"units":"in","terms":"klingon","theme":"dark","extra":1}');
    expect(kept).toEqual({ ...startingPreferences, units: 'in', theme: 'dark' });
  });

  it('keep a screen’s scale that can be one, and no other', () => {
    expect(readPreferences('{"pxPerMm":4.52}').pxPerMm).toBe(4.52);
    for (const wrong of ['0', '-4', '1e9', '"4"', 'null']) {
      expect(readPreferences(`{"pxPerMm":${wrong}}`).pxPerMm).toBeNull();
    }
  });

  it.each(['not json', 'null', '7', '[]', '"x"', '{"units":{"toString":1}}'])(
    'start afresh when %s was kept',
    (text) => {
      expect(readPreferences(text)).toEqual(startingPreferences);
    },
  );

  it('are kept on the shelf as soon as one changes', () => {
    const kept = new Map<string, string>();
    const shelf: Shelf = {
      read: (name) => kept.get(name) ?? null,
      write: (name, text) => (kept.set(name, text), true),
    };
    new PreferenceSession(shelf).change({ theme: 'dark' });
    expect(new PreferenceSession(shelf).value.theme).toBe('dark');
  });

  it('follow the system only while no theme was chosen', () => {
    const session = new PreferenceSession({ read: () => null, write: () => false });
    session.followSystem(true);
    expect(session.theme).toBe('dark');
    session.change({ theme: 'light' });
    expect(session.theme).toBe('light');
  });
});
