import { placeCase, planFrom, questionOf, type Plan } from '#core/plan.ts';
import { betterWithout, furtherOf } from '#core/further.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import type { Placed } from '#core/placement/answer.ts';
import type { Found, Progress } from '#core/placement/search.ts';
import { weighing } from '#core/worth.ts';
import { heldCase } from './held-case.ts';
import type { Asked, Said, Stands } from './messages.ts';
import { standingMarks } from './standing-marks.ts';

/** How long a search runs before it listens again: short enough that a keystroke stops it at once. */
const SLICE = 30;

/** The question that is worked on; answers to any other are not wanted any more. */
let latest = 0;
/** The search that is to end with the best it has. */
let enough = 0;

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
	if (data.kind === 'enough') enough = data.serial;
	else if (data.kind !== 'file') latest = data.serial;
	worked(data)?.catch((error: unknown) => {
		say({ kind: 'failed', serial: data.serial, why: error instanceof Error ? error.message : String(error) });
	});
});

say({ kind: 'ready' });

function worked(data: Asked): Promise<void> | undefined {
	switch (data.kind) {
		case 'plan':
			return search(data.serial, data.c);
		case 'stands':
			return explain(data.serial, data);
		case 'file':
			return write(data);
		default:
			return undefined;
	}
}

async function search(serial: number, c: Case): Promise<void> {
	let last: Progress | undefined;
	let told: Found | null = null;
	const placed = await sliced(serial, placeCase(c), (progress) => {
		last = progress;
		const { evaluations, bound, found } = progress;
		const news = found && found !== told ? { found: { marks: asSeen(c, found.marks), cost: found.cost } } : {};
		told = found;
		say({ kind: 'progress', serial, evaluations, bound, ...news });
		return enough !== serial;
	});
	if (serial !== latest) return;
	const kept = placed ?? stoppedAt(c, last);
	if (!kept) {
		say({ kind: 'nothing', serial });
		return;
	}
	const plan = planFrom(questionOf(c), kept);
	say({ kind: 'planned', serial, placed: kept, probes: plan.probes });
	await weigh(serial, plan);
	if (plan.status !== 'impossible') return;
	const further = await sliced(serial, furtherOf(plan), () => true);
	if (further && further.waysOut.length > 0) say({ kind: 'ways-out', serial, ways: further.waysOut });
}

/** The best plan of a search that was ended: good, and not proved. */
function stoppedAt(c: Case, last: Progress | undefined): Placed | undefined {
	if (!last?.found) return undefined;
	const { found, bound, evaluations, nodes } = last;
	const marks = standingMarks(questionOf(c), asSeen(c, found.marks));
	return { marks, status: 'bounded', cost: found.cost, bound, evaluations, nodes };
}

/** What explains marks as they stand; then whether the one that was moved would do better elsewhere, the others held. */
async function explain(serial: number, { c, marks, moved }: Stands): Promise<void> {
	const plan = planFrom(questionOf(c), asGiven(marks));
	say({ kind: 'explained', serial, probes: plan.probes });
	await weigh(serial, plan);
	if (moved === undefined || serial !== latest) return;
	const held = heldCase(c, marks, moved);
	const better = await sliced(serial, betterWithout(planFrom(questionOf(held), asGiven(marks)), moved), () => true);
	if (better) say({ kind: 'better', serial, better });
}

/** What measuring could move of the marks of a plan. */
async function weigh(serial: number, plan: Plan): Promise<void> {
	const worth = await sliced(serial, weighing(plan), () => true);
	if (worth) say({ kind: 'weighed', serial, worth });
}

function asGiven(marks: readonly Mark[]): Placed {
	return { marks, status: 'given', cost: [], bound: [], evaluations: 0, nodes: 0 };
}

/**
 * Runs what pauses, letting messages in between; `heard` is told of each pause that is not the last.
 * Gives nothing when something later was asked, or when `heard` wants no more.
 */
async function sliced<P, R>(
	serial: number,
	run: Generator<P, R, undefined>,
	heard: (progress: P) => boolean
): Promise<R | undefined> {
	for (;;) {
		const until = performance.now() + SLICE;
		let step = run.next();
		while (!step.done && performance.now() < until) step = run.next();
		if (serial !== latest) return undefined;
		if (step.done) return step.value;
		if (!heard(step.value)) return undefined;
		await turn();
		if (serial !== latest) return undefined;
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

/** One file of a plan; the writer of PDFs is large and only fetched when asked for. */
async function write({ serial, name, c, placed, beside, fonts, how }: Extract<Asked, { kind: 'file' }>): Promise<void> {
	const { fileOf } = await import('#core/files/file.ts');
	const set = { regular: base64(fonts.regular), semibold: base64(fonts.semibold) };
	const content = fileOf(name, { plan: planFrom(questionOf(c), placed), beside, how, fonts: set });
	say({ kind: 'file', serial, content: typeof content === 'string' ? content : new Uint8Array(content) });
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
