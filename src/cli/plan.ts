import { readFileSync, statSync } from 'node:fs';
import { readCase } from '#core/case/read.ts';
import type { Case, Problem } from '#core/case/record.ts';
import { furtherOf } from '#core/further.ts';
import { planCase, type Plan } from '#core/plan.ts';
import { reportOf, settled, type Beside } from '#core/report.ts';
import { worthMeasuring } from '#core/worth.ts';
import { asked, type Asked } from './args.ts';
import { tableOf } from './table.ts';
import { wrapped } from './wrapped.ts';
import { writeSheets } from './write.ts';

const MOST_BYTES = 4_000_000;

const DONE = 0;
const OPEN = 1;
const BAD_INPUT = 2;

function refuse(problems: readonly Problem[], file: string): number {
	for (const { path, says } of problems) for (const line of wrapped(`${file}: ${path}: ${says}`)) console.error(line);
	return BAD_INPUT;
}

function load(file: string): Case | readonly Problem[] {
	let text: string;
	try {
		const { size } = statSync(file);
		if (size > MOST_BYTES) {
			return [{ path: 'the whole file', says: `expected at most 2 MB - saw ${(size / 1e6).toFixed(1)} MB` }];
		}
		text = readFileSync(file, 'utf8');
	} catch (error) {
		return [
			{ path: 'the whole file', says: `cannot be read (${(error as NodeJS.ErrnoException).code ?? 'no reason'})` }
		];
	}
	const loaded = readCase(text);
	return loaded.kind === 'case' ? loaded.case : loaded.problems;
}

/** What is worked out once a plan is there, in one go. */
function besideOf(plan: Plan): Beside {
	const asked = furtherOf(plan);
	let step = asked.next();
	while (!step.done) step = asked.next();
	return { ...step.value, worth: worthMeasuring(plan) };
}

function run(words: readonly string[]): number {
	const ask: Asked | string = asked(words);
	if (typeof ask === 'string') {
		for (const line of wrapped(ask)) console.error(line);
		return BAD_INPUT;
	}
	const recorded = load(ask.file);
	if (!('schema' in recorded)) return refuse(recorded, ask.file);
	const c: Case = ask.reference ? { ...recorded, lead: 'reference-led', reference: ask.reference } : recorded;
	const plan = planCase(c);
	const beside = besideOf(plan);
	// The unit asked for is for reading only: it moves no mark.
	const tape = { unit: ask.unit ?? c.tape.unit };
	if (ask.out !== null) {
		const { out: folder, sheet, both } = ask;
		const failed = writeSheets(plan, beside, { folder, tape, sheet, both });
		if (failed.length > 0) return refuse(failed, ask.out);
	}
	console.log(ask.json ? JSON.stringify(reportOf(plan, beside), null, '\t') : tableOf(plan, beside, tape));
	return settled(plan) ? DONE : OPEN;
}

process.exitCode = run(process.argv.slice(2));
