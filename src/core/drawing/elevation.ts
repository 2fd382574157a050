import type { WallId } from '../geometry/frame.ts';
import type { Plan } from '../plan.ts';
import type { LengthUnit } from '../units/length.ts';
import type { Tape } from '../units/format.ts';
import type { Band, Block } from './block.ts';
import type { Box, Drawing, Entity } from './entity.ts';
import { figure } from './figure.ts';
import { contoursOn } from './contour.ts';
import { framingOf } from './framing.ts';
import { keyPlan } from './key-plan.ts';
import { ladder, ladderWidth } from './ladder.ts';
import { legendOf } from './legend.ts';
import { levelsOf, type Level } from './level.ts';
import { line, rectangle, shape } from './path.ts';
import { questionBox, wallQuestions } from './question.ts';
import { running } from './running.ts';
import { schedule } from './schedule.ts';
import { cornerOf, settingOut, wallName, wallsUsed, type SetOut } from './setting-out.ts';
import { fieldOf, FOOT, SHEETS, type SheetName } from './sheet.ts';
import { studsRow } from './studs-row.ts';
import { wallTags } from './tag.ts';
import { thingOf } from './thing.ts';
import { cautions, titleBlock } from './title-block.ts';
import { boxOf, write } from './type.ts';
import { scaleName, viewOf, type View } from './view.ts';
import { belowFloor, corners, fallWords, wallOutline } from './wall-outline.ts';
import { wallWords } from './wall-words.ts';

/** How sheets are drawn: their size, and the tape their figures are read on. */
export interface OnPaper {
	readonly sheet: SheetName;
	readonly tape: Tape;
}

interface Wall {
	readonly plan: Plan;
	readonly wall: WallId;
	readonly sets: readonly SetOut[];
	readonly levels: readonly Level[];
	readonly unit: LengthUnit;
	readonly view: View;
}

/**
 * One wall on its sheet: what is behind it, the marks with every figure to set them out, reach, schedule, cautions.
 * Units and frame: mm of the sheet.
 * Shape: the largest scale of its trade that fits; no label lies on another.
 */
export function elevationOf(plan: Plan, wall: WallId, how: OnPaper): Drawing {
	const { room } = plan.scene;
	const { unit } = how.tape;
	const sets = settingOut(plan).filter((s) => s.mark.place.wall === wall);
	const levels = levelsOf(room, sets, unit);
	const view = viewOf({ sheet: how.sheet, unit, room, wall, highest: highest(sets), ladder: ladderWidth(levels, unit) });
	const on = { plan, wall, sets, levels, unit, view };
	const name = wallName(room, wall);
	const { width, height } = SHEETS[how.sheet];
	const field = fieldOf(how.sheet);
	return {
		title: name,
		size: { width, height },
		entities: [
			rectangle('sheet', 'sheet', { x0: 0, y0: 0, x1: width, y1: height }),
			...header(on, name, field),
			...drawnWall(on),
			...datumLine(on, field),
			...column(on),
			...cautions(field.x1 - field.x0 - 94).draw(field.x0, field.y1 - FOOT),
			...titleBlock({ caseId: plan.scene.c.id, subject: wall, digest: plan.digest }, field)
		]
	};
}

const highest = (sets: readonly SetOut[]): number => Math.max(0, ...sets.map((s) => s.mark.place.y + s.mark.variant.outline.y1));

function header({ plan, wall, unit, view }: Wall, name: string, field: Box): readonly Entity[] {
	const at = corners(wall);
	const side = (corner: boolean, other: string) => (corner ? other : 'entry');
	const left = side(at.left, wall === 'back' ? 'left wall' : 'back wall');
	const right = side(at.right, wall === 'back' ? 'right wall' : 'back wall');
	const number = wallsUsed(plan).indexOf(wall) + 2;
	const count = `Sheet ${String(number)} of ${String(wallsUsed(plan).length + 1)}, revision \u2013`;
	const says = `Seen from inside. ${left[0]?.toUpperCase() ?? ''}${left.slice(1)} to the left, ${right} to the right.`;
	return [
		write('head/title', name, [field.x0, 18.2], { size: 24, weight: 'semibold' }),
		write('head/says', says, [field.x0, 24], { size: 10.5, tone: 'grey' }),
		write('head/scale', scaleName(view.scale, unit), [field.x1, 18.2], { size: 14, weight: 'semibold', anchor: 'end' }),
		...(number > 1 ? [write('head/sheet', count, [field.x1, 24], { size: 10.5, tone: 'grey', anchor: 'end' })] : [])
	];
}

/** The wall itself, in drawing order: behind, outline, projection, things, words, figures. */
function drawnWall(on: Wall): readonly Entity[] {
	const { plan, wall, sets, levels, unit, view } = on;
	const { room, c } = plan.scene;
	const corner = cornerOf(room, wall);
	const framing = framingOf(c, room.walls[wall], view, unit);
	const things = sets.map((s) => thingOf(s, view));
	const { window, datum } = view;
	const taken: Box[] = [
		...things.flatMap((t) => t.covers),
		{ x0: window.x0, x1: window.x1, y0: datum - 0.6, y1: datum + 0.6 }
	];
	const within = { x0: window.x0 + 0.6, x1: window.x1 - 0.6, y0: window.y0 + 2.4, y1: window.y1 - 2.4 };
	const tags = wallTags(things, taken, within);
	const reach = contoursOn(plan, wall, view);
	const words = wallWords([...framing.words, ...reach.words], taken, within);
	const far = wall === 'back' ? 'corner' : 'entry';
	const rungs = ladder(levels, room.bathroomFloor, view, unit);
	return [
		...framing.entities,
		belowFloor(room, wall, view),
		...wallOutline(room, wall, view),
		...reach.entities,
		...projections(sets, view),
		...things.flatMap((t) => t.entities),
		...words,
		...tags,
		...studsRow(c, wall, view, { unit, from: corner.from }),
		...fallWords(room, wall, view, unit),
		...running({ sets, length: room.walls[wall].length, corner, end: far, unit }, view),
		...rungs,
		...legend(framing.entities, rungs, view)
	];
}

function projections(sets: readonly SetOut[], view: View): readonly Entity[] {
	return sets.flatMap((s) =>
		s.points.flatMap(([x, y], i): Entity[] => [
			line(`projection/${s.id}/${String(i)}/down`, 'projection', view.spot(x, y), [view.x(x), view.window.y1 + 7.6]),
			line(`projection/${s.id}/${String(i)}/across`, 'projection', [view.window.x0 - 4.1, view.y(y)], view.spot(x, y))
		])
	);
}

function datumLine({ view }: Wall, field: Box): readonly Entity[] {
	const y = view.datum;
	return [
		line('datum/line', 'datum', [field.x0, y], [field.x1, y]),
		shape('datum/sign', 'datum-sign', [field.x0 + 2, y], [field.x0, y - 3.2], [field.x0 + 4, y - 3.2])
	];
}

/** The legend in the lowest free stretch of the ladder column. */
function legend(drawn: readonly Entity[], rungs: readonly Entity[], view: View): readonly Entity[] {
	const { height, draw } = legendOf(drawn);
	const texts = rungs.flatMap((e) => (e.kind === 'text' ? [boxOf(e)] : []));
	for (let y = view.window.y1 - 12 - height; y > view.window.y0; y -= 2) {
		const near = texts.some((t) => t.y0 < y + height + 3 && t.y1 > y - 3);
		const crosses = Math.abs(view.datum - y - height / 2) < height / 2 + 5;
		if (!near && !crosses) return draw(view.ladder, y);
	}
	return [];
}

/** The column of words: key plan and questions above the datum line, the schedule below it. */
function column(on: Wall): readonly Entity[] {
	const { plan, wall, sets, unit, view } = on;
	const { column: box, datum } = view;
	const width = box.x1 - box.x0;
	const { room, holds } = plan.scene;
	const bands = [
		{ y0: box.y0, y1: Math.min(datum - 7, box.y1) },
		{ y0: datum + 4, y1: box.y1 }
	];
	const table = schedule({ sets, from: cornerOf(room, wall).from, unit, force: holds.demand.force, width });
	const questions = wallQuestions(plan, sets).map((q) => questionBox(q, width));
	const above = figure(-room.bathroomFloor, unit);
	const words = above === '0' ? 'Datum line: the floor F' : `Datum line, ${above} above F`;
	return [
		...placed([keyPlan(plan, wall, width)], bands, box.x0),
		...placed([table], bands.toReversed(), box.x0),
		...placed(questions, bands, box.x0),
		write('datum/words', words, [box.x0, datum - 1.5], { size: 10.5, weight: 'semibold', tone: 'datum' })
	];
}

function placed(blocks: readonly Block[], bands: { y0: number; y1: number }[], x: number): readonly Entity[] {
	return blocks.flatMap((block) => {
		const band = bands.find((b) => b.y1 - b.y0 >= block.height);
		if (!band) return [];
		const drawn = block.draw(x, band.y0);
		band.y0 += block.height;
		return drawn;
	});
}
