import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { countyOutlines } from './county-outlines.js';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  // The API serves the built files; in development its own server passes calls on to a running API.
  server: { proxy: { '/v1': process.env.DECKROUND_API ?? 'http://127.0.0.1:4310' } },
  build: { outDir: here('./dist/site'), emptyOutDir: true, manifest: true, modulePreload: { polyfill: false } },
  plugins: [
    react(),
    countyOutlines(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'src/offline',
      filename: 'service-worker.ts',
      injectRegister: false,
      injectManifest: {
        // The map is for the office: it is read when it is looked at, not kept on every phone.
        globPatterns: ['index.html', 'assets/*.{js,css,woff2}', 'icon*.{svg,png}'],
        globIgnores: ['**/map-*', '**/maplibre*', '**/counties*'],
      },
      manifest: {
        name: 'Deckround',
        short_name: 'Deckround',
        description: 'Upkeep of other people’s mowers where they stand',
        lang: 'en',
        start_url: '/',
        display: 'standalone',
        background_color: '#f6f2e7',
        theme_color: '#f6f2e7',
        icons: [
          { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
          { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
        ],
      },
    }),
  ],
});
