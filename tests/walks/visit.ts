import { chromium, type BrowserContextOptions, type Page } from 'playwright-core';
import { inject } from 'vitest';

/** A page in a browser profile of its own, with all that went wrong on it so far. */
export interface Visit {
	page: Page;
	/** Console errors, uncaught errors, policy violations and requests to anywhere but the app's own origin. */
	complaints: string[];
	close(): Promise<void>;
}

declare global {
	interface Window {
		complain(what: string): void;
	}
}

/** A fresh visitor at the app, by default where the walks' own server has it. */
export async function visit(url = inject('url'), options: BrowserContextOptions = {}): Promise<Visit> {
	const browser = await chromium.connect(inject('browser'));
	const context = await browser.newContext(options);
	const page = await context.newPage();
	const complaints: string[] = [];
	page.on('console', (message) => {
		if (message.type() === 'error') complaints.push(`console: ${message.text()}`);
	});
	page.on('pageerror', (error) => complaints.push(`uncaught: ${error.message}`));
	context.on('request', (request) => {
		const target = new URL(request.url());
		if (target.protocol.startsWith('http') && target.origin !== url) complaints.push(`request: ${target.href}`);
	});
	await page.exposeFunction('complain', (what: string) => complaints.push(`policy: ${what}`));
	await page.addInitScript(() => {
		addEventListener('securitypolicyviolation', (event) => {
			window.complain(`${event.effectiveDirective} ${event.blockedURI} ${event.sample}`);
		});
	});
	await page.goto(url);
	return { page, complaints, close: () => browser.close() };
}
