import type { Case } from '#core/case/record.ts';
import type { RoomWall } from '#core/enclosure/room.ts';
import { studsBehind } from '#core/structure/member.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Entity } from './entity.ts';
import { figure } from './figure.ts';
import { line } from './path.ts';
import { isSeen } from './seen.ts';
import { spread } from './spread.ts';
import { widthOf, write } from './type.ts';
import type { View } from './view.ts';

const SIZE = 10.5;
const WORD = 'studs';
const WORD_SIZE = 8.5;

/** The row of stud centres over a wall, from the corner; one not found carries a question mark. */
export function studsRow(
	c: Case,
	wall: RoomWall,
	view: View,
	on: { unit: LengthUnit; from: (x: number) => number }
): readonly Entity[] {
	const { top } = view;
	const behind = wall.stands ? studsBehind(c.enclosure.walls[wall.id], wall) : [];
	const studs = behind
		.filter(([, s]) => view.x(s.x) >= view.wall.x0 && view.x(s.x) <= view.wall.x1)
		.map(([id, s]) => {
			const found = isSeen(s.how);
			return {
				id: `studs/${id}`,
				at: view.x(s.x),
				found,
				text: `${figure(on.from(s.x), on.unit)}${found ? '' : ' ?'}`
			};
		})
		.toSorted((a, b) => a.at - b.at);
	const [first] = studs;
	if (!first) return [];
	// The word stands before the first figure, clear of the ladder's column.
	const half = (text: string) => widthOf(text, SIZE) / 2 + 0.9;
	const wishes = studs.map((s) => {
		const word = s === first ? widthOf(WORD, WORD_SIZE) + 0.6 : 0;
		return { at: s.at, before: half(s.text) + word, after: half(s.text) };
	});
	const places = spread(wishes, view.window.x0 - 6.5, view.window.x1 + 8);
	const before = (places[0] ?? first.at) - half(first.text);
	return [
		write('studs/word', WORD, [before, top - 4.6], { size: WORD_SIZE, tone: 'grey', anchor: 'end' }),
		...studs.flatMap(({ id, at, found, text }, i): Entity[] => {
			const x = places[i] ?? at;
			return [
				line(`${id}/tick`, found ? 'plan-thing' : 'stud-sought', [at, top - 1.2], [at, top - 2.2], [x, top - 3.6]),
				write(id, text, [x, top - 4.6], { size: SIZE, tone: 'grey', anchor: 'middle' })
			];
		})
	];
}
