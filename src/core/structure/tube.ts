/** Section of a round tube. Units: mm4 and mm3. */
export interface Section {
	readonly inertia: number;
	readonly modulus: number;
}

/** Section of a tube by its outer diameter and wall. Units: mm. Source: exact geometry. */
export function tubeSection(diameter: number, wall: number): Section {
	const inertia = (Math.PI / 64) * (diameter ** 4 - (diameter - 2 * wall) ** 4);
	return { inertia, modulus: (2 * inertia) / diameter };
}

/** Bending stress under a force at mid-span, free to turn at the posts or held by them. Units: N, mm, MPa. */
export function midSpanStress(
	section: Section,
	force: number,
	span: number
): { readonly simple: number; readonly fixed: number } {
	const simple = (force * span) / 4 / section.modulus;
	return { simple, fixed: simple / 2 };
}

/** Longest span free to turn at the posts at which a force at mid-span keeps to a stress. Units: MPa, N, mm. */
export const longestSpan = (section: Section, force: number, stress: number): number =>
	(4 * stress * section.modulus) / force;
