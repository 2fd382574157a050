// @vitest-environment node
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const CSS = readFileSync(fileURLToPath(new URL('../../src/app.css', import.meta.url)), 'utf8');

function tokens(selector: string): Record<string, string> {
	const block = CSS.slice(CSS.indexOf(`${selector} {`)).split('}')[0] ?? '';
	return Object.fromEntries(
		[...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [name, hex])
	);
}

const PAPER = tokens(':root');
const THEMES = { paper: PAPER, night: tokens("[data-theme='night']"), sun: tokens("[data-theme='sun']") };

/** Source: WCAG 2.2, definitions of contrast ratio and relative luminance. */
function contrast(a = '', b = ''): number {
	const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
	return (light + 0.05) / (dark + 0.05);
}

function luminance(hex: string): number {
	const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
		const share = parseInt(hex.slice(at, at + 2), 16) / 255;
		return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

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
