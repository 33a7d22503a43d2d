// Phones for the model-based test of the sync: bundles the outbox as the phone app has it and serves it over standard input and
// output (src/outbox/testing/phones). Run by tests/sync/model; an argument names another frontend folder to take the outbox from.
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runInThisContext } from 'node:vm';
import { rolldown } from 'rolldown';

const frontend = resolve(process.argv[2] ?? fileURLToPath(new URL('..', import.meta.url)));

async function bundled(file, output, options) {
  const bundle = await rolldown({ input: `${frontend}/src/outbox/${file}`, logLevel: 'silent', ...options });
  const made = await bundle.generate(output);
  return made.output[0].code;
}

// The pages' hooks are not needed here, and half of what would be loaded again for each page.
const alias = { '@preact/signals': '@preact/signals-core' };
globalThis.pageSource = await bundled('index.ts', { format: 'iife', name: 'outbox' }, { resolve: { alias } });
const main = await bundled('testing/phones/main.ts', { format: 'cjs' }, { platform: 'node' });
// A page that was killed in the middle of something leaves promises that nobody waits for any more.
process.on('unhandledRejection', () => undefined);
runInThisContext(`(function (require) {${main}\n})`, { filename: 'phones.js' })(createRequire(import.meta.url));
