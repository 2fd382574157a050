import { reachShapes, type Field, type Reached } from './reach-shapes.ts';
import type { ScreenView } from './screen-view.ts';

/** Mesh of the contours, mm: finer than a hand's breadth at rest; coarser while what the arm hangs on is moved. */
const MESH = { atRest: 30, inHand: 70 } as const;

/**
 * The field of a hand on one drawing, worked out again only when what it hangs on changes: the person, the seat, the
 * part and the wall, not where on the wall the part is.
 */
export class ReachField {
	private basis: readonly unknown[] = [];
	private field: Field = { shapes: [], words: [] };

	/** The field for a mark as it is drawn; `inHand` while something on the wall is being moved. */
	of(reached: Reached, view: ScreenView, inHand: boolean): Field {
		const { scene, wall, mark, seat } = reached;
		// While the seat moves, each of its places has a field of its own: then a coarser one has to do.
		const mesh = inHand && seat?.place.wall === wall ? MESH.inHand : MESH.atRest;
		const basis = [scene, wall, mark.accessory, mark.variant, seat?.place, view, mesh];
		if (basis.some((part, i) => part !== this.basis[i])) {
			this.basis = basis;
			this.field = reachShapes(reached, view, mesh);
		}
		return this.field;
	}
}
