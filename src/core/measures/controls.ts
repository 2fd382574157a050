import type { Mark } from '#core/case/accessory.ts';
import type { Measure, Scene } from './scene.ts';
import { less, size } from '#core/geometry/vec.ts';
import { targetOf } from './hand.ts';
import { alongSeatWall, centreLine, floorUnder } from './where.ts';

/** The two sides of the operable envelope, along the seat wall. */
function sides(s: Scene, m: Mark): readonly [number, number] {
	const { wall, x } = m.place;
	const { grip, gripOff } = m.variant;
	const one = alongSeatWall(s, wall, { x: x + grip.x0, off: gripOff });
	const other = alongSeatWall(s, wall, { x: x + grip.x1, off: gripOff });
	return [Math.min(one, other), Math.max(one, other)];
}

const middle = ({ place, variant }: Mark): number => place.y + (variant.grip.y0 + variant.grip.y1) / 2;

/** Controls, handset rests and holders: the whole operable envelope counts. */
export const CONTROLS = {
	'on-control-wall': {
		what: 'Whether it is on the wall opposite the seat.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (s, m) => (m.place.wall === s.room.controlWall ? 1 : 0)
	},
	'envelope-bottom-above-shower-floor': {
		what: 'Lowest operable point above the highest shower floor below it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => m.place.y + m.variant.grip.y0 - floorUnder(s, m).high
	},
	'envelope-top-above-shower-floor': {
		what: 'Highest operable point above the lowest shower floor below it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => m.place.y + m.variant.grip.y1 - floorUnder(s, m).low
	},
	'near-edge-from-centre-line': {
		what: 'From the centre line of the seat toward the opening, to the nearer edge of the operable envelope.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, m, seat) => sides(s, m)[0] - centreLine(s, seat)
	},
	'far-edge-from-centre-line': {
		what: 'From the centre line of the seat toward the opening, to the farther edge of the operable envelope.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, m, seat) => sides(s, m)[1] - centreLine(s, seat)
	},
	'height-difference': {
		what: 'Difference in height between the middles of what the hand works, without sign.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'pair',
		of: (_, a, b) => Math.abs(middle(a) - middle(b))
	},
	'hose-to-spare': {
		what: 'Length of the hose less the way from its outlet to the hand shower.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, a, b) => {
			const { hose } = s.c.enclosure;
			if (!hose) return { missing: 'How long is the hose of the hand shower?' };
			return hose.value - size(less(targetOf(a, s.room).from, targetOf(b, s.room).from));
		}
	},
	'centres-apart': {
		what: 'From the middle of one operable envelope to the middle of another.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, a, b) => size(less(targetOf(a, s.room).from, targetOf(b, s.room).from))
	}
} satisfies Record<string, Measure>;
