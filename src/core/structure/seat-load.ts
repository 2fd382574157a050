/** A load on a seat. Units: N, and mm from the wall. */
export interface SeatLoad {
	readonly weight: number;
	readonly out: number;
}

/**
 * Total tension in the upper row of screws of a seat without legs.
 * Units: N; `height` in mm from the upper row to the lower bearing edge. Source: exact statics.
 */
export const upperRow = ({ weight, out }: SeatLoad, height: number): number => (weight * out) / height;

/**
 * What the legs and the wall take of a load on a seat with legs.
 * Units: N; `leg` in mm from the wall. Shape: the wall takes less than nothing, an uplift, when the load is past the
 * leg. Source: exact statics.
 */
export function withLegs({ weight, out }: SeatLoad, leg: number): { readonly leg: number; readonly wall: number } {
	const carried = (weight * out) / leg;
	return { leg: carried, wall: weight - carried };
}
