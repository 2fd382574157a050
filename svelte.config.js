import adapter from '@sveltejs/adapter-static';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

/** The hash of the one style attribute the framework's route announcer carries; the boot walk fails when it changes. */
const ANNOUNCER_STYLE = 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo=';

/** @type {import('@sveltejs/kit').Config} */
export default {
	preprocess: vitePreprocess(),
	kit: {
		adapter: adapter({ strict: true }),
		// What a page may do. frame-ancestors cannot stand in a meta element: the server sends it as a header.
		csp: {
			mode: 'hash',
			directives: {
				'default-src': ['none'],
				'script-src': ['self'],
				'style-src': ['self'],
				'style-src-attr': ['unsafe-hashes', ANNOUNCER_STYLE],
				'img-src': ['self', 'data:', 'blob:'],
				'font-src': ['self'],
				'connect-src': ['self'],
				'worker-src': ['self'],
				'manifest-src': ['self'],
				'base-uri': ['none'],
				'form-action': ['none'],
				'object-src': ['none'],
				'require-trusted-types-for': ['script'],
				'trusted-types': ['svelte-trusted-html', 'sveltekit-trusted-url', 'graspline-worker']
			}
		},
		typescript: {
			config: (config) => {
				/** @type {string[]} */ (config['include']).push('../svelte.config.js', '../.config/*.js', '../src/**/*.mjs');
			}
		}
	}
};
