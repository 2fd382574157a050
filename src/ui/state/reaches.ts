import type { Scene } from '#core/measures/scene.ts';
import { clientOf } from './client.ts';
import type { Reach } from './moved.ts';

/** How far the client's hands reach, easy and stretched. */
export function reachesOf({ c, arms }: Scene): readonly Reach[] {
	const own = arms[clientOf(c).id];
	return (['right', 'left'] as const).flatMap((side) => {
		const span = own?.[side]?.spans.grip;
		if (!span) return [];
		return [
			{ name: `Easy reach, ${side} hand`, length: span.easy },
			{ name: `Stretched reach, ${side} hand`, length: span.outer }
		];
	});
}
