import { sveltekit } from '@sveltejs/kit/vite';
import { svelteTesting } from '@testing-library/svelte/vite';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** jsPDF names three libraries it would only load for turning HTML into PDF; we never do, so they become nothing. */
const empty = fileURLToPath(new URL('src/ui/empty.js', import.meta.url));

export default defineConfig({
	plugins: [sveltekit()],
	resolve: { alias: { html2canvas: empty, canvg: empty, dompurify: empty } },
	worker: { format: 'es' },
	test: {
		projects: [
			{
				extends: true,
				test: {
					name: 'node',
					environment: 'node',
					setupFiles: ['tests/seed.ts'],
					testTimeout: 60_000,
					include: ['tests/**/*.test.ts'],
					exclude: ['tests/ui/**', 'tests/walks/**']
				}
			},
			{
				extends: true,
				plugins: [svelteTesting()],
				test: { name: 'dom', environment: 'jsdom', include: ['tests/ui/**/*.test.ts'] }
			},
			{
				extends: true,
				test: {
					name: 'walks',
					environment: 'node',
					include: ['tests/walks/**/*.test.ts'],
					globalSetup: 'tests/walks/setup.ts',
					// After all else: a browser that shares its processor with a solver's tests is a slow browser.
					sequence: { groupOrder: 1 },
					expect: { poll: { timeout: 10_000 } },
					testTimeout: 30_000,
					hookTimeout: 60_000
				}
			}
		]
	}
});
