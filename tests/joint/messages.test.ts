import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const JOINT = new URL('../../src/joint/', import.meta.url).pathname;
const messages = JSON.parse(
  readFileSync(new URL('../../src/view/messages/en/joint.json', import.meta.url), 'utf8'),
) as Readonly<Record<string, string>>;

test('Every reason for refusing a joint has its sentence, and no sentence is left over', () => {
  const keys = new Set<string>();
  for (const name of readdirSync(JOINT, { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.ts')) continue;
    const text = readFileSync(join(JOINT, name), 'utf8');
    for (const [, key] of text.matchAll(/'(joint_error_[a-z_]+)'/g)) if (key) keys.add(key);
  }
  const told = Object.keys(messages).filter((key) => key.startsWith('joint_error_'));
  expect(told.sort()).toEqual([...keys].sort());
});
