import { describe, expect, it } from 'vitest';
import { browserShelf } from '../../src/state/shelf.ts';

const refusing = (): Storage => {
  throw new DOMException('refused', 'SecurityError');
};

describe('shelf', () => {
  it('says so, and throws nothing, when the browser refuses storage', () => {
    const shelf = browserShelf(refusing);
    expect(shelf.read('bench')).toBeNull();
    expect(shelf.write('bench', 'x')).toBe(false);
  });

  it('says so when the storage is full', () => {
    const full = {
      getItem: () => 'before',
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError');
      },
    } as unknown as Storage;
    const shelf = browserShelf(() => full);
    expect(shelf.write('bench', 'x')).toBe(false);
    expect(shelf.read('bench')).toBe('before');
  });

  it('gives back what was kept', () => {
    const shelf = browserShelf(() => localStorage);
    expect(shelf.write('bench', 'x')).toBe(true);
    expect(shelf.read('bench')).toBe('x');
  });
});
