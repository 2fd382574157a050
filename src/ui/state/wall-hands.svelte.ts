import type { Enclosure } from '#core/case/record.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { applyChange, type Edit } from '#core/log/change.ts';
import type { Json } from '#core/log/json.ts';
import { freeId } from '#ui/fields/wall-rows.ts';
import {
	dragged,
	newThing,
	steppedOn,
	thingsBehind,
	thingWords,
	type Ground,
	type Hold,
	type NewKind,
	type Spread,
	type Thing
} from './behind.ts';
import type { CaseState } from './case-state.svelte.ts';
import type { Way } from './move.ts';
import type { PlanState } from './plan-state.svelte.ts';

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

/** Moving, sizing, adding and taking away what is behind one wall, by hand. Each is one step of the history. */
export class WallHands {
	/** What was done last, for those who do not see it. */
	says = $state.raw('');
	/** Why the last of it could not be kept, or null. */
	why = $state.raw<string | null>(null);
	/** What the next tap on the wall puts there. */
	adding = $state.raw<NewKind>();
	/** Steps size what is chosen instead of moving it. */
	sizing = $state(false);
	private wished = $state.raw<string>();
	private taken = $state.raw<InHand>();
	private resting: ReturnType<typeof setTimeout> | undefined;
	private readonly opened: CaseState;
	private readonly plan: PlanState;
	private readonly wall: WallId;

	/** What is recorded, as it lies at rest. */
	readonly atRest: readonly Thing[] = $derived.by(() => thingsBehind(this.opened.at(this.pathOf([]))));
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

	constructor(opened: CaseState, plan: PlanState, wall: WallId) {
		this.opened = opened;
		this.plan = plan;
		this.wall = wall;
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
	drag(from: Spread, hold: Hold, by: { readonly x: number; readonly y: number }): void {
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
		const path = this.pathTo(inHand.from);
		const was = Object.entries<number>({ ...inHand.from.spread });
		const edits = Object.entries<number>({ ...inHand.spread })
			.filter(([part, value]) => !was.some(([one, before]) => one === part && before === value))
			.map(([part, to]): Edit => ({ path: [...path, part], to }));
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
		if (!chosen) return undefined;
		this.taken = undefined;
		const i = this.atRest.findIndex(({ key }) => key === chosen.key);
		this.why = this.opened.act([{ path: this.pathTo(chosen) }]);
		if (this.why !== null) return undefined;
		this.says = `${chosen.name} is taken away. Undo brings it back.`;
		this.wished = undefined;
		return this.atRest[i] ?? this.atRest[i - 1];
	}

	/** What the next tap on the wall puts there; the same once more, and none is put. */
	prepare(kind: NewKind): void {
		const again = this.adding === kind;
		this.choose(undefined);
		this.why = null;
		this.adding = again ? undefined : kind;
	}

	/** Puts what was asked for on the wall, and chooses it. Gives its key where it is there. Units: mm, wall frame. */
	add(at: { readonly x: number; readonly y: number }): string | undefined {
		if (!this.adding) return undefined;
		const { table, made } = newThing(this.adding, this.opened.case.tape.unit, at, this.ground());
		const group = this.pathOf([table.group]);
		const id = freeId(this.opened.at(group), table);
		this.why = this.opened.act([{ path: [...group, id], to: made }]);
		if (this.why !== null) return undefined;
		const key = `${table.group}/${id}`;
		this.choose(key);
		if (this.chosen) this.says = `${thingWords(this.chosen, this.opened.tape.unit)}, added.`;
		return key;
	}

	private tell(): void {
		if (this.chosen) this.says = thingWords(this.chosen, this.opened.tape.unit);
	}

	private ground(): Ground {
		return { wall: this.plan.question.scene.room.walls[this.wall], step: this.opened.case.tape.step };
	}

	private sceneSeen(): Scene {
		const { scene } = this.plan.question;
		const { inHand } = this;
		if (!inHand) return scene;
		// Only what is drawn is another: nothing is judged by where the hand has it.
		const { table, id } = inHand.from;
		const recorded = inHand.recorded as Record<string, Json>;
		const to: Json = { ...recorded, ...inHand.spread };
		const path = ['walls', this.wall, table.group, id];
		const enclosure = applyChange(scene.c.enclosure as unknown as Json, { path, to }) as unknown as Enclosure;
		return { ...scene, c: { ...scene.c, enclosure } };
	}

	private pathTo({ table, id }: Thing): readonly string[] {
		return this.pathOf([table.group, id]);
	}

	private pathOf(rest: readonly string[]): readonly string[] {
		return ['enclosure', 'walls', this.wall, ...rest];
	}
}
