import type { Way } from '#ui/state/move.ts';

/** The arrow keys, as ways on the wall. */
export const KEYS: Readonly<Record<string, Way>> = {
	ArrowLeft: 'left',
	ArrowRight: 'right',
	ArrowUp: 'higher',
	ArrowDown: 'lower'
};

/** A hand that shakes is no move, px. */
const STILL = 6;

/** What a pointer can do with what it is over. Units: px, y down, from where it came down. */
export interface Draggable {
	/** Takes it in hand; gives whether it can be moved. */
	readonly take: () => boolean;
	readonly by: (dx: number, dy: number) => void;
	readonly keep: () => void;
	readonly back: () => void;
}

/** The one pointer that holds something, from where it came down to where it lets go. */
export class Drag {
	private held:
		{ readonly pointer: number; readonly from: readonly [number, number]; readonly what: Draggable } | undefined;
	private moving = false;

	/** Whether a pointer that comes down may take something. */
	free({ button }: PointerEvent): boolean {
		return !this.held && button === 0;
	}

	down(event: PointerEvent, what: Draggable): void {
		if (!this.free(event)) return;
		this.held = { pointer: event.pointerId, from: [event.clientX, event.clientY], what };
		this.moving = false;
		if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId);
	}

	readonly move = (event: PointerEvent): void => {
		const held = this.heldBy(event);
		if (!held) return;
		const [dx, dy] = [event.clientX - held.from[0], event.clientY - held.from[1]];
		if (!this.moving) {
			if (Math.hypot(dx, dy) < STILL) return;
			if (!held.what.take()) {
				this.drop();
				return;
			}
			this.moving = true;
		}
		held.what.by(dx, dy);
	};

	readonly up = (event: PointerEvent): void => {
		const held = this.heldBy(event);
		this.end(held, held?.what.keep);
	};

	readonly cancel = (event: PointerEvent): void => {
		const held = this.heldBy(event);
		this.end(held, held?.what.back);
	};

	/** Whatever the pointer does from here on moves nothing. */
	drop(): void {
		this.held = undefined;
	}

	private end(held: unknown, how: (() => void) | undefined): void {
		if (!held) return;
		this.drop();
		if (this.moving) how?.();
	}

	private heldBy({ pointerId }: PointerEvent) {
		return this.held?.pointer === pointerId ? this.held : undefined;
	}
}
