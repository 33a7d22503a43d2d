// Makes src/generated/api.ts from the server's OpenAPI document. With --check it writes nothing and fails when the file is stale.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import openapiTS, { astToString } from 'openapi-typescript';

const target = fileURLToPath(new URL('../src/generated/api.ts', import.meta.url));
const backend = fileURLToPath(new URL('../../backend', import.meta.url));
const python = process.env.PYTHON ?? 'python';

function openapiDocument() {
  const path = [backend, process.env.PYTHONPATH].filter(Boolean).join(delimiter);
  return JSON.parse(execFileSync(python, ['-m', 'steadfoot.openapi'], { env: { ...process.env, PYTHONPATH: path }, encoding: 'utf8', maxBuffer: 1 << 26 }));
}

const types = astToString(await openapiTS(openapiDocument(), { alphabetize: true }));
const fresh = `// Made by "npm run generate" from the server's OpenAPI document. Never edited.\n${types}`;
const current = existsSync(target) ? readFileSync(target, 'utf8') : '';

if (!process.argv.includes('--check')) {
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, fresh);
  console.log(`${fresh.split('\n').length} lines of types written.`);
} else if (current !== fresh) {
  console.error('src/generated/api.ts is stale. Run: npm run generate');
  process.exit(1);
}
