import { placeCase, planFrom, questionOf } from '#core/plan.ts';
import { sheetsOf } from '#core/drawing/sheets.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import type { Found } from '#core/placement/search.ts';
import type { Asked, Said } from './messages.ts';

/** How long the search runs before it listens again: short enough that a keystroke stops it at once. */
const SLICE = 30;

let latest = 0;

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
	if (data.kind === 'plan') latest = data.serial;
	const work = data.kind === 'plan' ? search(data.serial, data.c) : print(data);
	work.catch((error: unknown) => {
		say({ kind: 'failed', serial: data.serial, why: error instanceof Error ? error.message : String(error) });
	});
});

say({ kind: 'ready' });

async function search(serial: number, c: Case): Promise<void> {
	const run = placeCase(c);
	let told: Found | null = null;
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
		const { nodes, found } = step.value;
		const marks = found && found !== told ? { marks: asSeen(c, found.marks) } : {};
		told = found;
		say({ kind: 'progress', serial, nodes, ...marks });
		await turn();
		if (serial !== latest) return;
	}
}

/** Marks found so far, in the room as it is: rooms with the seat on the right are solved in a mirror. */
function asSeen(c: Case, marks: readonly Mark[]): readonly Mark[] {
	if (c.enclosure.seatWall === 'left') return marks;
	const { scene, wanted } = questionOf(c);
	return marks.flatMap((mark) =>
		wanted
			.filter(({ id }) => id === mark.accessory.id)
			.map((accessory) => ({ ...mark, accessory, place: mirroredPlace(mark.place, scene.room.footprint) }))
	);
}

/** The sheets as one PDF; the writer of PDFs is large and only fetched when asked for. */
async function print({ serial, c, placed, fonts, how }: Extract<Asked, { kind: 'pdf' }>): Promise<void> {
	const { pdfOf } = await import('#core/render/pdf.ts');
	const plan = planFrom(questionOf(c), placed);
	const bytes = pdfOf(
		sheetsOf(plan, how),
		{ title: `Marks of ${c.id}`, digest: plan.digest },
		{ regular: base64(fonts.regular), semibold: base64(fonts.semibold) }
	);
	say({ kind: 'pdf', serial, bytes: new Uint8Array(bytes) });
}

function base64(bytes: Uint8Array): string {
	let text = '';
	for (const byte of bytes) text += String.fromCharCode(byte);
	return btoa(text);
}

/** Lets messages in. */
function turn(): Promise<void> {
	return new Promise((resolve) => setTimeout(resolve));
}

function say(said: Said): void {
	postMessage(said);
}
