import { z } from 'zod';
import { WALL_IDS } from '#core/geometry/frame.ts';
import { HOWS, length } from './fact.ts';

const known = { how: z.enum(HOWS), when: z.iso.date().optional() };

/**
 * Where she sat while her reach was taped: upright, her back at the rest, facing straight away from a wall behind her.
 * Units and frame: mm; `x` along that wall seen from inside.
 */
export const satAt = z.strictObject({
	behind: z.enum(WALL_IDS),
	/** The middle of her back along the wall behind. */
	x: length(0, 4000),
	/** Her back, or what it rests on, in front of the wall behind. */
	off: length(0, 3000),
	/** Top of the loaded seat above the floor it stood on. */
	seatHeight: length(150, 1000),
	/** The floor it stood on; what lies on the rims of a bath is measured from the bathroom floor. */
	floor: z.enum(['shower', 'bathroom']),
	...known
});

const taped = {
	wall: z.enum(WALL_IDS),
	x: length(0, 4000),
	y: length(-3000, 4000),
	/** As far as the hand goes without stretching, or as far as it goes at all with the trunk upright. */
	reach: z.enum(['comfortable', 'just']),
	...known
};

/**
 * A point taped where a hand stopped.
 * Units and frame: mm, wall frame, y from the datum line; `off` is how far the middle of a rod held in the fist was in
 * front of the wall. A fingertip and a pushing hand touch it.
 */
export const tapedPoint = z.discriminatedUnion('hand', [
	z.strictObject({ hand: z.literal('grip'), off: length(0, 200), ...taped }),
	z.strictObject({ hand: z.enum(['push', 'fingertip']), ...taped })
]);
