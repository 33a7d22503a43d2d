import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [preact()],
  // Processes, not threads: the tests of dates set the time zone, which only a process has.
  test: { include: ['src/**/*.test.{ts,tsx}'], environment: 'node', pool: 'forks', maxWorkers: 1 },
});
