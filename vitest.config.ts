import { doctest } from 'vite-plugin-doctest';
import { defineConfig } from 'vitest/config';

const source = new URL('./src/', import.meta.url).pathname;

export default defineConfig({
  plugins: [doctest()],
  // Pages and examples import the library by its name, as their reader will.
  resolve: {
    alias: [
      { find: /^loamloop$/, replacement: `${source}index.ts` },
      { find: /^loamloop\/(.+)$/, replacement: `${source}$1/index.ts` },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    // A busy machine makes no test fail.
    testTimeout: 120_000,
    includeSource: ['src/**/*.ts'],
    setupFiles: ['tests/support/property-seed.ts'],
    typecheck: { enabled: true, include: ['tests/**/*.test-d.ts'], tsconfig: './tsconfig.test.json' },
  },
});
