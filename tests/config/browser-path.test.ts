import { execPath } from 'node:process';
import { describe, expect, it } from 'vitest';
import { findBrowser, usualPlaces } from '../browser/browser-path.ts';

describe('the search for a browser', () => {
  it('looks through PATH on Linux, Chromium before Chrome before Edge', () => {
    const places = usualPlaces('linux', { PATH: '/usr/local/bin:/usr/bin' });
    expect(places[0]).toBe('/usr/local/bin/chromium');
    expect(places.indexOf('/usr/bin/chromium')).toBeLessThan(
      places.indexOf('/usr/bin/google-chrome'),
    );
    expect(places).toContain('/usr/bin/microsoft-edge');
  });

  it('looks in the Applications folders on macOS', () => {
    const places = usualPlaces('darwin', { HOME: '/Users/welder' });
    expect(places).toContain('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
    expect(places).toContain(
      '/Users/welder/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    );
  });

  it('looks in the program folders that Windows names, and only in those', () => {
    const places = usualPlaces('win32', {
      'ProgramFiles(x86)': String.raw`C:\Program Files (x86)`,
    });
    expect(places).toEqual([
      String.raw`C:\Program Files (x86)\Google\Chrome\Application\chrome.exe`,
      String.raw`C:\Program Files (x86)\Chromium\Application\chrome.exe`,
      String.raw`C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe`,
    ]);
  });

  it('takes the program that TOELINE_BROWSER names before any other', async () => {
    const found = await findBrowser({ TOELINE_BROWSER: execPath });
    expect(found).toEqual({ path: execPath, source: 'TOELINE_BROWSER' });
  });

  it('says so plainly when TOELINE_BROWSER names nothing that runs', async () => {
    await expect(findBrowser({ TOELINE_BROWSER: '/no/such/browser' })).rejects.toThrow(
      'TOELINE_BROWSER names "/no/such/browser"',
    );
  });
});
