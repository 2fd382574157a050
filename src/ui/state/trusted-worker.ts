/** As much of the browser's Trusted Types as a Worker needs; older browsers have none and take the plain string. */
interface ScriptUrls {
	createPolicy(name: string, rules: { createScriptURL: (url: string) => string }): ScriptUrlPolicy;
}
interface ScriptUrlPolicy {
	createScriptURL(url: string): string;
}

const rules = { createScriptURL: sameOrigin };
const { trustedTypes } = globalThis as { trustedTypes?: ScriptUrls };
const policy: ScriptUrlPolicy = trustedTypes?.createPolicy('graspline-worker', rules) ?? rules;

/**
 * A module Worker from an address the build gave (`?worker&url`).
 * Fails: throws RangeError when the address leaves our origin.
 */
export function trustedWorker(url: string): Worker {
	return new Worker(policy.createScriptURL(url), { type: 'module' });
}

function sameOrigin(url: string): string {
	const target = new URL(url, location.href);
	if (target.origin !== location.origin) {
		throw new RangeError(`a Worker must come from ${location.origin} - saw ${target.origin}`);
	}
	return target.href;
}
