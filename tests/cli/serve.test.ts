import { request } from 'node:http';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serve } from '../../src/cli/serve.mjs';

interface Answer {
	status: number | undefined;
	headers: Record<string, unknown>;
	text: string;
}

const above = mkdtempSync(path.join(tmpdir(), 'graspline-'));
const folder = path.join(above, 'app');
let server: Awaited<ReturnType<typeof serve>>;

/** Asks for a path exactly as written; a tidy client would clean it up first. */
function ask(asked: string, method = 'GET'): Promise<Answer> {
	return new Promise((done, fail) => {
		const sent = request(server.url, { path: asked, method, family: 4 }, (answer) => {
			let text = '';
			answer.setEncoding('utf8');
			answer.on('data', (part: string) => (text += part));
			answer.on('end', () => {
				done({ status: answer.statusCode, headers: answer.headers, text });
			});
		});
		sent.on('error', fail).end();
	});
}

beforeAll(async () => {
	mkdirSync(path.join(folder, 'page'), { recursive: true });
	mkdirSync(path.join(folder, '_app/immutable'), { recursive: true });
	writeFileSync(path.join(above, 'secret.txt'), 'not for you');
	writeFileSync(path.join(folder, 'index.html'), 'home');
	writeFileSync(path.join(folder, 'page/index.html'), 'a page');
	writeFileSync(path.join(folder, '_app/immutable/worker.js'), '1');
	server = await serve(folder, 0);
});

afterAll(async () => {
	await server.close();
	rmSync(above, { recursive: true });
});

describe('the server', () => {
	test('[serve R1] a page may stand in no frame, and brings the rest of its policy itself', async () => {
		const { status, headers, text } = await ask('/?from=link');
		expect([status, text]).toEqual([200, 'home']);
		expect(headers).toMatchObject({
			'content-type': 'text/html; charset=utf-8',
			'content-security-policy': "frame-ancestors 'none'",
			'x-content-type-options': 'nosniff',
			'cache-control': 'no-cache'
		});
	});

	test('[serve R2] a script that may become a Worker carries a policy of its own', async () => {
		const { headers } = await ask('/_app/immutable/worker.js');
		expect(headers['content-security-policy']).toContain("default-src 'none'");
		expect(headers['cache-control']).toContain('immutable');
	});

	test('[serve R3] a page asked for without its slash is sent to it', async () => {
		expect(await ask('/page')).toMatchObject({ status: 308, headers: { location: 'page/' } });
		expect(await ask('/page/')).toMatchObject({ status: 200, text: 'a page' });
	});

	test.each([
		'/../secret.txt',
		'/%2e%2e/secret.txt',
		'/..%2fsecret.txt',
		'/page/../../secret.txt',
		'//',
		'/%00',
		'/%E0%A4%A'
	])('[serve R4] nothing outside the folder and no crash: %s', async (asked) => {
		const { text } = await ask(asked);
		expect(text).not.toContain('not for you');
		expect(await ask('/')).toMatchObject({ status: 200 });
	});

	test('[serve R5] it only answers, it takes nothing', async () => {
		expect(await ask('/', 'POST')).toMatchObject({ status: 405, headers: { allow: 'GET, HEAD' } });
		expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, text: '' });
		expect(await ask('/nothing')).toMatchObject({ status: 404 });
	});

	test('[serve R6] a taken port means the next one', async () => {
		const taken = Number(new URL(server.url).port);
		const second = await serve(folder, taken);
		expect(Number(new URL(second.url).port)).toBeGreaterThan(taken);
		await second.close();
	});
});
