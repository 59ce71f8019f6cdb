import { createHash } from 'node:crypto';
import { minify } from 'terser';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

/** JSX as calls of Preact's `h`: shorter than the newer runtime's objects, so that the app is smaller. */
const preactElements = (): Plugin => ({
  name: 'preact-elements',
  enforce: 'pre',
  config: () => ({ oxc: { jsx: { runtime: 'classic', pragma: 'h', pragmaFrag: 'Fragment' } } }),
  transform: {
    filter: { id: /\.tsx$/ },
    handler: (code) => ({ code: `import { h, Fragment } from 'preact';${code}`, map: null }),
  },
});

/** There are two files, and each is fetched when it is wanted: nothing has to be fetched ahead of an import. */
const noPreload = (): Plugin => ({
  name: 'no-preload',
  enforce: 'pre',
  load: {
    filter: { id: /vite\/preload-helper/ },
    handler: () => 'export const __vitePreload = (load) => load();',
  },
});

/**
 * What the first minifier leaves to a second one: less to fetch for the same scripts. It may count on this: nobody replaces
 * what the language brings along, reading a property does nothing else, and nothing is built with `new` of a function
 * without a name.
 */
const minifiedTwice = (): Plugin => ({
  name: 'minified-twice',
  apply: ({ build }, { command }) => command === 'build' && build?.minify !== false && !build?.sourcemap,
  generateBundle: {
    order: 'post',
    async handler(_, bundle) {
      // Constants stay on the side of a comparison where most stand: that compresses better.
      const compress = { passes: 3, unsafe: true, pure_getters: true, unsafe_arrows: true, lhs_constants: false };
      const again = async (code: string) => (await minify(code, { module: true, ecma: 2020, compress })).code ?? code;
      for (const file of Object.values(bundle)) {
        if (file.type === 'chunk') file.code = await again(file.code);
        else if (file.fileName.endsWith('.js')) file.source = await again(`${file.source}`);
      }
    },
  },
});

/** In the policy of the page. */
const styleRule = "style-src 'self'";

/**
 * The style stands in the page: on a cold start it costs no fetch of its own. The page's policy lets in this very text,
 * and no other; while developing, what the server puts in.
 */
const styleInPage = (): Plugin => ({
  name: 'style-in-page',
  transformIndexHtml: (page, { server }) => (server ? page.replace(styleRule, "style-src 'unsafe-inline'") : page),
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const page = bundle['index.html'];
      const style = Object.values(bundle).find(({ fileName }) => fileName.endsWith('.css'));
      if (page?.type !== 'asset' || style?.type !== 'asset') return this.error('no page, or no style for it');
      // Without the bundler's own mark at its end.
      const text = `${style.source}`.replace(/\s*\/\*\$vite\$.*\*\/\s*$/, '');
      const hash = createHash('sha256').update(text).digest('base64');
      page.source = `${page.source}`
        .replace(/<link rel="stylesheet"[^>]*>/, () => `<style>${text}</style>`)
        .replace(styleRule, `style-src 'sha256-${hash}'`);
      delete bundle[style.fileName];
    },
  },
});

export default defineConfig({
  // Relative addresses, so that the built app works under any sub-path of a static host.
  base: './',
  // The same library without the build for browsers that the app doesn't run in.
  resolve: { alias: { 'workbox-window': 'workbox-window/build/workbox-window.prod.mjs' } },
  build: {
    target: 'es2022',
    manifest: true,
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    cssCodeSplit: false,
    rolldownOptions: {
      output: {
        // What the home screen needs comes in one file: fewer trips on a cold start. All other screens come in a second:
        // together they compress far better than apart.
        codeSplitting: {
          groups: [
            { name: 'launch', tags: ['$initial'], priority: 2 },
            { name: 'screens', test: /src|workbox-window/, priority: 1 },
          ],
        },
      },
    },
  },
  plugins: [
    preactElements(),
    noPreload(),
    minifiedTwice(),
    styleInPage(),
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
    // A slow test is told by the bench; here a busy machine should not fail one that is right.
    testTimeout: 60_000,
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
          // A busy machine may starve a browser for seconds; what fails twice is broken.
          retry: 1,
          testTimeout: 240_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
