import preact from '@preact/preset-vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  // Relative addresses, so that the built app works under any sub-path of a static host.
  base: './',
  build: {
    target: 'es2022',
    manifest: true,
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    rolldownOptions: {
      output: {
        // What the home screen needs comes in one file: fewer trips on a cold start. The screens come in two, by the
        // half of the job they belong to, the keeping of records in a third, and what these share in a fourth: together
        // they compress far better than apart.
        codeSplitting: {
          groups: [
            { name: 'launch', tags: ['$initial'], priority: 4 },
            {
              name: 'wood',
              test: /screens.(stock|piece|movement|breakdown)|core.(lumber|csv|movement|moisture|breakdown)/,
              priority: 3,
            },
            {
              name: 'work',
              test: /screens.(mill|square|glue|finish)|core.(milling|square|gluing|finishing)/,
              priority: 3,
            },
            {
              name: 'records',
              test: /screens.(data|shop)|store.(backup|demo|migrations)|app.save-/,
              priority: 3,
            },
            { name: 'kit', test: /src/, minShareCount: 2, priority: 2 },
          ],
        },
      },
    },
  },
  plugins: [
    preact({ devToolsEnabled: false }),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'src',
      filename: 'sw.ts',
      registerType: 'prompt',
      injectRegister: false,
      manifest: false,
      // Without the PNG icons: the system keeps those of an installed app itself.
      injectManifest: { globPatterns: ['**/*.{html,js,css,svg,webmanifest}'] },
    }),
  ],
  test: {
    coverage: {
      include: ['src/core/**'],
      reporter: ['text-summary', 'json-summary'],
      thresholds: { lines: 95 },
    },
    projects: [
      { extends: true, test: { name: 'core', include: ['tests/{core,tables,figure}/**/*.test.ts'] } },
      {
        extends: true,
        test: {
          name: 'store',
          include: ['tests/{store,screens,app,ui}/**/*.test.{ts,tsx}'],
          setupFiles: ['fake-indexeddb/auto'],
        },
      },
      { extends: true, test: { name: 'repository', include: ['tests/repository/**/*.test.ts'] } },
      {
        extends: true,
        test: {
          name: 'journeys',
          include: ['tests/journeys/**/*.test.ts'],
          globalSetup: ['tests/setup/browser.ts'],
          testTimeout: 240_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
