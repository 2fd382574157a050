import type { Case } from '#core/case/record.ts';
import { planFrom, questionOf, type Plan, type Question } from '#core/plan.ts';
import type { Mark } from '#core/case/accessory.ts';
import { judge } from '#core/rules/judge.ts';
import type { Finding } from '#core/rules/row.ts';
import type { Answered } from './messages.ts';
import { measuresOf, type Measures } from './moved.ts';
import { planner } from './planner.ts';
import { reachesOf } from './reaches.ts';

/** How long the last plan stands alone while a new one is looked for, ms. */
const PATIENCE = 1500;
const NO_MARKS: readonly Mark[] = [];

/** The plan of an open case as one types: judged at once with the last marks, searched anew behind. */
export class PlanState {
	/** The last answer of the search. It stays while a new one is looked for. */
	answered = $state.raw<Answered>();
	/** The best found so far while the search goes on, once it has gone on for a while. */
	private meanwhile = $state.raw<readonly Mark[]>();
	/** Nodes looked at so far; undefined when the search rests. */
	searching = $state.raw<number>();
	/** Why the last search broke off, or undefined. */
	broke = $state.raw<string>();
	/** Reaches and places as they were found for a case, as long as that case is remembered. */
	private readonly settled = new WeakMap<Case, Measures>();
	/** The case the last answer belongs to. */
	private answeredFor = $state.raw<Case>();
	private readonly read: () => Case;

	readonly question: Question = $derived.by(() => this.ask());
	/** The marks as last found, of what is still wanted. */
	readonly marks: readonly Mark[] = $derived(
		stillWanted(this.question, this.meanwhile ?? this.answered?.placed.marks ?? NO_MARKS)
	);
	/** Judged with the case as it stands and the marks as last found. */
	readonly findings: readonly Finding[] = $derived(judge(this.question.scene, this.question.rows, this.marks));
	/** What is open about the last answer, as questions. */
	readonly questions = $derived(this.answered?.probes.questions ?? []);
	/** Reaches and places, to be compared before and after a change. */
	readonly measures: Measures = $derived(measuresOf(reachesOf(this.question.scene), this.marks));
	/** Whether what is shown was found for the case as it stands. */
	readonly fresh: boolean = $derived.by(() => this.isFresh());
	/** The whole plan, once it is fresh: what sheets are drawn from. */
	readonly plan: Plan | undefined = $derived(
		this.fresh && this.answered ? planFrom(this.question, this.answered.placed) : undefined
	);

	constructor(read: () => Case) {
		this.read = read;
	}

	private ask(): Question {
		return questionOf(this.read());
	}

	private isFresh(): boolean {
		return this.answeredFor === this.read();
	}

	/** What was found for a case; undefined while it was never settled. */
	settledFor(c: Case): Measures | undefined {
		// Read so that whoever asks is asked again when an answer comes.
		return this.answered ? this.settled.get(c) : undefined;
	}

	/** Looks for places for a case; an older search is dropped. */
	search(c: Case): void {
		this.searching = 0;
		this.meanwhile = undefined;
		const patient = performance.now() + (this.answered ? PATIENCE : 0);
		let found: readonly Mark[] | undefined;
		planner.plan(c, {
			onprogress: (nodes, marks) => {
				this.searching = nodes;
				found = marks ?? found;
				if (performance.now() >= patient) this.meanwhile = found;
			},
			onplanned: (answered) => {
				this.answered = answered;
				this.answeredFor = c;
				this.settled.set(c, this.measures);
				this.meanwhile = undefined;
				this.searching = undefined;
				this.broke = undefined;
			},
			onfailed: (why) => {
				this.searching = undefined;
				this.broke = why;
			}
		});
	}
}

function stillWanted({ wanted }: Question, marks: readonly Mark[]): readonly Mark[] {
	return marks.flatMap((mark) => {
		const accessory = wanted.find(({ id }) => id === mark.accessory.id);
		return accessory ? [{ ...mark, accessory }] : [];
	});
}
