import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

import { catalogues } from './languages/compile.mjs';

// Chunks loaded after the first answer say so in their names, for counting bytes.
const later = 'assets/later-[name]-[hash].js';
// The bundler's own few helpers, and what the first script shares with later ones, are loaded at
// once.
const atOnce = ['rolldown-runtime', 'remember'];
const chunk = ({ name }: { name: string }) => (atOnce.includes(name) ? 'assets/[name]-[hash].js' : later);
const assetFileNames = ({ names }: { names: string[] }) => `assets/${names[0] === 'treadwater.wasm' ? 'later-' : ''}[name]-[hash][extname]`;

export default defineConfig({
  // Relative addresses: the built folder works under any path of any static host.
  base: './',
  build: {
    target: 'es2022',
    assetsInlineLimit: 0, // the page's content policy allows no data: addresses
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
    rollupOptions: {
      input: ['index.html', 'src/embed/embed.ts'],
      // Other people's pages name embed.js, so its name never changes.
      output: { entryFileNames: ({ name }) => (name === 'embed' ? 'embed.js' : 'assets/[name]-[hash].js'), chunkFileNames: chunk, assetFileNames },
    },
  },
  worker: {
    format: 'es',
    rollupOptions: { output: { entryFileNames: later, chunkFileNames: later, assetFileNames } },
  },
  plugins: [
    catalogues(),
    VitePWA({
      // A new version waits until the person asks for it; src/page/offline.ts registers and asks.
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Treadwater',
        short_name: 'Treadwater',
        description: 'Is this tyre fit for the load, the road and the water, and how fast may it go?',
        id: './',
        start_url: './',
        scope: './',
        display: 'standalone',
        lang: 'en',
        background_color: '#faf9f6',
        theme_color: '#0b5563',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
      includeManifestIcons: false, // they lie in public/ and match the pattern below
      workbox: {
        globPatterns: ['**/*.{html,js,css,wasm,svg,png,webmanifest}'],
        globIgnores: ['embed.js'], // for other people's pages
        clientsClaim: true, // one visit is enough to be served without a server
        cleanupOutdatedCaches: true,
        inlineWorkboxRuntime: true,
        ignoreURLParametersMatching: [/./], // whatever a message app adds to the address
        navigateFallback: null,
        sourcemap: false,
      },
    }),
  ],
});
