import type { Page } from 'playwright-core';
import axe from 'axe-core';

/** Lights of the screen, by what the button says of each. */
export const LIGHTS = ['paper', 'night', 'bright sun'] as const;

/** Longest a search for places may take on a slow machine, ms. */
export const SEARCHED = 150_000;

/** Opens a case of the caseload by the initials on its row. */
export async function openCase(page: Page, initials: string): Promise<void> {
	await page.getByRole('link', { name: initials }).click();
	await page.getByRole('heading', { level: 1 }).waitFor({ state: 'attached' });
}

/** Goes to a step of the path. */
export async function goTo(page: Page, step: 'Person' | 'Enclosure' | 'Places' | 'Sheets'): Promise<void> {
	await page.getByRole('navigation', { name: 'Path of the case' }).getByRole('link', { name: step }).click();
	await page.getByRole('heading', { level: 1, name: step }).waitFor({ state: 'attached' });
}

/** Waits until the search has come to its end. */
export async function searched(page: Page): Promise<void> {
	await page
		.getByRole('main')
		.getByText('No better place on these figures', { exact: true })
		.waitFor({ timeout: SEARCHED });
}

/** Turns the light until it is the one wanted. */
export async function light(page: Page, wanted: (typeof LIGHTS)[number]): Promise<void> {
	const button = page.getByRole('button', { name: /^Light/ });
	while (!(await button.getAttribute('aria-label'))?.includes(`: ${wanted}.`)) await button.click();
}

/** What axe finds wrong on the page as it stands: each rule with the elements it names. */
export async function barriers(page: Page): Promise<readonly string[]> {
	await page.evaluate(axe.source);
	const found = await page.evaluate(async () => {
		const run = (window as unknown as { axe: typeof axe }).axe.run;
		return (await run(document)).violations;
	});
	return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
}
