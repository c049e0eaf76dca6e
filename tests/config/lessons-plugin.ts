import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runnerImport, type Plugin } from 'vite';

const parser = fileURLToPath(new URL('../../src/lesson/index.ts', import.meta.url));

/**
 * A lesson's `index.md` becomes the lesson itself, read and checked while the
 * page is built: no reader of markdown ships with the page, and a lesson that
 * cannot be read fails the build with its file and key.
 */
export function lessons(): Plugin {
  return {
    name: 'toeline-lessons',
    async load(id) {
      if (!/[\\/]lessons[\\/][^\\/]+[\\/]index\.md$/.test(id)) return null;
      const folder = dirname(id);
      const files = new Map(
        readdirSync(folder).map((name) => {
          const path = join(folder, name);
          this.addWatchFile(path);
          return [name, readFileSync(path, 'utf8')];
        }),
      );
      const { module } = await runnerImport<typeof import('../../src/lesson/index.ts')>(parser);
      const lesson = module.parseLesson(basename(folder), files);
      return { code: `export default ${JSON.stringify(lesson)};`, map: null };
    },
  };
}
