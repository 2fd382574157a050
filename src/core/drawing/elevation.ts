import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import { keyAlt, wallAlt } from './alt.ts';
import { inPairs, type Block } from './block.ts';
import type { DrawnWall } from './drawn-wall.ts';
import { pictured, widened, type Box, type Drawing, type Entity, type Spot } from './entity.ts';
import { column, type Beside } from './column.ts';
import { contoursOn } from './contour.ts';
import { driftBoxes } from './drift-boxes.ts';
import { framingOf } from './framing.ts';
import { ladder, ladderWidth, type RoomLevels } from './ladder.ts';
import { legendIn } from './legend.ts';
import { labelled, type Ground, type Wording } from './labels.ts';
import { levelsOf } from './level.ts';
import { listSheets, listWidth } from './list-sheet.ts';
import { line, rectangle, shape } from './path.ts';
import { running, runningLine } from './running.ts';
import { seatLinesOn } from './seat-lines.ts';
import { cornerOf, hasLevel, settingOut, wallName, type SetOut } from './setting-out.ts';
import { fieldOf, SHEETS, unitsOn, type OnPaper } from './sheet.ts';
import { stepOf, stepOn } from './step.ts';
import { studsRow } from './studs-row.ts';
import { wallTags } from './tag.ts';
import { thingOf, type Thing } from './thing.ts';
import { CAUTIONS, footWords, titleBlock } from './title-block.ts';
import { boxOf, write } from './type.ts';
import { scaleWords, unitWords, viewOf, type View } from './view.ts';
import { endsSay, spanOf } from './wall-ends.ts';
import { belowFloor, fallWords, wallOutline } from './wall-outline.ts';

/**
 * One wall on its sheet: what is behind it, the marks with every figure to set them out, schedule, cautions; for the
 * therapist with what the hands reach, for whoever fits it without anything of a person.
 * Units and frame: mm of the sheet.
 * Shape: the largest scale of its trade that fits; no label lies on another.
 */
export const elevationOf = (plan: Plan, wall: WallId, how: OnPaper): Drawing => wallSheet(plan, wall, how).drawing;

/** One wall on its sheet, then the words that found no room there. Shape: as many sheets as it takes. */
export function elevationSheetsOf(plan: Plan, wall: WallId, how: OnPaper): readonly Drawing[] {
	const { drawing, rest } = wallSheet(plan, wall, how);
	if (rest.length === 0) return [drawing];
	const on = {
		title: `${drawing.title}, continued`,
		says: 'Read together with the drawing of the wall before it.',
		blocks: inPairs(rest, listWidth(how) / 2),
		unit: unitWords(unitsOn(how)),
		foot: CAUTIONS
	};
	return [drawing, ...listSheets(plan, how, on)];
}

function wallSheet(plan: Plan, wall: WallId, how: OnPaper): { drawing: Drawing; rest: readonly Block[] } {
	const { room } = plan.scene;
	const { unit, other } = unitsOn(how);
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
	const on: DrawnWall = { plan, wall, sets, levels, unit, other, view, reader: how.reader };
	const { entities, beside } = drawnWall(on);
	const name = wallName(plan, wall);
	const { width, height } = SHEETS[how.sheet];
	const field = fieldOf(how.sheet);
	const words = column(on, beside);
	const drawing = {
		title: name,
		size: { width, height },
		entities: [
			rectangle('sheet', 'sheet', { x0: 0, y0: 0, x1: width, y1: height }),
			...header(on, name, field),
			...pictured('wall', [...entities, ...datumLine(on, field)]),
			...words.entities,
			...footWords(CAUTIONS, field),
			...titleBlock({ caseId: plan.scene.c.id, subject: name, digest: plan.digest }, field)
		],
		pictures: { wall: wallAlt(on), key: keyAlt(on) },
		frame: { scale: view.scale, origin: cornerAt(on), picture: 'wall' }
	};
	return { drawing, rest: words.rest };
}

/** The corner the wall is measured from, at the datum line. */
function cornerAt({ plan, wall, view }: DrawnWall): Spot {
	const { room } = plan.scene;
	const { from, to } = spanOf(room, wall);
	return view.spot(cornerOf(room, wall).side === 'left' ? from : to, 0);
}

const highest = (sets: readonly SetOut[]): number =>
	Math.max(0, ...sets.map((s) => s.mark.place.y + s.mark.variant.outline.y1));

function header({ plan, wall, unit, other, view }: DrawnWall, name: string, field: Box): readonly Entity[] {
	const says = `Seen from inside. ${endsSay(plan.scene.room, wall)}`;
	return [
		write('head/title', name, [field.x0, 18.2], { size: 24, weight: 'semibold', heading: 1 }),
		write('head/says', says, [field.x0, 24], { size: 10.5, tone: 'grey' }),
		write('head/scale', scaleWords(view.scale, unit, other), [field.x1, 18.2], {
			size: 14,
			weight: 'semibold',
			anchor: 'end'
		})
	];
}

/** The wall itself, in drawing order: behind, outline, projection, things, words, figures; and what must stand elsewhere. */
function drawnWall(on: DrawnWall): { entities: readonly Entity[]; beside: Beside } {
	const { plan, wall, sets, levels, unit, view, reader } = on;
	const { room, c } = plan.scene;
	const framing = framingOf(plan, room.walls[wall], view, unit);
	const things = sets.map((s) => thingOf(s, { view, room }, unit));
	const step = stepOn(plan, wall, view);
	const studs = Object.values(c.enclosure.walls[wall].studs).map((stud) => stud.x);
	const outline = wallOutline(room, wall, view, studs);
	const ground = groundOf(view, things, outline);
	const tags = wallTags(things, ground);
	const bodied = reader === 'therapist';
	const reach = bodied ? contoursOn(plan, wall, view) : { entities: [], words: [] };
	const heights = bodied ? seatLinesOn(plan, wall, { view, unit }) : { lines: [], words: [] };
	const onWall = { ...ground.within, x0: view.wall.x0 + 0.6, x1: view.wall.x1 - 0.6 };
	const within = [onWall, ground.within];
	const hatched = framing.words.flatMap((w) => (w.id.startsWith('keep-out/') ? [w.on] : []));
	const words = labelled(
		[
			...things.flatMap((t) => t.words),
			...step.words,
			...framing.words.map((w): Wording => ({ ...w, within })),
			...heights.words,
			...reach.words.map((w): Wording => ({ ...w, within, off: hatched }))
		],
		ground
	);
	const drift = driftBoxes(sets, view);
	const rungs = ladder(levels, rungsUnder(plan), view, unit);
	const y = runningLine(rungs, view);
	const parts = things.flatMap((t) => t.entities);
	const legend = legendIn([...framing.entities, ...parts, ...drift], rungs, view);
	const entities = [
		...framing.entities,
		belowFloor(room, wall, view),
		...step.entities,
		...outline,
		...reach.entities,
		...heights.lines,
		...projections(sets, view, y - 1.4),
		...parts,
		...drift,
		...words.entities,
		...tags,
		...studsRow(c, room.walls[wall], view, { unit, from: cornerOf(room, wall).from }),
		...fallWords(room, wall, view, unit),
		...running({ sets, room, wall, unit, y }, view),
		...rungs,
		...legend.entities
	];
	return { entities, beside: { legend: legend.elsewhere, notes: words.notes } };
}

/** What words on a wall keep clear of before any is placed. */
function groundOf({ window, datum }: View, things: readonly Thing[], outline: readonly Entity[]): Ground {
	return {
		things: things.flatMap((t) => t.covers),
		words: outline.flatMap((e) => (e.kind === 'text' ? [widened(boxOf(e), 0.8)] : [])),
		lines: [{ x0: window.x0, x1: window.x1, y0: datum - 0.6, y1: datum + 0.6 }],
		leaders: [],
		within: { x0: window.x0 + 0.6, x1: window.x1 - 0.6, y0: window.y0 + 2.4, y1: window.y1 - 2.4 }
	};
}

/** Levels of the room beside those of the marks. */
const rungsUnder = (plan: Plan): RoomLevels => ({ floor: plan.scene.room.bathroomFloor, step: stepOf(plan) });

function projections(sets: readonly SetOut[], view: View, down: number): readonly Entity[] {
	return sets.flatMap((s) =>
		s.points.flatMap(([x, y], i): Entity[] => [
			line(`projection/${s.id}/${String(i)}/down`, 'projection', view.spot(x, y), [view.x(x), down]),
			...(hasLevel(s)
				? [line(`projection/${s.id}/${String(i)}/across`, 'projection', [view.rail + 0.9, view.y(y)], view.spot(x, y))]
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
