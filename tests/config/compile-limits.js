/**
 * Compiles every built-in limit set beside its source: `npm run limits`.
 * Vite's loader runs the TypeScript of the program itself, so that what is
 * committed is what the program would make of the same text.
 */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { createServer } from 'vite';

const folder = fileURLToPath(new URL('../../src/limits/sets/', import.meta.url));
const style = await resolveConfig(folder);
const server = await createServer({
  configFile: false,
  root: fileURLToPath(new URL('../../src/', import.meta.url)),
  server: { middlewareMode: true, hmr: false, ws: false, watch: null },
  optimizeDeps: { noDiscovery: true },
  appType: 'custom',
  logLevel: 'error',
});
try {
  const { compileLimits } = await server.ssrLoadModule('/limits/compile/index.ts');
  const { parseLimitSet } = await server.ssrLoadModule('/limits/parse-limit-set.ts');
  const sources = (await readdir(folder)).filter((name) => /^[^.]+\.json$/u.test(name));
  for (const name of sources) {
    const set = parseLimitSet(JSON.parse(await readFile(folder + name, 'utf8')));
    const result = await compileLimits(set);
    if (!result.ok) {
      process.exitCode = 1;
      for (const { criterion, field, reason } of result.problems) {
        console.error(`${name}: ${criterion}, ${field}: ${reason.key}`, reason.values);
      }
      continue;
    }
    const out = name.replace('.json', '.compiled.json');
    const text = JSON.stringify(result.limits);
    await writeFile(folder + out, await format(text, { ...style, parser: 'json' }));
    console.log(`${out}: ${set.criteria.length} criteria`);
  }
} finally {
  await server.close();
}
