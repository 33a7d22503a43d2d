import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';

/** The practitioner pages: online only, no service worker. */
export default defineConfig({
  root: 'src/practitioner',
  base: '/desk/',
  publicDir: false,
  build: {
    outDir: '../../../backend/steadfoot/static/desk',
    emptyOutDir: true,
    target: ['es2022', 'safari16'],
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  plugins: [preact()],
  server: { port: 5182, proxy: { '/api': 'http://127.0.0.1:8000' } },
});
