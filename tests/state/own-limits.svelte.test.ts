import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import type { LimitSet } from '../../src/limits/index.ts';
import { writeDocument, type BenchDocument } from '../../src/state/bench-document.ts';
import { BenchSession } from '../../src/state/bench.svelte.ts';
import { limitSetOf } from '../../src/state/limit-sets.ts';
import { OwnLimitsSession, writeLimits } from '../../src/state/own-limits.svelte.ts';
import { dropOwnSet, ownSetOf, ownSets } from '../../src/state/own-sets.svelte.ts';
import { readDocument } from '../../src/state/read-document.ts';
import type { Shelf } from '../../src/state/shelf.ts';
import { startingBench } from '../../src/state/start.ts';

const house = JSON.parse(readFileSync('src/limits/sets/lock-gate-house.json', 'utf8')) as LimitSet;
const words = { name: 'Sluice 5', about: 'Our own.' };

function shelf(refuses = false): Shelf & { readonly kept: Map<string, string> } {
  const kept = new Map<string, string>();
  return {
    kept,
    read: (name) => kept.get(name) ?? null,
    write: (name, text) => {
      if (!refuses) kept.set(name, text);
      return !refuses;
    },
  };
}
const withLimit = (set: LimitSet, mm: string): LimitSet => ({
  ...set,
  criteria: set.criteria.map((one) => (one.id === 'leg1-most' ? { ...one, max: { mm } } : one)),
});

beforeEach(() => {
  for (const { id } of ownSets()) dropOwnSet(id);
});

describe('limit sets of one’s own', () => {
  it('start from a set there is, under a name and an id of their own', async () => {
    const own = new OwnLimitsSession(shelf());
    expect(await own.start(house, words)).toBe('lock-gate-house-own');
    expect(await own.start(house, words)).toBe('lock-gate-house-own-2');
    expect(own.all.map(({ draft }) => draft.name)).toEqual(['Sluice 5', 'Sluice 5']);
    expect(ownSetOf('lock-gate-house-own')?.criteria).toEqual(house.criteria);
  });

  it('are judged by as soon as they are right, and by their last right state while they are not', async () => {
    const own = new OwnLimitsSession(shelf());
    const id = await own.start(house, words);
    const draft = { ...house, ...words, id };
    await own.change(withLimit(draft, 'sheetLeg1 + 1 mm'));
    expect(own.all[0]?.problems).toEqual([]);
    await own.change(withLimit(draft, 'sheetLeg1 + '));
    expect(own.all[0]?.problems[0]).toMatchObject({
      path: expect.stringMatching(/max\.mm$/) as string,
    });
    const row = limitSetOf(id)?.criteria.find((one) => one.id === 'leg1-most');
    expect(row?.max).toEqual({ mm: 'sheetLeg1 + 1 mm' });
  });

  it('are kept wrong as they are, and taken down again', async () => {
    const place = shelf();
    const own = new OwnLimitsSession(place);
    const id = await own.start(house, words);
    await own.change(withLimit({ ...house, ...words, id }, 'half a'));
    const again = new OwnLimitsSession(place);
    expect(await again.open()).toBeNull();
    expect(again.all).toHaveLength(1);
    expect(again.all[0]?.draft.criteria.find((one) => one.id === 'leg1-most')?.max).toEqual({
      mm: 'half a',
    });
    expect(again.all[0]?.problems).toHaveLength(1);
  });

  it('are put aside and said when what is kept can’t be read', async () => {
    const place = shelf();
    place.kept.set('toeline.limits', '[{');
    expect(await new OwnLimitsSession(place).open()).toEqual({
      key: 'bench_limits_kept_unreadable',
    });
    expect(place.kept.get('toeline.limits.unreadable')).toBe('[{');
  });

  it('go on when the shelf refuses, which is said', async () => {
    const own = new OwnLimitsSession(shelf(true));
    await own.start(house, words);
    expect(own.refused).toBe(true);
    expect(own.all).toHaveLength(1);
  });

  it('come in from a file beside what is here, or not at all', async () => {
    const own = new OwnLimitsSession(shelf());
    await own.start(house, words);
    expect(await own.bringIn(writeLimits(house))).toEqual({ id: 'lock-gate-house-own-2' });
    const before = own.all;
    const bad = await own.bringIn('{"version": 2}');
    expect('problems' in bad && bad.problems[0]?.line).toBe(1);
    expect(own.all).toBe(before);
  });

  it('are gone once removed', async () => {
    const place = shelf();
    const own = new OwnLimitsSession(place);
    const id = await own.start(house, words);
    own.remove(id);
    expect(own.all).toEqual([]);
    expect(ownSetOf(id)).toBeUndefined();
    expect(place.kept.get('toeline.limits')).toBe('[]');
  });
});

describe('a bench that is judged by a set of one’s own', () => {
  async function documentWith(mm: string): Promise<BenchDocument> {
    const own = new OwnLimitsSession(shelf());
    const id = await own.start(withLimit(house, mm), words);
    const bench = new BenchSession(startingBench());
    bench.setSheet({ ...bench.sheet, limitSet: id });
    return bench.document;
  }

  it('carries it, so that a link is whole in itself', async () => {
    const document = await documentWith('sheetLeg1 + 2 mm');
    expect(document.limits?.id).toBe('lock-gate-house-own');
    dropOwnSet('lock-gate-house-own');
    const read = await readDocument(writeDocument(document));
    expect(read.ok && read.document.sheet.limitSet).toBe('lock-gate-house-own');
    expect(limitSetOf('lock-gate-house-own')?.name).toBe('Sluice 5');
  });

  it('brings it in under another id where a different one goes by that id here', async () => {
    const document = await documentWith('sheetLeg1 + 2 mm');
    dropOwnSet('lock-gate-house-own');
    await documentWith('sheetLeg1 + 3 mm');
    const read = await readDocument(writeDocument(document));
    expect(read.ok && read.document.sheet.limitSet).toBe('lock-gate-house-own-2');
    const limit = (id: string) =>
      limitSetOf(id)?.criteria.find((one) => one.id === 'leg1-most')?.max?.mm;
    expect(limit('lock-gate-house-own')).toBe('sheetLeg1 + 3 mm');
    expect(limit('lock-gate-house-own-2')).toBe('sheetLeg1 + 2 mm');
    // the same one again is no second one
    const again = await readDocument(writeDocument(document));
    expect(again.ok && again.document.sheet.limitSet).toBe('lock-gate-house-own-2');
  });

  it('is refused with what is wrong when the set that it carries is', async () => {
    const document = await documentWith('sheetLeg1 + 2 mm');
    const bad = { ...document, limits: { ...document.limits, version: 9 } };
    const read = await readDocument(JSON.stringify(bad));
    expect(read).toMatchObject({
      ok: false,
      why: {
        key: 'bench_document_bad_limits',
        values: {
          why: { values: { field: 'version', reason: { key: 'limits_data_other_version' } } },
        },
      },
    });
    // one that is no set at all has no field to name
    expect(await readDocument(JSON.stringify({ ...document, limits: 7 }))).toMatchObject({
      why: { key: 'bench_document_bad_limits', values: { why: { key: 'limits_data_no_record' } } },
    });
  });
});

describe('what a shelf keeps of limit sets', () => {
  const draft = { ...house, ...words, id: 'sluice-own' };

  it.each([
    ['[null]'],
    ['[1]'],
    ['[{}]'],
    ['[{"id":"x"}]'],
    ['[{"id":"a","name":"n","criteria":[]}]'],
    ['{}'],
    ['"s"'],
    ['[['],
  ])('%s is put aside and said, and what can be read beside it is here', async (text) => {
    const place = shelf();
    place.write('toeline.limits', text);
    const own = new OwnLimitsSession(place);
    expect((await own.open())?.key).toBe('bench_limits_kept_unreadable');
    expect(place.kept.get('toeline.limits.unreadable')).toBe(text);
    expect(own.all).toEqual([]);
    const beside = shelf();
    beside.write('toeline.limits', `[null,${JSON.stringify(draft)}]`);
    const other = new OwnLimitsSession(beside);
    await other.open();
    expect(other.all.map((one) => one.draft.id)).toEqual(['sluice-own']);
  });

  it('put aside twice leaves both copies', async () => {
    const place = shelf();
    for (const text of ['[[', '{"a":1}']) {
      place.write('toeline.limits', text);
      await new OwnLimitsSession(place).open();
    }
    expect(place.kept.get('toeline.limits.unreadable')).toBe('[[');
    expect(place.kept.get('toeline.limits.unreadable-2')).toBe('{"a":1}');
  });

  it('is not written over where it can be neither read nor put aside', async () => {
    const place = shelf();
    place.write('toeline.limits', '[[');
    const full: Shelf = {
      read: (name) => place.read(name),
      write: (name, text) => !name.includes('unreadable') && place.write(name, text),
    };
    const own = new OwnLimitsSession(full);
    expect((await own.open())?.key).toBe('bench_limits_kept_untouchable');
    await own.start(house, words);
    expect(own.refused).toBe(true);
    expect(place.kept.get('toeline.limits')).toBe('[[');
  });

  it('two tabs write side by side: neither loses the other’s set, and no id is given twice', async () => {
    const place = shelf();
    const [one, other] = [new OwnLimitsSession(place), new OwnLimitsSession(place)];
    await one.open();
    await other.open();
    const first = await one.start(house, { ...words, name: 'Sluice 5' });
    const second = await other.start(house, { ...words, name: 'Sluice 6' });
    expect(first).not.toBe(second);
    await one.change({ ...house, ...words, id: first, about: 'changed' });
    const kept = JSON.parse(place.kept.get('toeline.limits') ?? '[]') as LimitSet[];
    expect(kept.map(({ id }) => id).sort()).toEqual([first, second].sort());
    await one.follow();
    expect(one.all.map((set) => set.draft.id).sort()).toEqual([first, second].sort());
    one.remove(second);
    await one.follow();
    expect(one.all.map((set) => set.draft.id)).toEqual([first]);
  });

  describe('is changed by two tabs:', () => {
    const [x, y] = ['lock-gate-house-own', 'lock-gate-house-own-2'];
    const draftOf = (id: string, about: string): LimitSet => ({ ...house, ...words, id, about });
    const aboutOf = (own: OwnLimitsSession) =>
      Object.fromEntries(own.all.map(({ draft }) => [draft.id, draft.about]));
    const keptAbout = (place: ReturnType<typeof shelf>) =>
      Object.fromEntries(
        (JSON.parse(place.kept.get('toeline.limits') ?? '[]') as LimitSet[]).map((set) => [
          set.id,
          set.about,
        ]),
      );

    /** Two tabs that both opened with the same two sets. */
    async function twoTabs() {
      const place = shelf();
      place.write('toeline.limits', JSON.stringify([draftOf(x, 'old'), draftOf(y, 'old')]));
      const [one, other] = [new OwnLimitsSession(place), new OwnLimitsSession(place)];
      await one.open();
      await other.open();
      return { place, one, other };
    }

    it('a change to one set does not take back what the other tab made of another', async () => {
      const { place, one, other } = await twoTabs();
      await one.change(draftOf(x, 'new'));
      await other.change(draftOf(y, 'new'));
      expect(keptAbout(place)).toEqual({ [x]: 'new', [y]: 'new' });
      await other.follow();
      expect(aboutOf(other)).toEqual({ [x]: 'new', [y]: 'new' });
      expect(other.said).toBeNull();
      // and it is judged by as the other tab left it
      await one.change({ ...withLimit(house, 'sheetLeg1 + 5 mm'), ...words, id: x });
      await other.follow();
      const row = ownSetOf(x)?.criteria.find(({ id }) => id === 'leg1-most');
      expect(row?.max).toEqual({ mm: 'sheetLeg1 + 5 mm' });
    });

    it('of one set that both change the later stays, and the other beside it under an id of its own', async () => {
      const { place, one, other } = await twoTabs();
      await one.change(draftOf(x, 'by the one'));
      await other.change(draftOf(x, 'by the other'));
      const copy = 'lock-gate-house-own-3';
      const all = { [x]: 'by the other', [y]: 'old', [copy]: 'by the one' };
      expect(keptAbout(place)).toEqual(all);
      expect(aboutOf(other)).toEqual(all);
      expect(other.said).toEqual({
        key: 'own_limits_other_tab',
        values: { name: 'Sluice 5' },
      });
      await one.follow();
      expect(aboutOf(one)).toEqual(all);
      // once that is taken in there is nothing to keep apart
      await one.change(draftOf(x, 'by the one again'));
      expect(keptAbout(place)).toEqual({ ...all, [x]: 'by the one again' });
    });

    it('a set under the hand waits until it is let go', async () => {
      const { one, other } = await twoTabs();
      other.hold(x);
      await one.change(draftOf(x, 'new'));
      await one.change(draftOf(y, 'new'));
      await other.follow();
      expect(aboutOf(other)).toEqual({ [x]: 'old', [y]: 'new' });
      other.hold(null);
      expect(aboutOf(other)).toEqual({ [x]: 'new', [y]: 'new' });
    });

    it('a set that one has removed is not written back by the other, unless it goes on with it', async () => {
      const { place, one, other } = await twoTabs();
      one.remove(x);
      await other.change(draftOf(y, 'new'));
      expect(keptAbout(place)).toEqual({ [y]: 'new' });
      await other.change(draftOf(x, 'went on'));
      await one.follow();
      await one.change(draftOf(y, 'newer'));
      expect(keptAbout(place)).toEqual({ [x]: 'went on', [y]: 'newer' });
    });

    it('what one has made of a set meanwhile is not removed with what the other saw of it', async () => {
      const { place, one, other } = await twoTabs();
      await one.change(draftOf(x, 'new'));
      other.remove(x);
      expect(keptAbout(place)).toEqual({ [x]: 'new', [y]: 'old' });
    });

    it('what the shelf refused is kept with the next change, and so is what was on an emptied shelf', async () => {
      let refuses = false;
      const place = shelf();
      const own = new OwnLimitsSession({
        read: (name) => place.read(name),
        write: (name, text) => !refuses && place.write(name, text),
      });
      await own.start(house, { ...words, about: 'one' });
      refuses = true;
      await own.change(draftOf(x, 'two'));
      refuses = false;
      await own.start(house, { ...words, about: 'three' });
      expect(keptAbout(place)).toEqual({ [x]: 'two', [y]: 'three' });
      place.kept.clear();
      await own.change(draftOf(y, 'four'));
      expect(keptAbout(place)).toEqual({ [x]: 'two', [y]: 'four' });
    });
  });

  it('a file nested deeper than any set is refused plainly', async () => {
    const own = new OwnLimitsSession(shelf());
    const answer = await own.bringIn('['.repeat(100_000));
    expect(answer).toMatchObject({ problems: [{ reason: { key: 'bench_limits_file_no_json' } }] });
  });
});
