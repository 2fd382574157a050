import { cornerOf } from '#core/drawing/setting-out.ts';
import { comparisonOf, outsideIn, type Comparison, type Quantity } from '#core/needs/comparison.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { isDocument, nameOf } from '#core/needs/source.ts';
import type { Question } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import type { Finding } from '#core/rules/row.ts';
import type { Scene } from '#core/measures/scene.ts';
import { placesKey } from './places-key.ts';

/** What is compared: the question of a case, with marks and what is said about them. */
interface Said {
	readonly question: Question;
	readonly marks: readonly Mark[];
	readonly findings: readonly Finding[];
}

/** A finding of a document outside of which the plan is, with where it stands and the reason it was accepted for. */
export interface Departure {
	/** The key of the record. */
	readonly key: string;
	readonly finding: Finding;
	readonly sources: readonly string[];
	readonly reason?: string;
}

/**
 * The comparison of a case, made anew only when what it depends on changed: typing a reason asks nothing.
 * Shape: the same answer for the same places and facts.
 */
export class Compared {
	private for = '';
	private made: Comparison = { quantities: [], documents: [] };

	of(c: Case, { question, marks, findings }: Said): Comparison {
		const key = `${placesKey(c)} ${JSON.stringify(marks.map(({ accessory, place }) => [accessory.id, place]))}`;
		if (key !== this.for) {
			const { scene, others } = question;
			this.made = comparisonOf({ scene, marks, findings: [...findings, ...judge(scene, others, marks)] }, cornerOf);
			this.for = key;
		}
		return this.made;
	}
}

/** What of a quantity is outside of documents: what one reason accepts is said once, with all that have it. */
export function departuresFrom(scene: Scene, { cells }: Quantity): readonly Departure[] {
	const all = cells
		.filter(({ source }) => isDocument(source))
		.flatMap((cell) =>
			outsideIn(scene, cell).map((one) => ({
				...one,
				key: `${one.finding.row.id}/${one.finding.about[0] ?? 'case'}`,
				source: nameOf(cell.source)
			}))
		);
	return all
		.filter(({ key }, i) => all.findIndex((other) => other.key === key) === i)
		.map(({ key, finding, reason }) => ({
			key,
			finding,
			sources: [...new Set(all.filter((other) => other.key === key).map(({ source }) => source))],
			...(reason !== undefined && { reason })
		}));
}
