import { build, files, prerendered, version } from '$service-worker';

declare const self: ServiceWorkerGlobalScope;

/** Everything the app is made of, kept under the version it belongs to: a bathroom has no signal. */
const KEPT = `graspline-${version}`;
const addresses = [...build, ...files, ...prerendered];

self.addEventListener('install', (event) => {
	event.waitUntil(keepEverything());
});

// No skipWaiting: a new version waits until the last page of the old one is closed, so that no page mixes the two.
self.addEventListener('activate', (event) => {
	event.waitUntil(takeOver());
});

self.addEventListener('fetch', (event) => {
	const { origin, pathname } = new URL(event.request.url);
	if (event.request.method === 'GET' && origin === location.origin && addresses.includes(pathname)) {
		event.respondWith(kept(event.request, pathname));
	}
});

async function keepEverything(): Promise<void> {
	const cache = await caches.open(KEPT);
	// A host may let the browser hold on to a page; the new version needs the new page.
	await cache.addAll(addresses.map((address) => new Request(address, { cache: 'no-cache' })));
}

async function takeOver(): Promise<void> {
	const names = await caches.keys();
	await Promise.all(names.filter((name) => name !== KEPT).map((name) => caches.delete(name)));
	// The very first page was there before us: what it still loads must come from here too.
	await self.clients.claim();
}

async function kept(request: Request, pathname: string): Promise<Response> {
	const cache = await caches.open(KEPT);
	return (await cache.match(pathname)) ?? fetch(request);
}
