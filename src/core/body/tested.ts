/** A joint whose limit taped points can tell. */
export type TestedJoint = 'flexion' | 'abduction';

/**
 * What a reach test says of one arm besides its lengths, to be used in place of the estimate.
 * Units and frame: mm and degrees; the shoulder of an upright sitter, from the plane her back rests on, from her centre
 * line toward this hand, and from the loaded seat.
 */
export interface Tested {
	readonly shoulder: { readonly ahead: number; readonly outward: number; readonly up: number };
	readonly flexion: number;
	readonly abduction: number;
	/** Reach without stretching as a share of the arm. Shape: at most 1. */
	readonly easy: number;
	/** The elbow was seen to lift the hand above the line of the upper arm. */
	readonly lifts: boolean;
	/** Limits that no longer rest on the estimate. */
	readonly told: readonly TestedJoint[];
}
