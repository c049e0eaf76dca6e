/**
 * Finds the browser that the browser tests drive: the one named in TOELINE_BROWSER, an installed
 * Chromium, Chrome or Edge, or the Chromium packed in @sparticuz/chromium (Linux x64 only).
 * Nothing is ever downloaded.
 */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

export interface FoundBrowser {
  readonly path: string;
  readonly source: 'TOELINE_BROWSER' | 'installed' | 'packed';
}

/** The word in TOELINE_BROWSER that passes over installed browsers and takes the packed one. */
const PACKED = 'packed';

const COMMANDS = [
  ...['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'],
  ...['microsoft-edge', 'microsoft-edge-stable', 'msedge'],
];

const MAC_APPS = ['Google Chrome', 'Chromium', 'Microsoft Edge'];

const WINDOWS_PLACES = [
  String.raw`Google\Chrome\Application\chrome.exe`,
  String.raw`Chromium\Application\chrome.exe`,
  String.raw`Microsoft\Edge\Application\msedge.exe`,
];

type Environment = Readonly<Record<string, string | undefined>>;

/** Where an installed browser usually stands on this system, likeliest first. */
export function usualPlaces(platform: NodeJS.Platform, env: Environment): string[] {
  if (platform === 'darwin')
    return ['/Applications', `${env['HOME'] ?? ''}/Applications`].flatMap((folder) =>
      MAC_APPS.map((app) => `${folder}/${app}.app/Contents/MacOS/${app}`),
    );
  if (platform === 'win32')
    return ['ProgramFiles', 'ProgramFiles(x86)', 'LocalAppData']
      .map((name) => env[name])
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => WINDOWS_PLACES.map((place) => `${folder}\\${place}`));
  return (env['PATH'] ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => COMMANDS.map((command) => join(folder, command)));
}

/** The browser to drive; refuses with a plain sentence when there is none. */
export async function findBrowser(env: Environment = process.env): Promise<FoundBrowser> {
  const asked = env['TOELINE_BROWSER'];
  if (asked !== undefined && asked !== '' && asked !== PACKED) {
    if (!runnable(asked))
      throw new Error(`TOELINE_BROWSER names "${asked}", which is no program that can be run.`);
    return { path: asked, source: 'TOELINE_BROWSER' };
  }
  if (asked !== PACKED) {
    const installed = usualPlaces(process.platform, env).find(runnable);
    if (installed !== undefined) return { path: installed, source: 'installed' };
  }
  if (process.platform === 'linux' && process.arch === 'x64')
    return { path: await unpackChromium(), source: 'packed' };
  throw new Error(
    'No browser found for the browser tests. Install Chromium, Chrome or Edge, ' +
      'or name one in the environment variable TOELINE_BROWSER.',
  );
}

async function unpackChromium(): Promise<string> {
  // Read while the module loads: only under this name does it unpack its own NSS and expat
  // libraries and fonts, which a bare Debian lacks.
  process.env['AWS_EXECUTION_ENV'] ??= 'AWS_Lambda_nodejs20.x';
  const { default: chromium } = await import('@sparticuz/chromium');
  return chromium.executablePath();
}

function runnable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
