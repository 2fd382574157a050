import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import { keyAlt, wallAlt } from './alt.ts';
import type { Block } from './block.ts';
import type { DrawnWall } from './drawn-wall.ts';
import { pictured, widened, type Box, type Drawing, type Entity, type Spot } from './entity.ts';
import { column } from './column.ts';
import { contoursOn } from './contour.ts';
import { framingOf } from './framing.ts';
import { ladder, ladderWidth, type RoomLevels } from './ladder.ts';
import { legendIn } from './legend.ts';
import { levelsOf } from './level.ts';
import { line, rectangle, shape } from './path.ts';
import { running, runningLine } from './running.ts';
import { seatLinesOn } from './seat-lines.ts';
import { cornerOf, hasLevel, settingOut, wallName, type SetOut } from './setting-out.ts';
import { fieldOf, FOOT, SHEETS, type OnPaper } from './sheet.ts';
import { stepOf, stepOn } from './step.ts';
import { studsRow } from './studs-row.ts';
import { wallTags } from './tag.ts';
import { thingOf } from './thing.ts';
import { cautions, titleBlock } from './title-block.ts';
import { boxOf, write } from './type.ts';
import { scaleName, viewOf, type View } from './view.ts';
import { BESIDE, endsOf, spanOf, type WallEnd } from './wall-ends.ts';
import { belowFloor, fallWords, wallOutline } from './wall-outline.ts';
import { wallWords } from './wall-words.ts';

/**
 * One wall on its sheet: what is behind it, the marks with every figure to set them out, schedule, cautions; for the
 * therapist with what the hands reach, for whoever fits it without anything of a person.
 * Units and frame: mm of the sheet.
 * Shape: the largest scale of its trade that fits; no label lies on another.
 */
export function elevationOf(plan: Plan, wall: WallId, how: OnPaper): Drawing {
	const { room } = plan.scene;
	const { unit } = how.tape;
	const sets = settingOut(plan).filter((s) => s.mark.place.wall === wall);
	const levels = levelsOf(room, sets, unit);
	const view = viewOf({
		sheet: how.sheet,
		unit,
		room,
		wall,
		highest: highest(sets),
		ladder: ladderWidth(levels, unit)
	});
	const on = { plan, wall, sets, levels, unit, view, reader: how.reader };
	const { entities, elsewhere } = drawnWall(on);
	const name = wallName(plan, wall);
	const { width, height } = SHEETS[how.sheet];
	const field = fieldOf(how.sheet);
	return {
		title: name,
		size: { width, height },
		entities: [
			rectangle('sheet', 'sheet', { x0: 0, y0: 0, x1: width, y1: height }),
			...header(on, name, field),
			...pictured('wall', [...entities, ...datumLine(on, field)]),
			...column(on, elsewhere),
			...cautions(field.x1 - field.x0 - 94).draw(field.x0, field.y1 - FOOT),
			...titleBlock({ caseId: plan.scene.c.id, subject: name, digest: plan.digest }, field)
		],
		pictures: { wall: wallAlt(on), key: keyAlt(on) },
		frame: { scale: view.scale, origin: cornerAt(on), picture: 'wall' }
	};
}

/** The corner the wall is measured from, at the datum line. */
function cornerAt({ plan, wall, view }: DrawnWall): Spot {
	const { room } = plan.scene;
	const { from, to } = spanOf(room, wall);
	return view.spot(cornerOf(room, wall).side === 'left' ? from : to, 0);
}

const highest = (sets: readonly SetOut[]): number =>
	Math.max(0, ...sets.map((s) => s.mark.place.y + s.mark.variant.outline.y1));

function header({ plan, wall, unit, view }: DrawnWall, name: string, field: Box): readonly Entity[] {
	const says = `Seen from inside. ${endsSay(plan.scene.room, wall)}`;
	return [
		write('head/title', name, [field.x0, 18.2], { size: 24, weight: 'semibold', heading: 1 }),
		write('head/says', says, [field.x0, 24], { size: 10.5, tone: 'grey' }),
		write('head/scale', scaleName(view.scale, unit), [field.x1, 18.2], { size: 14, weight: 'semibold', anchor: 'end' })
	];
}

/** The wall itself, in drawing order: behind, outline, projection, things, words, figures; and what must stand elsewhere. */
function drawnWall(on: DrawnWall): { entities: readonly Entity[]; elsewhere: readonly Block[] } {
	const { plan, wall, sets, levels, unit, view, reader } = on;
	const { room, c } = plan.scene;
	const framing = framingOf(plan, room.walls[wall], view, unit);
	const things = sets.map((s) => thingOf(s, { view, room }, unit));
	const step = stepOn(plan, wall, view);
	const studs = Object.values(c.enclosure.walls[wall].studs).map((stud) => stud.x);
	const outline = wallOutline(room, wall, view, studs);
	const { window, datum } = view;
	const taken: Box[] = [
		...things.flatMap((t) => t.covers),
		{ x0: window.x0, x1: window.x1, y0: datum - 0.6, y1: datum + 0.6 },
		...outline.flatMap((e) => (e.kind === 'text' ? [widened(boxOf(e), 0.8)] : []))
	];
	const within = { x0: window.x0 + 0.6, x1: window.x1 - 0.6, y0: window.y0 + 2.4, y1: window.y1 - 2.4 };
	const tags = wallTags(things, taken, within);
	const bodied = reader === 'therapist';
	const reach = bodied ? contoursOn(plan, wall, view) : { entities: [], words: [] };
	const onWall = { ...within, x0: view.wall.x0 + 0.6, x1: view.wall.x1 - 0.6 };
	const words = [
		...wallWords([...things.flatMap((t) => t.words), ...step.words], taken, [within]),
		...wallWords(framing.words, taken, [onWall, within])
	];
	const heights = bodied ? seatLinesOn(plan, wall, { view, unit, taken }) : { lines: [], words: [] };
	const hatched = framing.words.flatMap((w) => (w.id.startsWith('keep-out/') ? [w.on] : []));
	const reachWords = wallWords(reach.words, [...taken, ...hatched], [onWall, within]);
	const rungs = ladder(levels, rungsUnder(plan), view, unit);
	const y = runningLine(rungs, view);
	const parts = things.flatMap((t) => t.entities);
	const legend = legendIn([...framing.entities, ...parts], rungs, view);
	const entities = [
		...framing.entities,
		belowFloor(room, wall, view),
		...step.entities,
		...outline,
		...reach.entities,
		...heights.lines,
		...projections(sets, view, y - 1.4),
		...parts,
		...words,
		...heights.words,
		...reachWords,
		...tags,
		...studsRow(c, room.walls[wall], view, { unit, from: cornerOf(room, wall).from }),
		...fallWords(room, wall, view, unit),
		...running({ sets, room, wall, unit, y }, view),
		...rungs,
		...legend.entities
	];
	return { entities, elsewhere: legend.elsewhere };
}

/** Levels of the room beside those of the marks. */
const rungsUnder = (plan: Plan): RoomLevels => ({ floor: plan.scene.room.bathroomFloor, step: stepOf(plan) });

function projections(sets: readonly SetOut[], view: View, down: number): readonly Entity[] {
	return sets.flatMap((s) =>
		s.points.flatMap(([x, y], i): Entity[] => [
			line(`projection/${s.id}/${String(i)}/down`, 'projection', view.spot(x, y), [view.x(x), down]),
			...(hasLevel(s)
				? [
						line(
							`projection/${s.id}/${String(i)}/across`,
							'projection',
							[view.window.x0 - 4.1, view.y(y)],
							view.spot(x, y)
						)
					]
				: [])
		])
	);
}

function datumLine({ view }: DrawnWall, field: Box): readonly Entity[] {
	const y = view.datum;
	return [
		line('datum/line', 'datum', [field.x0, y], [field.x1, y]),
		shape('datum/sign', 'datum-sign', [field.x0 + 2, y], [field.x0, y - 3.2], [field.x0 + 4, y - 3.2])
	];
}
