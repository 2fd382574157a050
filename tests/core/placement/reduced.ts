import { readFileSync } from 'node:fs';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import { readCase } from '#core/case/read.ts';
import type { Case } from '#core/case/record.ts';
import { questionOf, type Question } from '#core/plan.ts';
import { axisOf, type Axis } from '#core/placement/lattice.ts';
import { problemOf, type Problem, type Unknown } from '#core/placement/problem.ts';
import { random } from './random.ts';

/** An example client as read from the repository. */
export function client(name: string): Case {
	const read = readCase(readFileSync(`personas/clients/${name}/case.json`, 'utf8'));
	if (read.kind === 'bad') throw new Error(JSON.stringify(read.problems));
	return read.case;
}

/** An example with body, room and lead changed at random, within what a record may hold. */
export function varied(base: Case, seed: number): Case {
	const next = random(seed);
	const between = (low: number, high: number) => Math.round((low + next() * (high - low)) * 10) / 10;
	const json = JSON.parse(JSON.stringify(base)) as Record<string, never>;
	const at = (path: string, value: unknown) => {
		const keys = path.split('.');
		const last = keys.pop() ?? '';
		let one = json as Record<string, unknown>;
		for (const key of keys) one = one[key] as Record<string, unknown>;
		one[last] = value;
	};
	const fact = (value: unknown) => ({ value, how: 'measured' });
	at('enclosure.width', fact(between(880, 1000)));
	at('enclosure.depth', fact(between(880, 960)));
	at('people.client.arms.left.toGrip', fact(between(520, 700)));
	at('people.client.arms.right.toGrip', fact(between(520, 700)));
	at('people.client.body.shoulderAboveSeat', fact(between(500, 640)));
	at('people.client.body.popliteal', fact(between(350, 460)));
	at('people.client.sittingForward', fact(between(0, 150)));
	at('people.client.lean', next() < 0.5 ? undefined : fact({ kind: 'holding', at: between(50, 250) }));
	at('people.client.weakerSide', fact(next() < 0.5 ? 'left' : 'neither'));
	at('lead', next() < 0.5 ? 'person-led' : 'reference-led');
	const read = readCase(JSON.stringify(json));
	if (read.kind === 'bad') throw new Error(JSON.stringify(read.problems));
	return read.case;
}

/** Every so-manyth value of an axis about where plans lie, at most `most` of them. */
function thinned({ values }: Axis, c: Case, { most, next }: { most: number; next: () => number }): Axis {
	const kept = values.filter(() => next() < most / values.length);
	return axisOf(kept.length ? kept : values.slice(0, 1), c.tape);
}

/** A problem cut down so that every plan of it can be written out: few accessories, few values on each axis. */
export function reduced(c: Case, seed: number, size: { accessories: number; values: number }): Problem & Question {
	const next = random(seed * 7919 + 1);
	const question = questionOf(c);
	const wanted = question.wanted.filter((a) => a.kind === 'seat' || next() < size.accessories / question.wanted.length);
	const problem = problemOf(question.scene, question.rows, wanted);
	// Heights where hands work, so that not every plan breaks a must.
	const floor = question.scene.room.bathroomFloor;
	const sensible = (u: Unknown, axis: Axis): Axis => {
		const [low, high] = u.accessory.kind === 'seat' ? [380, 560] : [700, 1250];
		return { ...axis, values: axis.values.filter((y) => y >= floor + low && y <= floor + high) };
	};
	const lines = new Map<string, Axis>();
	const unknowns = problem.unknowns.map((u) => ({
		...u,
		spots: u.spots
			.filter((_, i) => i === 0 || next() < 0.35)
			.map((spot) => {
				const line = u.accessory.line;
				const made = line === undefined ? undefined : lines.get(line);
				const ys = made ?? thinned(sensible(u, spot.ys), c, { most: size.values, next });
				if (line !== undefined) lines.set(line, ys);
				return { ...spot, xs: thinned(spot.xs, c, { most: size.values, next }), ys };
			})
	}));
	return { ...problem, ...question, wanted, unknowns };
}

/** Every place an unknown may take, as marks. */
export const placesOf = (u: Unknown): readonly Mark[] =>
	u.spots.flatMap((spot) =>
		spot.ys.values.flatMap((y) =>
			spot.xs.values.map((x) => ({
				accessory: u.accessory,
				place: { ...spot.slot, x, y, turn: 0 as const },
				variant: variantOf(spot.slot.variant),
				stage: 'proposed' as const
			}))
		)
	);
