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
  '^(lesson_|calls_|symbol_|sheet_|own_limits_|joint_error|units_|measure_|limit_|limits_|bench_(sheet_|working_|key|document_|link_|file_' +
    '|picture_|print$|ready_|inches|theme|targets|storage|kept|not_kept|other_tab|measured_|aside_|calibrate|life_|choice_|kind_' +
    '|arrangement_|endcut_|preparation_|product_|backing_|shape_|spatter|remove|status_|margin_' +
    '|more_below|group_fitup$|over_short$|no_checks$|held_label$|row_|about_|symbol_|most_allowed|least_needed|present_|stop_))',
);

/** Keys of which there are many for other joints and sets than the one that a first visit opens with. */
const FAMILY =
  /^(scene|bench_parameter|bench_title|bench_summary|limits_name|limits_set|bench_limits)_/;
/** Those of them that the opening bench says, in the terms it opens with. A browser test opens it and looks for gaps. */
const OPENING = new RegExp(
  '^(scene_(leg[12]|theoreticalthroat|actualthroat|sizeequal|convexity|undercut2|governs|least|most' +
    '|not_shown(_one)?|scale|title|true_size(_about)?)' +
    '|bench_parameter_(leg[12]|convexity|root_gap|undercut[12]_depth)' +
    '|bench_title_(legs|tee)|bench_summary_(plates|convex|over)' +
    '|limits_name_(leg|throat|undercut|convexity|toe_angle|overlap|leg_difference|excess_throat' +
    '|root_gap)|limits_set_iso5817_c)(_short|_us)*\\d*$',
);

const comesFirst = (name) => (FAMILY.test(name) ? OPENING.test(name) : !REST.test(name));

const SENTENCE = /^export const (\w+) = \/\*\*.*?\*\/ (\((?:i|)\) => \{\n[\s\S]*?\n\});?$/gm;

/** The compiled sentence without its comments; one that takes no values is the text itself. */
function shortened(body) {
  const plain = body.replaceAll(/\/\*\*.*?\*\/ /g, '');
  return /^\(\) => \{\n\treturn \((`[\s\S]*`)\)\n\}$/.exec(plain)?.[1] ?? plain;
}

for (const locale of ['en']) {
  const source = readFileSync(`${folder}messages/${locale}.js`, 'utf8');
  const sentences = [...source.matchAll(SENTENCE)].map(([, name, body]) => ({ name, body }));
  const exported = source.match(/^export const /gm)?.length ?? 0;
  if (sentences.length !== exported) {
    throw new Error(`${locale}: ${exported} sentences compiled, ${sentences.length} understood`);
  }
  const write = (part, chosen) => {
    const lines = chosen.map(({ name, body }) => `  ${name}: ${shortened(body)},`);
    writeFileSync(
      `${folder}${locale}-${part}.js`,
      `/* eslint-disable */\nexport const sentences = {\n${lines.join('\n')}\n};\n`,
    );
    writeFileSync(
      `${folder}${locale}-${part}.d.ts`,
      'export declare const sentences: Readonly<\n' +
        '  Record<string, string | ((values?: Readonly<Record<string, string | number>>) => string)>\n>;\n',
    );
  };
  write(
    'first',
    sentences.filter(({ name }) => comesFirst(name)),
  );
  write(
    'rest',
    sentences.filter(({ name }) => !comesFirst(name)),
  );
}
