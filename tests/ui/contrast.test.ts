// @vitest-environment node
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { contrast } from '../contrast.ts';

const CSS = readFileSync(fileURLToPath(new URL('../../src/app.css', import.meta.url)), 'utf8');

function tokens(selector: string): Record<string, string> {
	const block = CSS.slice(CSS.indexOf(`${selector} {`)).split('}')[0] ?? '';
	return Object.fromEntries(
		[...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [name, hex])
	);
}

const PAPER = tokens(':root');
const THEMES = { paper: PAPER, night: tokens("[data-theme='night']"), sun: tokens("[data-theme='sun']") };

describe.each(Object.entries(THEMES))('the light %s', (_, t) => {
	test.each([
		['ink', 'paper', 7],
		['ink-2', 'paper', 7],
		['datum', 'paper', 7],
		['ink', 'paper-pressed', 7],
		['ink', 'easy', 7],
		['ink', 'stretched', 7],
		['line-2', 'paper', 3]
	])('[screen R18] %s on %s has at least %s to 1', (a, b, least) => {
		expect(t[a]).toBeDefined();
		expect(contrast(t[a], t[b])).toBeGreaterThanOrEqual(least);
	});
});
