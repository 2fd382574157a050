import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Better } from '#core/further.ts';
import type { Probes, WayOut } from '#core/placement/answer.ts';
import { basisOf, planFrom, questionOf, type Plan, type Question } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import type { Finding } from '#core/rules/row.ts';
import type { Worth } from '#core/worth.ts';
import { Grounds, type Ground } from './grounds.ts';
import { judgedBeside } from './judged-beside.ts';
import type { Answered, Underway } from './messages.ts';
import { measuresOf, type Measures } from './moved.ts';
import { freeKey, placesKey } from './places-key.ts';
import { planner, type Listener } from './planner.ts';
import { reachesOf } from './reaches.ts';
import { standingMarks } from './standing-marks.ts';

/** How long the last plan stands alone while a new one is looked for, ms. */
const PATIENCE = 1500;
const NO_MARKS: readonly Mark[] = [];

/** Marks on their way under a hand, with the ids of those that move. */
export interface UnderHand {
	readonly marks: readonly Mark[];
	readonly ids: readonly string[];
}

/**
 * The plan of an open case: judged at once with the marks as they stand, searched anew behind when more than places
 * changed. What is moved, held or let go by hand moves nothing else until the rest is asked to be placed.
 */
export class PlanState {
	/** Marks under a hand; undefined when none is. */
	underHand = $state.raw<UnderHand>();
	/** How far the search is; undefined when it rests. */
	underway = $state.raw<Underway>();
	/** Why the last search broke off, or undefined. */
	broke = $state.raw<string>();
	/** The search was ended by hand before it had a plan. */
	emptyHanded = $state.raw(false);
	/** What would count less than the last move, until it is taken, left, or anything changes. */
	better = $state.raw<Better>();
	/** What marks stand on: the last answer of a search. It stays while a new one is looked for. */
	private ground = $state.raw<Ground>();
	/** The best found so far while the search goes on, once it has gone on for a while. */
	private meanwhile = $state.raw<readonly Mark[]>();
	/** What explains marks that stand where no search put them. */
	private explained = $state.raw<{ readonly for: string; readonly probes: Probes }>();
	/** What measuring could move, and in which case. */
	private weighed = $state.raw<{ readonly for: string; readonly worth: readonly Worth[] }>();
	/** What marks stood on in cases seen before. */
	private readonly remembered = new Grounds();
	/** What places depended on when the case was followed last. */
	private followed: string | undefined;
	/** The search under way was asked to end. */
	private ending = false;
	/** The mark that was moved last, and to which case that led. */
	private moved: { readonly id: string; readonly c: Case } | undefined;
	private readonly read: () => Case;

	readonly question: Question = $derived.by(() => questionOf(this.read()));
	/** What places depend on: words and answers move none. */
	private readonly key: string = $derived.by(() => placesKey(this.read()));
	/** The last answer of a search. */
	readonly answered: Answered | undefined = $derived(this.ground?.answered);
	/** The marks at rest: given, or as last found. */
	readonly atRest: readonly Mark[] = $derived(
		standingMarks(this.question, this.meanwhile ?? this.answered?.placed.marks ?? NO_MARKS)
	);
	/** Judged with the case as it stands and the marks at rest. */
	readonly judgedAtRest: readonly Finding[] = $derived(judge(this.question.scene, this.question.rows, this.atRest));
	/** The marks as they are seen: at rest, or under a hand. */
	readonly marks: readonly Mark[] = $derived(this.underHand?.marks ?? this.atRest);
	/** What is said about the marks as they are seen; under a hand only rows about what moves are asked again. */
	readonly findings: readonly Finding[] = $derived(
		this.underHand ? judgedBeside(this.question, this.judgedAtRest, this.underHand) : this.judgedAtRest
	);
	/** How many rows were asked so far; undefined when the search rests. */
	readonly searching: number | undefined = $derived(this.underway?.evaluations);
	/** Whether the marks at rest are what was found for the case as it stands. */
	readonly fresh: boolean = $derived(this.ground?.for === this.key);
	/** What the marks at rest rest on, answers that were given counted. */
	readonly basis: Plan['basis'] = $derived(basisOf(this.question.scene, this.judgedAtRest));
	/** Whether the search was ended by hand, so that it could look on. */
	readonly byHand: boolean = $derived(this.emptyHanded || (this.ground?.byHand ?? false));
	/** What explains the marks as they are seen; undefined while it is being worked out. */
	readonly probes: Probes | undefined = $derived.by(() => this.probesNow());
	/** What is open, as questions. */
	readonly questions = $derived((this.probes ?? this.answered?.probes)?.questions ?? []);
	/** What measuring could move of the marks at rest; undefined while it is being worked out. */
	readonly worth: readonly Worth[] | undefined = $derived(
		this.weighed?.for === this.key ? this.weighed.worth : undefined
	);
	/** Where nothing meets every must: ways out, once they are found. */
	readonly waysOut: readonly WayOut[] = $derived(this.fresh ? (this.ground?.waysOut ?? []) : []);
	/** Reaches and places, to be compared before and after a change. */
	readonly measures: Measures = $derived(measuresOf(reachesOf(this.question.scene), this.marks));
	/** The whole plan, once it is fresh: what sheets are drawn from. */
	readonly plan: Plan | undefined = $derived(
		this.fresh && this.answered ? planFrom(this.question, this.answered.placed) : undefined
	);

	constructor(read: () => Case) {
		this.read = read;
	}

	/** What was found for a case; undefined while it was never settled. */
	settledFor(c: Case): Measures | undefined {
		// Read so that whoever asks is asked again when an answer comes.
		return this.ground ? this.remembered.settledFor(placesKey(c)) : undefined;
	}

	/** Follows the case: places are looked for again when more changed than words, answers, or where marks are held. */
	follow(c: Case): void {
		this.underHand = undefined;
		if (this.followed === this.key) return;
		this.followed = this.key;
		this.better = undefined;
		const known = this.remembered.of(this.key);
		if (known) {
			this.rest(known);
			if (!this.fresh || this.worth === undefined) this.explain(c);
		} else if (this.underway || this.allHeld(c) || !this.standsOnPlacesOf(c)) this.search(c);
		else {
			if (this.ground) this.remembered.remember(this.key, this.ground);
			this.explain(c);
		}
	}

	/** Says that a mark was moved by hand, and to which case that led: a better place is looked for then. */
	handMoved(id: string, c: Case): void {
		this.moved = { id, c };
	}

	/** Leaves a move where it is: nothing better is looked for any more. */
	leave(): void {
		this.better = undefined;
		this.moved = undefined;
	}

	/** Looks for places for what is free; an older search is dropped. */
	search(c: Case): void {
		this.underway = { evaluations: 0, bound: [] };
		this.emptyHanded = false;
		this.ending = false;
		this.broke = undefined;
		this.meanwhile = undefined;
		const patient = performance.now() + (this.ground ? PATIENCE : 0);
		let best: Underway['found'];
		planner.plan(c, {
			...this.listening(),
			onprogress: ({ evaluations, bound, found }) => {
				best = found ?? best;
				this.underway = { evaluations, bound, ...(best && { found: best }) };
				// What stands under a hand stays: it moves when the hand has let go.
				if (best && performance.now() >= patient && !this.underHand) this.meanwhile = best.marks;
			},
			onplanned: ({ placed, probes }) => {
				this.take(c, { placed, probes });
			}
		});
	}

	/** Ends the search with the best plan so far. */
	enough(): void {
		if (!this.underway) return;
		this.ending = true;
		planner.enough();
	}

	private take(c: Case, answered: Answered): void {
		const byHand = this.ending && answered.placed.status === 'bounded';
		const ground = { answered, for: placesKey(c), free: freeKey(c), waysOut: [], byHand };
		this.ground = ground;
		this.meanwhile = undefined;
		this.underway = undefined;
		this.remembered.remember(this.key, ground);
		this.remembered.settle(ground.for, this.measures);
		// Ways out are looked for by the same question; asking another would end that.
		if (this.moved?.c === c && answered.placed.status !== 'impossible') this.explain(c);
	}

	/** Stands on what was found before; no search is under way any more. */
	private rest(ground: Ground): void {
		if (this.underway) planner.drop();
		this.underway = undefined;
		this.meanwhile = undefined;
		this.emptyHanded = false;
		this.broke = undefined;
		this.ground = ground;
	}

	private explain(c: Case): void {
		const moved = this.moved?.c === c ? this.moved.id : undefined;
		planner.stands({ c, marks: this.atRest, moved }, this.listening());
	}

	/** What is heard whatever was asked. */
	private listening(): Listener {
		const { key } = this;
		return {
			onprogress: () => undefined,
			onplanned: () => undefined,
			onnothing: () => {
				this.underway = undefined;
				this.emptyHanded = true;
			},
			onwaysout: (waysOut) => {
				if (this.ground) this.ground = { ...this.ground, waysOut };
				if (this.ground) this.remembered.remember(this.key, this.ground);
			},
			onexplained: (probes) => {
				this.explained = { for: key, probes };
			},
			onweighed: (worth) => {
				this.weighed = { for: key, worth };
			},
			onbetter: (better) => {
				this.better = better;
			},
			onfailed: (why) => {
				this.underway = undefined;
				this.broke = why;
			}
		};
	}

	private probesNow(): Probes | undefined {
		if (this.underHand) return undefined;
		if (this.fresh) return this.answered?.probes;
		return this.explained?.for === this.key ? this.explained.probes : undefined;
	}

	private allHeld(c: Case): boolean {
		return this.question.wanted.every(({ id }) => c.places[id] !== undefined);
	}

	/** True when nothing but where marks are held differs from the case that was answered. */
	private standsOnPlacesOf(c: Case): boolean {
		return this.ground?.free === freeKey(c);
	}
}
