import { fileURLToPath } from 'node:url';
import svelte from 'eslint-plugin-svelte';
import { defineConfig } from 'eslint/config';
import ts from 'typescript-eslint';
import svelteConfig from '../svelte.config.js';

const root = fileURLToPath(new URL('..', import.meta.url));

/** What would let a clock, chance, a page or a machine into src/core: the same case must give the same bytes. */
const OUTSIDE_THE_CORE = [
	'window',
	'document',
	'navigator',
	'location',
	'localStorage',
	'sessionStorage',
	'indexedDB'
].concat([
	'fetch',
	'process',
	'Buffer',
	'performance',
	'setTimeout',
	'setInterval',
	'requestAnimationFrame',
	'console'
]);

export default defineConfig(
	{ ignores: ['**/build/', '**/.svelte-kit/', '**/node_modules/', '**/out/', '**/static/'] },
	ts.configs.strictTypeChecked,
	svelte.configs.recommended,
	{
		languageOptions: {
			parserOptions: { projectService: true, tsconfigRootDir: root, extraFileExtensions: ['.svelte'] }
		},
		linterOptions: { reportUnusedDisableDirectives: 'error' },
		rules: {
			eqeqeq: 'error',
			// A branded number is a number; the rule does not see through the brand.
			'@typescript-eslint/no-unsafe-unary-minus': 'off',
			'@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
			'svelte/no-navigation-without-resolve': 'error'
		}
	},
	{
		// In plain scripts a type is a comment, which these rules do not read.
		files: ['**/*.js', '**/*.mjs'],
		rules: {
			'@typescript-eslint/no-unsafe-assignment': 'off',
			'@typescript-eslint/no-unsafe-member-access': 'off',
			'@typescript-eslint/no-unsafe-call': 'off'
		}
	},
	{
		files: ['**/*.svelte', '**/*.svelte.ts'],
		languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } }
	},
	{
		files: ['src/core/**/*.ts'],
		rules: {
			'no-restricted-globals': [
				'error',
				...OUTSIDE_THE_CORE.map((name) => ({ name, message: 'src/core is pure: take it as an argument.' }))
			],
			'no-restricted-properties': [
				'error',
				{ object: 'Math', property: 'random', message: 'src/core is pure: take chance as an argument.' },
				{ object: 'Date', property: 'now', message: 'src/core is pure: take the time as an argument.' },
				{ object: 'crypto', property: 'randomUUID', message: 'src/core is pure: take the id as an argument.' },
				{ object: 'crypto', property: 'getRandomValues', message: 'src/core is pure: take chance as an argument.' }
			],
			'no-restricted-syntax': [
				'error',
				{
					selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
					message: 'src/core is pure: take the time as an argument.'
				},
				{ selector: 'ExportDefaultDeclaration', message: 'Named exports only: one noun a file, named after it.' }
			]
		}
	}
);
