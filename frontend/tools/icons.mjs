// Draws the PNG icons from public/icon.svg with a Chromium on this machine: node tools/icons.mjs [path to chromium]
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const chromium = process.argv[2] ?? 'chromium';
const folder = fileURLToPath(new URL('../public/', import.meta.url));
const svg = readFileSync(join(folder, 'icon.svg'), 'utf8');
const work = mkdtempSync(join(tmpdir(), 'icons-'));
const flags = '--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync --hide-scrollbars'.split(' ');

// A maskable icon keeps its mark within the middle circle of 80 %.
for (const [name, size, share] of [['icon-192', 192, 1], ['icon-512', 512, 1], ['icon-maskable', 512, 0.7]]) {
  const page = join(work, `${name}.html`);
  writeFileSync(page, `<style>body{margin:0;background:#f5eedd;display:grid;place-items:center;height:100vh}svg{width:${share * 100}vw}</style>${svg}`);
  execFileSync(chromium, [...flags, `--user-data-dir=${join(work, 'profile')}`, `--window-size=${size},${size}`, `--screenshot=${join(folder, `${name}.png`)}`, `file://${page}`], { stdio: 'ignore' });
}
rmSync(work, { recursive: true, force: true });
