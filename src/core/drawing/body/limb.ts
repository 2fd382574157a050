import { add, dot, less, size, times, type Vec } from '#core/geometry/vec.ts';

/** Two links from a root over a joint to an end. Units and frame: mm, plan frame. */
export interface Limb {
	readonly root: Vec;
	readonly joint: Vec;
	readonly end: Vec;
}

const SMALL = 1e-9;

/** A direction of length 1; straight down for no direction at all. */
function unit(a: Vec): Vec {
	const long = size(a);
	return long < SMALL ? [0, 0, -1] : times(a, 1 / long);
}

/**
 * Two links that end at a point, the joint on the side of `toward`: the law of cosines.
 * Units and frame: mm, plan frame. Shape: links keep their lengths; an end too far off or too near is moved along its own direction.
 */
export function limb(
	root: Vec,
	end: Vec,
	{ upper, fore, toward }: { readonly upper: number; readonly fore: number; readonly toward: Vec }
): Limb {
	const direction = unit(less(end, root));
	const far = Math.min(upper + fore, Math.max(Math.abs(upper - fore), size(less(end, root))));
	const along = far < SMALL ? 0 : (upper * upper + far * far - fore * fore) / (2 * far);
	const out = Math.sqrt(Math.max(0, upper * upper - along * along));
	const side = unit(less(toward, times(direction, dot(toward, direction))));
	return {
		root,
		joint: add(root, add(times(direction, along), times(side, out))),
		end: add(root, times(direction, far))
	};
}
