// The peer's server: CouchDB's HTTP interface over LevelDB, only with what a replicating phone needs.
//   node server.mjs PORT FOLDER [flushed]
import { dirname, join } from 'node:path';
import { createRequire } from 'node:module';
import express from 'express';

const require = createRequire(import.meta.url);
const [port, folder, flushed] = process.argv.slice(2);
const leveldown = require('leveldown');

// As it comes, LevelDB hands its writes to the system and does not wait for the disk.
class Flushed extends leveldown {
  _put(key, value, options, done) {
    super._put(key, value, { ...options, sync: true }, done);
  }

  _batch(operations, options, done) {
    super._batch(operations, { ...options, sync: true }, done);
  }
}

const db = (name) => (flushed ? new Flushed(name) : new leveldown(name));
const PouchDB = require('pouchdb').defaults({ prefix: `${folder}/`, db });
const built = join(dirname(require.resolve('pouchdb/package.json')), 'dist');

const app = express();
for (const adapter of ['idb', 'indexeddb']) {
  app.get(`/_page/${adapter}`, (_, answer) => {
    const plugin = adapter === 'indexeddb' ? '<script src="/_built/pouchdb.indexeddb.min.js"></script>' : '';
    answer.send(`<!doctype html><title>Peer</title><script src="/_built/pouchdb.min.js"></script>${plugin}`);
  });
}
app.use('/_built', express.static(built));
app.use(require('express-pouchdb')(PouchDB, { mode: 'minimumForPouchDB', inMemoryConfig: true }));
app.listen(Number(port), '127.0.0.1');
