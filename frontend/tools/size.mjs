// Compressed script bytes of the phone app's first load: the entry script and what it imports statically.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const LIMIT_BYTES = 70_000; // house limit: about two seconds on a slow mobile link
const out = fileURLToPath(new URL('../../backend/steadfoot/static/app', import.meta.url));
const html = readFileSync(join(out, 'index.html'), 'utf8');

function staticImports(file) {
  const source = readFileSync(file, 'utf8');
  const found = [...source.matchAll(/(?:^|[;}\s])(?:import|export)\s*(?:[\w*{][^"'`()]*?from\s*)?["'](\.[^"']+)["']/g)];
  return found.map((match) => join(dirname(file), match[1]));
}

function firstLoad(entries) {
  const seen = new Set();
  const queue = [...entries];
  while (queue.length) {
    const file = queue.pop();
    if (seen.has(file)) continue;
    seen.add(file);
    queue.push(...staticImports(file));
  }
  return [...seen];
}

const entries = [...html.matchAll(/<script[^>]+src="\/app\/([^"]+)"/g)].map((match) => join(out, match[1]));
const rows = firstLoad(entries).map((file) => [file.slice(out.length + 1), gzipSync(readFileSync(file), { level: 9 }).length]);
const total = rows.reduce((sum, [, bytes]) => sum + bytes, 0);
for (const [name, bytes] of rows) console.log(`${String(bytes).padStart(7)}  ${name}`);
console.log(`${String(total).padStart(7)}  bytes gzip in all, limit ${LIMIT_BYTES}`);
if (!entries.length || total > LIMIT_BYTES) process.exit(1);
