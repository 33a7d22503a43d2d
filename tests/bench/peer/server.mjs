// The peer's server: CouchDB's HTTP interface over LevelDB, only with what a replicating phone needs.
//   node server.mjs PORT FOLDER
import { dirname, join } from 'node:path';
import { createRequire } from 'node:module';
import express from 'express';

const require = createRequire(import.meta.url);
const [port, folder] = process.argv.slice(2);
const PouchDB = require('pouchdb').defaults({ prefix: `${folder}/` });
const built = join(dirname(require.resolve('pouchdb/package.json')), 'dist');

const app = express();
app.disable('x-powered-by'); // a header that only costs bytes
for (const adapter of ['idb', 'indexeddb']) {
  app.get(`/_page/${adapter}`, (_, answer) => {
    const plugin = adapter === 'indexeddb' ? '<script src="/_built/pouchdb.indexeddb.min.js"></script>' : '';
    answer.send(`<!doctype html><title>Peer</title><script src="/_built/pouchdb.min.js"></script>${plugin}`);
  });
}
app.use('/_built', express.static(built));
app.use(require('express-pouchdb')(PouchDB, { mode: 'minimumForPouchDB', inMemoryConfig: true }));
app.listen(Number(port), '127.0.0.1');
