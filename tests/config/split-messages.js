/**
 * Second step of `npm run messages`: the compiled sentences as two plain objects, those that the
 * bench opens with and the rest. One object is a quarter of the size of as many exports, and the
 * rest is fetched at the first touch, so that the page opens with less.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../../src/view/messages/compiled/', import.meta.url));

/** Keys of sentences that nobody reads before having touched the page. */
const REST = new RegExp(
  '^(lesson_|symbol_|joint_error|units_|measure_|limit_|limits_(?!name_|set_)|bench_(sheet_|key|document_|link_|file_' +
    '|picture_|print$|ready_|inches|theme|targets|part_|storage|kept|choice_|kind_' +
    '|arrangement_|endcut_|preparation_|product_|backing_|shape_|spatter|remove|status_|margin_' +
    '|most_allowed|least_needed|present_|stop_))',
);

const SENTENCE = /^export const (\w+) = \/\*\*.*?\*\/ (\((?:i|)\) => \{\n[\s\S]*?\n\});?$/gm;

for (const locale of ['en']) {
  const source = readFileSync(`${folder}messages/${locale}.js`, 'utf8');
  const sentences = [...source.matchAll(SENTENCE)].map(([, name, body]) => ({ name, body }));
  const exported = source.match(/^export const /gm)?.length ?? 0;
  if (sentences.length !== exported) {
    throw new Error(`${locale}: ${exported} sentences compiled, ${sentences.length} understood`);
  }
  const write = (part, chosen) => {
    const lines = chosen.map(
      ({ name, body }) => `  ${name}: ${body.replaceAll(/\/\*\*.*?\*\/ /g, '')},`,
    );
    writeFileSync(
      `${folder}${locale}-${part}.js`,
      `/* eslint-disable */\nexport const sentences = {\n${lines.join('\n')}\n};\n`,
    );
    writeFileSync(
      `${folder}${locale}-${part}.d.ts`,
      'export declare const sentences: Readonly<\n' +
        '  Record<string, (values?: Readonly<Record<string, string | number>>) => string>\n>;\n',
    );
  };
  write(
    'first',
    sentences.filter(({ name }) => !REST.test(name)),
  );
  write(
    'rest',
    sentences.filter(({ name }) => REST.test(name)),
  );
}
