import { enclosure } from '#core/case/enclosure.ts';
import type { Enclosure } from '#core/case/record.ts';

const seen = <T>(value: T) => ({ value, how: 'measured' as const });

/** A record of a transfer compartment 914 by 900 with the seat on the right, changed as told. */
export function enclosureWith(change: Record<string, unknown> = {}, walls: Record<string, unknown> = {}): Enclosure {
	return enclosure.parse({
		type: 'transfer',
		seatWall: 'right',
		width: seen(914),
		depth: seen(900),
		height: seen(2100),
		datum: seen(1000),
		walls: { back: {}, left: {}, right: {}, ...walls },
		...change
	});
}
