import { caseSchema, type Case } from '#core/case/record.ts';
import { planCase, type Plan } from '#core/plan.ts';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { CLIENT_PLACES } from './client-places.ts';

/** The record of an example client. */
export function clientCase(name: string): Case {
	const file = fileURLToPath(new URL(`../../../personas/clients/${name}/case.json`, import.meta.url));
	return caseSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
}

/** The plan of an example client with everything where it once was found: no search. */
export function clientPlan(name: string, change: (c: Case) => Case = (c) => c): Plan {
	const places = Object.fromEntries(
		(CLIENT_PLACES[name] ?? []).map(([id, variant, wall, x, y]) => [id, { variant, wall, x, y, stage: 'pinned' }])
	);
	return planCase(caseSchema.parse({ ...change(clientCase(name)), places }));
}
