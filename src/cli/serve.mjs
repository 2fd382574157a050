import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { pipeline } from 'node:stream';

/** @type {Record<string, string>} */
const TYPES = {
	'.css': 'text/css; charset=utf-8',
	'.html': 'text/html; charset=utf-8',
	'.js': 'text/javascript; charset=utf-8',
	'.json': 'application/json',
	'.pdf': 'application/pdf',
	'.png': 'image/png',
	'.svg': 'image/svg+xml',
	'.ttf': 'font/ttf',
	'.txt': 'text/plain; charset=utf-8',
	'.wasm': 'application/wasm',
	'.webmanifest': 'application/manifest+json',
	'.woff2': 'font/woff2'
};

const HEADERS = {
	'cross-origin-opener-policy': 'same-origin',
	'cross-origin-resource-policy': 'same-origin',
	'permissions-policy': 'camera=(), geolocation=(), microphone=()',
	'referrer-policy': 'no-referrer',
	'x-content-type-options': 'nosniff',
	'x-frame-options': 'DENY'
};

/** A page brings its own policy in its head; a Worker has only the one its script is sent with. */
const PAGE_POLICY = "frame-ancestors 'none'";
const FILE_POLICY = "default-src 'none'; script-src 'self'; connect-src 'self'; frame-ancestors 'none'";

const TRIES = 20;

/**
 * Serves a folder of files on this machine only, at the wanted port or the next free one.
 * @param {string} folder
 * @param {number} port 0 takes any free port
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export async function serve(folder, port) {
	const server = createServer((request, response) => {
		answer(path.resolve(folder), request, response);
	});
	const taken = await listen(server, port);
	return {
		url: `http://localhost:${taken}`,
		close: () =>
			new Promise((done) => {
				server.close(() => {
					done();
				});
				server.closeAllConnections();
			})
	};
}

/**
 * @param {import('node:http').Server} server
 * @param {number} wanted
 * @returns {Promise<number>}
 */
async function listen(server, wanted) {
	for (let port = wanted; ; port += 1) {
		try {
			return await new Promise((done, fail) => {
				server.once('error', fail);
				server.listen(port, '127.0.0.1', () => {
					server.off('error', fail);
					const address = server.address();
					done(address !== null && typeof address === 'object' ? address.port : port);
				});
			});
		} catch (error) {
			const busy = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
			if (!busy || port === wanted + TRIES) throw error;
		}
	}
}

/**
 * @param {string} folder
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
function answer(folder, request, response) {
	if (request.method !== 'GET' && request.method !== 'HEAD') {
		response.writeHead(405, { ...HEADERS, allow: 'GET, HEAD' }).end();
		return;
	}
	const [pathname = '/'] = (request.url ?? '/').split('?');
	const file = fileFor(folder, pathname);
	if (file === null) {
		response.writeHead(404, { ...HEADERS, 'content-type': 'text/plain; charset=utf-8' }).end('Nothing is here.\n');
		return;
	}
	if (file.endsWith('index.html') && !/(\/|index\.html)$/.test(pathname)) {
		// A page is a folder; without the slash its own links would start one folder too high.
		response.writeHead(308, { ...HEADERS, location: `${path.posix.basename(pathname)}/` }).end();
		return;
	}
	const type = path.extname(file);
	response.writeHead(200, {
		...HEADERS,
		'content-type': TYPES[type] ?? 'application/octet-stream',
		'content-security-policy': type === '.html' ? PAGE_POLICY : FILE_POLICY,
		// What has its hash in its name never changes; all else is asked for again.
		'cache-control': file.includes(`${path.sep}immutable${path.sep}`) ? 'max-age=31536000, immutable' : 'no-cache'
	});
	if (request.method === 'HEAD') response.end();
	// A visitor who leaves early, or a file replaced meanwhile, ends this answer and nothing else.
	else pipeline(createReadStream(file), response, () => undefined);
}

/**
 * The file a path means, or null; never one outside the folder.
 * @param {string} folder
 * @param {string} pathname
 * @returns {string | null}
 */
function fileFor(folder, pathname) {
	try {
		const file = path.join(folder, decodeURIComponent(pathname));
		if (file !== folder && !file.startsWith(folder + path.sep)) return null;
		const found = statSync(file).isDirectory() ? path.join(file, 'index.html') : file;
		return statSync(found).isFile() ? found : null;
	} catch {
		// A badly written path or a name that is not there: both are simply not found.
		return null;
	}
}
