import type { Accessory, Mark } from '#core/case/accessory.ts';
import { leansOf } from '#core/measures/lean-need.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { BoundRow, Finding } from '#core/rules/row.ts';
import { waits } from '#core/rules/departures.ts';
import { askOf } from '#core/rules/sentence.ts';
import type { Probes, Wait } from './answer.ts';
import { driftsOf } from './drift.ts';
import { reasonsOf } from './why.ts';

interface Question {
	readonly scene: Scene;
	readonly wanted: readonly Accessory[];
	readonly rows: readonly BoundRow[];
	readonly nowhere: readonly Accessory[];
}

/** What is wanted and has no wall. */
const homeless = ({ reason }: Accessory): string =>
	`Where could this go? No wall stands for it: ${reason} Think of something that stands on the floor, or of another way.`;

/** Each thing that is not known once, with everything it is about. */
function questionsOf({ scene, nowhere }: Question, findings: readonly Finding[]): Probes['questions'] {
	const asked = new Map(nowhere.map((a) => [homeless(a), new Set([a.id])]));
	for (const says of scene.room.unknowns) asked.set(says, new Set());
	for (const f of findings) {
		if (f.answer !== 'unknown' || f.missing === undefined) continue;
		const about = asked.get(f.missing) ?? new Set<string>();
		for (const id of f.about) about.add(id);
		asked.set(f.missing, about);
	}
	return [...asked].map(([asks, about], i) => ({ id: `q${String(i + 1)}`, about: [...about], asks }));
}

function waitsOf({ c }: Scene, findings: readonly Finding[]): readonly Wait[] {
	return findings
		.filter((f) => waits(c, f))
		.map((f) => ({ row: f.row.id, about: f.about, whom: f.row.whom ?? '', asks: askOf(f.row) }));
}

/**
 * What is asked of an answer at once: why each mark is where it is, the room round it, leans needed, what is open.
 * Shape: quick; no place is looked for.
 */
export function probe(question: Question, marks: readonly Mark[], findings: readonly Finding[]): Probes {
	const { scene, rows } = question;
	return {
		reasons: reasonsOf({ scene, rows, marks, findings }),
		drifts: driftsOf(scene, rows, marks),
		leans: leansOf(scene, marks),
		questions: questionsOf(question, findings),
		waits: waitsOf(scene, findings)
	};
}
