import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Edit } from '#core/log/change.ts';
import { together } from '#core/placement/nudge.ts';
import type { Finding } from '#core/rules/row.ts';
import { onTape } from '#core/units/format.ts';
import type { CaseState } from './case-state.svelte.ts';
import { movedTo, nearest, stepped, type Spot, type Way } from './move.ts';
import { changedWords, placeWords } from './move-words.ts';
import { markName } from './names.ts';
import type { PlanState } from './plan-state.svelte.ts';
import { heldAs } from './real-parts.ts';

/** How long after the last step of a move it is kept, ms. */
const REST = 1000;
const FIXED: readonly Mark['stage'][] = ['marked', 'built'];

/** The mark in hand: where it and all were when it was taken. */
interface InHand {
	readonly id: string;
	readonly from: readonly Mark[];
	readonly findings: readonly Finding[];
	readonly how: 'by-pointer' | 'by-steps';
}

/** Moving, holding and letting go of marks by hand. A move is one step of the history. */
export class Hands {
	/** What was done last, for those who do not see it. */
	says = $state.raw('');
	private inHand = $state.raw<InHand>();
	/** The case the last move led to: as long as it stands, the move can be taken back. */
	private kept: Case | undefined;
	private resting: ReturnType<typeof setTimeout> | undefined;
	private readonly opened: CaseState;
	private readonly plan: PlanState;

	/** Where the mark in hand was taken from, with what shares its height line. */
	readonly from: readonly Mark[] = $derived.by(() => this.originOf());
	/** What was said before the mark in hand was taken. */
	readonly before: readonly Finding[] | undefined = $derived(this.inHand?.findings);

	/** The mark in hand, or undefined. */
	readonly holding: string | undefined = $derived(this.inHand?.id);
	/** Whether a pointer has it. */
	readonly dragging: boolean = $derived(this.inHand?.how === 'by-pointer');

	constructor(opened: CaseState, plan: PlanState) {
		this.opened = opened;
		this.plan = plan;
	}

	/** Takes a mark in hand. Gives whether it can be moved. */
	take(id: string, how: InHand['how'] = 'by-steps'): boolean {
		if (this.inHand?.id === id) return true;
		this.keep();
		const mark = this.markOf(id);
		if (!mark) return false;
		if (FIXED.includes(mark.stage)) {
			this.says = `${markName(mark)} is ${mark.stage === 'built' ? 'built' : 'marked on the wall'}: it is judged where it is.`;
			return false;
		}
		this.inHand = { id, from: this.plan.atRest, findings: this.plan.judgedAtRest, how };
		return true;
	}

	/** Moves the mark in hand to the marking step nearest to a point of its wall. */
	moveTo(to: { readonly x: number; readonly y: number }): void {
		const mark = this.inHand && this.markOf(this.inHand.id);
		if (mark) this.put(mark, nearest(this.plan.question.scene, mark, to));
	}

	/** Moves a mark some marking steps; kept after a rest, on leaving it, or before any other act. */
	step(id: string, way: Way, steps: number): void {
		if (!this.take(id)) return;
		const mark = this.markOf(id);
		if (!mark) return;
		this.put(mark, stepped(this.plan.question.scene, mark, way, steps));
		this.tell();
		clearTimeout(this.resting);
		this.resting = setTimeout(() => {
			this.keep();
		}, REST);
	}

	/** Keeps the move, as one step of the history. */
	keep(): void {
		clearTimeout(this.resting);
		const hand = this.inHand;
		if (!hand) return;
		if (!this.plan.underHand) {
			// Nothing moved, or the case has changed under the hand.
			this.inHand = undefined;
			return;
		}
		const moved = this.plan.marks.filter((mark) => isElsewhere(mark, hand.from));
		this.tell();
		this.inHand = undefined;
		if (moved.length === 0) this.plan.underHand = undefined;
		else this.give(hand.id, moved);
	}

	/** Takes the move back: the one in hand, or the last one as long as nothing was done since. */
	back(): void {
		clearTimeout(this.resting);
		if (this.inHand) {
			this.says = `${this.named([this.inHand.id])} is back where it was.`;
			this.inHand = undefined;
			this.plan.underHand = undefined;
		} else if (this.kept === this.opened.case) {
			this.opened.undo();
			this.kept = undefined;
			this.says = 'The move is taken back.';
		}
	}

	/** Holds marks where they are: no search moves them. */
	hold(ids: readonly string[]): void {
		this.keep();
		const marks = this.plan.atRest.filter(({ accessory, stage }) => ids.includes(accessory.id) && stage === 'proposed');
		this.act(marks.map(heldEdit), `${this.named(ids)} held here.`);
	}

	/** Lets marks go: a search may move them again. */
	free(ids: readonly string[]): void {
		this.keep();
		this.act(
			ids.map((id) => ({ path: ['places', id] })),
			`${this.named(ids)} free again. What is free stands where the search had put it.`
		);
	}

	/** Puts marks where a plan has them, and holds those that stood elsewhere. */
	putAsIn(marks: readonly Mark[]): void {
		this.keep();
		const moved = marks.filter((mark) => isElsewhere(mark, this.plan.atRest));
		this.act(moved.map(heldEdit), `${this.named(moved.map(({ accessory }) => accessory.id))} moved, and held there.`);
	}

	private put(mark: Mark, to: Spot): void {
		const companions = this.plan.marks.filter((other) => together(other, mark));
		const stuck = companions.find(({ stage }) => FIXED.includes(stage));
		const y = stuck ? mark.place.y : to.y;
		if (to.x === mark.place.x && y === mark.place.y) return;
		const ids = companions.map(({ accessory }) => accessory.id);
		const marks = this.plan.marks.map((one) => {
			if (one.accessory.id === mark.accessory.id) return movedTo(one, { x: to.x, y });
			return ids.includes(one.accessory.id) ? movedTo(one, { x: one.place.x, y }) : one;
		});
		this.plan.underHand = { marks, ids };
	}

	/** What was moved is held; what is free on its height line follows by itself. */
	private give(id: string, moved: readonly Mark[]): void {
		const edits = moved.filter((mark) => mark.accessory.id === id || mark.stage !== 'proposed').map(heldEdit);
		const why = this.opened.act(edits);
		if (why === null) {
			this.kept = this.opened.case;
			this.plan.handMoved(id, this.opened.case);
		} else {
			this.plan.underHand = undefined;
			this.says = why;
		}
	}

	private act(edits: readonly Edit[], says: string): void {
		if (edits.length > 0) this.says = this.opened.act(edits) ?? says;
	}

	private tell(): void {
		if (!this.inHand) return;
		const mark = this.markOf(this.inHand.id);
		if (!mark) return;
		const where = placeWords(this.plan.question.scene, mark, this.opened.tape);
		const changed = onTape(changedWords(this.inHand.findings, this.plan.findings), this.opened.tape);
		this.says = `${markName(mark)}: ${where}. ${changed}`;
	}

	private originOf(): readonly Mark[] {
		const hand = this.inHand;
		const mark = hand?.from.find(({ accessory }) => accessory.id === hand.id);
		return mark && this.plan.underHand ? (hand?.from.filter((one) => together(one, mark)) ?? []) : [];
	}

	/** What marks are called, one after the other. */
	private named(ids: readonly string[]): string {
		const names = this.plan.marks.filter(({ accessory }) => ids.includes(accessory.id)).map(markName);
		return names.map((name, i) => (i === 0 ? name : name.toLowerCase())).join('; ');
	}

	private markOf(id: string): Mark | undefined {
		return this.plan.marks.find(({ accessory }) => accessory.id === id);
	}
}

function heldEdit(mark: Mark): Edit {
	const { wall, x, y, turn } = mark.place;
	return { path: ['places', mark.accessory.id], to: { wall, variant: heldAs(mark), x, y, turn, stage: 'pinned' } };
}

function isElsewhere({ accessory, place }: Mark, marks: readonly Mark[]): boolean {
	const before = marks.find((mark) => mark.accessory.id === accessory.id)?.place;
	return (
		before?.wall !== place.wall || before.variant !== place.variant || before.x !== place.x || before.y !== place.y
	);
}
