import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { BUILT } from '../../src/cli/build.mjs';
import { serve } from '../../src/cli/serve.mjs';
import { visit, type Visit } from './visit.ts';

declare global {
	interface Window {
		heard: unknown[];
	}
}

/** Reloads with ears on every Worker the page starts, and gives what the first one says first. */
async function firstWord({ page }: Visit): Promise<unknown> {
	await page.addInitScript(() => {
		window.heard = [];
		window.Worker = class extends Worker {
			constructor(url: string | URL, options?: WorkerOptions) {
				super(url, options);
				this.addEventListener('message', (event) => window.heard.push(event.data));
			}
		};
	});
	await page.reload();
	await page.waitForFunction(() => window.heard.length > 0);
	return page.evaluate(() => window.heard[0]);
}

describe('the app starts', () => {
	let server: Awaited<ReturnType<typeof serve>>;
	let visitor: Visit;

	beforeEach(async () => {
		server = await serve(BUILT, 0);
		visitor = await visit(server.url);
	});

	afterEach(async () => {
		await visitor.close();
		await server.close();
	});

	test('[boot R1] it says its name, and nothing is refused, broken or asked of another host', async () => {
		await visitor.page.waitForLoadState('networkidle');
		expect(await visitor.page.title()).toContain('Graspline');
		expect(visitor.complaints).toEqual([]);
	});

	test('[boot R2] its Worker starts under the policy and answers', async () => {
		expect(await firstWord(visitor)).toMatchObject({ kind: 'ready' });
		expect(visitor.complaints).toEqual([]);
	});

	test('[boot R3] once loaded it works with the server gone, Worker included', async () => {
		await visitor.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
		await server.close();
		expect(await firstWord(visitor)).toMatchObject({ kind: 'ready' });
		expect(await visitor.page.title()).toContain('Graspline');
		expect(visitor.complaints).toEqual([]);
	});

	test('[boot R4] the policy bites: a plain script address, foreign code and a foreign host are refused', async () => {
		const refused = await visitor.page.evaluate(async () => {
			const attempts = {
				'a Worker from a plain string': () => new Worker('/_app/version.json'),
				'code from a string': () => Reflect.construct(Function, ['return 1']) as unknown,
				'markup from a string': () => (document.body.innerHTML = '<b>x</b>'),
				'a foreign host': () => fetch('http://127.0.0.1:9/')
			};
			// What a test asks for directly may evaluate strings; a moment later the page's own rules hold again.
			await new Promise((later) => setTimeout(later));
			const names: string[] = [];
			for (const [name, attempt] of Object.entries(attempts)) {
				try {
					await attempt();
				} catch {
					names.push(name);
				}
			}
			return names;
		});
		expect(refused).toEqual([
			'a Worker from a plain string',
			'code from a string',
			'markup from a string',
			'a foreign host'
		]);
		await expect.poll(() => visitor.complaints.filter((what) => what.startsWith('policy: ')).length).toBe(4);
	});
});
