import type { Enclosure } from '#core/case/record.ts';
import type { Scene } from '#core/measures/scene.ts';
import { applyChange, type Edit } from '#core/log/change.ts';
import type { Json } from '#core/log/json.ts';
import type { CaseState } from './case-state.svelte.ts';
import type { Way } from './move.ts';
import type { PlanState } from './plan-state.svelte.ts';
import type { Kind, Site } from './site.ts';
import {
	dragged,
	outdatedBy,
	partsOf,
	steppedOn,
	thingWords,
	type Ground,
	type Hold,
	type Shift,
	type Spread,
	type Thing
} from './spread.ts';

/** How long after the last step of a move it is kept, ms. */
const REST = 1000;

const BY: Readonly<Record<Way, { readonly x: number; readonly y: number }>> = {
	left: { x: -1, y: 0 },
	right: { x: 1, y: 0 },
	lower: { x: 0, y: -1 },
	higher: { x: 0, y: 1 }
};

/** What is in hand: as it was taken, and where it is now. */
interface InHand {
	readonly from: Thing;
	readonly recorded: Json | undefined;
	readonly spread: Spread;
	readonly how: 'by-pointer' | 'by-steps';
}

/** Moving, sizing, adding and taking away what one drawing shows, by hand. Each is one step of the history. */
export class ThingHands<K extends Kind = Kind> {
	/** What was done last, for those who do not see it. */
	says = $state.raw('');
	/** Why the last of it could not be kept, or null. */
	why = $state.raw<string | null>(null);
	/** What the next tap on the drawing puts there. */
	adding = $state.raw<K>();
	/** Steps size what is chosen instead of moving it. */
	sizing = $state(false);
	private wished = $state.raw<string>();
	private taken = $state.raw<InHand>();
	private resting: ReturnType<typeof setTimeout> | undefined;
	private readonly opened: CaseState;
	private readonly plan: PlanState;
	private readonly site: Site<K>;

	/** What is recorded, as it lies at rest. */
	readonly atRest: readonly Thing[] = $derived.by(() => this.site.things(this.opened.at(this.pathOf([]))));
	/** What is recorded, with what is in hand where the hand has it. */
	readonly things: readonly Thing[] = $derived.by(() => {
		const { inHand } = this;
		return inHand
			? this.atRest.map((one) => (one.key === inHand.from.key ? { ...one, spread: inHand.spread } : one))
			: this.atRest;
	});
	readonly chosen: Thing | undefined = $derived(this.things.find(({ key }) => key === this.wished));
	/** Whether something is in hand, and has not been kept yet. */
	readonly holding: boolean = $derived.by(() => this.inHand !== undefined);
	/** Whether a pointer has it. */
	readonly dragging: boolean = $derived.by(() => this.inHand?.how === 'by-pointer');
	/** The scene as it is seen: with what is in hand where the hand has it. */
	readonly scene: Scene = $derived.by(() => this.sceneSeen());

	/** What is in hand, as long as the record has not changed under it. */
	private readonly inHand: InHand | undefined = $derived.by(() => {
		const { taken } = this;
		return taken && this.opened.at(this.pathTo(taken.from)) === taken.recorded ? taken : undefined;
	});

	constructor(opened: CaseState, plan: PlanState, site: Site<K>) {
		this.opened = opened;
		this.plan = plan;
		this.site = site;
	}

	choose(key: string | undefined): void {
		if (key === this.wished) return;
		this.leave();
		this.adding = undefined;
		this.sizing = false;
		this.wished = key;
	}

	/** Takes what is chosen in hand. Gives whether it can be moved. */
	take(how: InHand['how']): boolean {
		clearTimeout(this.resting);
		const from = this.chosen;
		if (!from) return false;
		this.why = null;
		this.taken = this.inHand
			? { ...this.inHand, how }
			: { from, recorded: this.opened.at(this.pathTo(from)), spread: from.spread, how };
		return true;
	}

	/** Moves or sizes what is in hand from where a pointer took it. Units: mm. */
	drag(from: Spread, hold: Hold, by: Shift): void {
		if (this.inHand) this.taken = { ...this.inHand, spread: dragged(from, hold, by, this.ground()) };
	}

	/** Moves or sizes what is chosen some marking steps; kept after a rest, on leaving it, or before any other act. */
	step(way: Way, steps: number, sized = this.sizing): void {
		if (!this.take('by-steps') || !this.inHand) return;
		const by = { x: BY[way].x * steps, y: BY[way].y * steps };
		this.taken = { ...this.inHand, spread: steppedOn(this.inHand.spread, sized, by, this.ground()) };
		this.tell();
		this.resting = setTimeout(() => {
			this.keep();
		}, REST);
	}

	/** Keeps what is in hand as one step of the history. What cannot be kept stays in hand, and why is said. */
	keep(): void {
		clearTimeout(this.resting);
		const { inHand } = this;
		if (!inHand) {
			this.taken = undefined;
			return;
		}
		const edits = this.edits(inHand);
		if (edits.length > 0) {
			this.tell();
			this.why = this.opened.act(edits);
			if (this.why !== null) return;
		}
		this.taken = undefined;
	}

	/** Takes back what is not kept yet; else lets go of what is chosen, or of what was to be put. */
	back(): void {
		clearTimeout(this.resting);
		this.why = null;
		if (this.inHand) {
			this.says = `${this.inHand.from.name} is back where it was.`;
			this.taken = undefined;
		} else if (this.adding) {
			this.adding = undefined;
		} else {
			this.choose(undefined);
		}
	}

	/** Keeps what is in hand; what cannot be kept goes back. */
	leave(): void {
		this.keep();
		this.taken = undefined;
		this.why = null;
	}

	/** Takes what is chosen away. Gives what lies next to it, to be gone on with. */
	remove(): Thing | undefined {
		const { chosen } = this;
		if (!chosen || chosen.stays) return undefined;
		this.taken = undefined;
		const i = this.atRest.findIndex(({ key }) => key === chosen.key);
		this.why = this.opened.act([{ path: this.pathTo(chosen) }]);
		if (this.why !== null) return undefined;
		this.says = `${chosen.name} is taken away. Undo brings it back.`;
		this.wished = undefined;
		return this.atRest[i] ?? this.atRest[i - 1];
	}

	/** What the next tap on the drawing puts there; the same once more, and none is put. */
	prepare(kind: K): void {
		const again = this.adding === kind;
		this.choose(undefined);
		this.why = null;
		this.adding = again ? undefined : kind;
	}

	/** Puts what was asked for there, and chooses it. Gives its key where it is there. Units and frame: mm, of its wall or floor. */
	add(at: Shift): string | undefined {
		return this.adding && this.put(this.adding, at);
	}

	/** Puts a thing with its middle in the middle of what is drawn, and chooses it. Gives its key where it is there. */
	addInMiddle(kind: K): string | undefined {
		const { from, to, bottom, top } = this.ground().area;
		this.choose(undefined);
		return this.put(kind, { x: (from + to) / 2, y: (bottom + top) / 2 });
	}

	private put(kind: K, at: Shift): string | undefined {
		const { unit } = this.opened.case.tape;
		const record = this.opened.at(this.pathOf([]));
		const { path, to } = this.site.made(kind, { unit, at, on: this.ground(), record });
		this.why = this.opened.act([{ path: this.pathOf(path), to }]);
		if (this.why !== null) return undefined;
		const key = path.join('/');
		this.choose(key);
		if (this.chosen) this.says = `${thingWords(this.chosen, this.opened.tape.unit)}, added.`;
		return key;
	}

	/** What of the record is another with what is in hand. */
	private edits({ from, spread }: InHand): readonly Edit[] {
		const path = this.pathTo(from);
		const was = partsOf(from.spread);
		const edits = partsOf(spread)
			.filter((part, i) => part.value !== was[i]?.value)
			.map((part): Edit => ({ path: [...path, ...part.path], to: part.value }));
		if (edits.length === 0) return [];
		const outdated = outdatedBy(spread).map((part): Edit => ({ path: [...path, ...part] }));
		return [...edits, ...outdated.filter((edit) => this.opened.at(edit.path) !== undefined)];
	}

	private tell(): void {
		if (this.chosen) this.says = thingWords(this.chosen, this.opened.tape.unit);
	}

	private ground(): Ground {
		return { area: this.site.area(this.plan.question.scene.room), step: this.opened.case.tape.step };
	}

	private sceneSeen(): Scene {
		const { scene } = this.plan.question;
		const { inHand } = this;
		if (!inHand) return scene;
		// Only what is drawn is another: nothing is judged by where the hand has it.
		const enclosure = this.edits(inHand).reduce<Json>(
			(seen, { path: [, ...path], to }) => applyChange(seen, { path, ...(to === undefined ? {} : { to }) }),
			scene.c.enclosure as unknown as Json
		) as unknown as Enclosure;
		return { ...scene, room: this.site.room(scene, enclosure), c: { ...scene.c, enclosure } };
	}

	private pathTo({ path }: Thing): readonly string[] {
		return this.pathOf(path);
	}

	private pathOf(rest: readonly string[]): readonly string[] {
		return [...this.site.home, ...rest];
	}
}

/** What grips and buttons ask of hands, whatever else can be put there. */
export type Handling = Pick<ThingHands, keyof ThingHands>;
