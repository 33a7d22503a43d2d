// Fails when a file of the phone app is missing from the service worker's precache list: offline, it would be missing on the phone.
import { readFileSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const out = fileURLToPath(new URL('../../backend/steadfoot/static/app', import.meta.url));
const worker = readFileSync(join(out, 'sw.js'), 'utf8');

const files = readdirSync(out, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => relative(out, join(entry.parentPath, entry.name)).split(sep).join('/'))
  .filter((name) => name !== 'sw.js');

const missing = files.filter((name) => !worker.includes(`"${name}"`) && !worker.includes(`\`${name}\``));
if (missing.length) {
  console.error(`Not precached, so not there offline:\n  ${missing.join('\n  ')}`);
  process.exit(1);
}
console.log(`${files.length} files, all precached.`);
