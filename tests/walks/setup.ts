import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { BROWSER_ARGS, findBrowser } from '../../src/cli/browser.mjs';
import { build, BUILT } from '../../src/cli/build.mjs';
import { serve } from '../../src/cli/serve.mjs';

declare module 'vitest' {
	interface ProvidedContext {
		/** Where the built app is served. */
		url: string;
		/** Where the one browser of all walks listens. */
		browser: string;
	}
}

/** One build, one server and one browser for all walks. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
	const built = build();
	if (!built.ok) throw new Error(`the app does not build:\n${built.output}`);
	const found = await findBrowser();
	if ('missing' in found) throw new Error(`the walks need a browser: ${found.missing}`);

	const server = await serve(BUILT, 0);
	const browser = await chromium.launchServer({
		executablePath: found.executablePath,
		env: { ...process.env, ...found.env },
		args: BROWSER_ARGS
	});
	project.provide('url', server.url);
	project.provide('browser', browser.wsEndpoint());
	return async () => {
		await browser.close();
		await server.close();
	};
}
