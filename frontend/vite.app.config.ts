import preact from '@preact/preset-vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vite';

/** The phone app: everything it loads is precached, so nothing may be larger than the precache takes. */
export default defineConfig({
  root: 'src/client',
  base: '/app/',
  publicDir: '../../public',
  build: {
    outDir: '../../../backend/steadfoot/static/app',
    emptyOutDir: true,
    target: ['es2022', 'safari16'],
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // What the first load needs is one file: in several it packs worse.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'index', test: /src\/client\/main\.tsx$/ }] } } },
  },
  plugins: [
    preact(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: '../sw',
      filename: 'sw.ts',
      injectRegister: false,
      manifest: false,
      injectManifest: {
        rollupFormat: 'iife',
        globPatterns: ['**/*.{html,js,css,svg,png,woff2,webmanifest}'],
        maximumFileSizeToCacheInBytes: 4 * 1024 * 1024,
      },
    }),
  ],
  server: { port: 5181, proxy: { '/api': 'http://127.0.0.1:8000' } },
});
