import { placeCase, planFrom, questionOf } from '#core/plan.ts';
import type { Case } from '#core/case/record.ts';
import type { Asked, Said } from './messages.ts';

/** How long the search runs before it listens again: short enough that a keystroke stops it at once. */
const SLICE = 30;

let latest = 0;

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
	if (data.kind === 'plan') latest = data.serial;
	const work = data.kind === 'plan' ? search(data.serial, data.c) : Promise.resolve();
	work.catch((error: unknown) => {
		say({ kind: 'failed', serial: data.serial, why: error instanceof Error ? error.message : String(error) });
	});
});

say({ kind: 'ready' });

async function search(serial: number, c: Case): Promise<void> {
	const run = placeCase(c);
	for (;;) {
		const until = performance.now() + SLICE;
		let step = run.next();
		while (!step.done && performance.now() < until) step = run.next();
		if (serial !== latest) return;
		if (step.done) {
			const { probes } = planFrom(questionOf(c), step.value);
			say({ kind: 'planned', serial, placed: step.value, probes });
			return;
		}
		say({ kind: 'progress', serial, nodes: step.value.nodes });
		await turn();
		if (serial !== latest) return;
	}
}

/** Lets messages in. */
function turn(): Promise<void> {
	return new Promise((resolve) => setTimeout(resolve));
}

function say(said: Said): void {
	postMessage(said);
}
