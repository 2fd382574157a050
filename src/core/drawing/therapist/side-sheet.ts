import type { Plan } from '#core/plan.ts';
import { onTape } from '#core/units/format.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { paragraph, space, stacked, type Block } from '../block.ts';
import { actingIn, type Acting } from '../body/acting.ts';
import { posePicture, posesFor, type Pose, type PosePicture } from '../body/poses.ts';
import { betweenShoulders, soleAbove } from '../body/stance.ts';
import { pictured, type Box, type Drawing, type Entity, type Spot } from '../entity.ts';
import { figure, partName, signed } from '../figure.ts';
import { leaderOf, placeOf, keep, type Ground } from '../labels.ts';
import { listHeight, listSheets, listWidth } from '../list-sheet.ts';
import { settingOut, type SetOut } from '../setting-out.ts';
import type { OnPaper } from '../sheet.ts';
import { TABLE_TAG, tag } from '../tag.ts';
import { write } from '../type.ts';
import { scaleName } from '../view.ts';
import type { FootWords } from '../title-block.ts';

const TITLES: Readonly<Record<Pose, string>> = {
	sitting: 'On the seat',
	standing: 'Washing on the feet',
	rising: 'Rising from the seat',
	stepping: 'Stepping in',
	helper: 'Whoever helps, from outside'
};

/** Room of one pose: the width of its picture, the gap to its words, and the space under it. Units: mm. */
const ROW = { picture: 98, gap: 8, after: 4 };

/** Two poses stand on a sheet. Units: mm. */
const heightOf = (how: OnPaper): number => listHeight(how) / 2 - ROW.after;

/**
 * Each pose from the side at a stated scale, with its heights from the datum line, the lean it takes and what is under the feet.
 * Shape: as many sheets as it takes; none where the plan has no pose to show.
 */
export function sideSheetsOf(plan: Plan, how: OnPaper): readonly Drawing[] {
	const poses = posesFor(plan);
	if (poses.length === 0) return [];
	const width = listWidth(how);
	const blocks = poses.flatMap((pose) => poseBlock(plan, how, pose, width));
	const says = 'Heights count from the datum line. The room is cut; what lies before the cut is left out.';
	const sheets = listSheets(plan, how, { title: 'From the side', says, blocks, foot: FOOT_WORDS });
	const alts = new Map(poses.map((pose) => [keyOf(pose), altOf(plan, how, pose)]));
	return sheets.map((sheet) => {
		const keys = [...new Set(sheet.entities.flatMap(({ picture }) => picture ?? []))];
		return { ...sheet, pictures: Object.fromEntries(keys.map((key) => [key, alts.get(key) ?? ''])) };
	});
}

const keyOf = (pose: Pose): string => `side-${pose}`;

function poseBlock(plan: Plan, how: OnPaper, pose: Pose, width: number): readonly Block[] {
	const acting = actingIn(plan, pose);
	if (!acting) return [];
	const { unit } = how.tape;
	const key = keyOf(pose);
	const beside = ROW.picture + ROW.gap;
	const hand = { size: 10.5, width: width - beside };
	const picture = posePicture(plan, pose, { x0: 0, y0: 0, x1: ROW.picture, y1: heightOf(how) }, key, unit);
	const words = stacked(
		...linesOf(plan, how, acting, picture).flatMap((says, i) => [
			paragraph(`${key}/says/${String(i)}`, says, hand),
			space(1.6)
		])
	);
	const height = Math.max(heightOf(how), words.height + 9);
	const block: Block = {
		height,
		draw: (x, y) => [
			write(`${key}/title`, TITLES[pose], [x + beside, y + 4.4], { size: 12, weight: 'semibold', heading: 2 }),
			...words.draw(x + beside, y + 9),
			...pictured(key, drawnIn(plan, pose, { x0: x, y0: y, x1: x + ROW.picture, y1: y + heightOf(how) }, unit))
		]
	};
	return [block, space(ROW.after)];
}

/** A pose with the letters of what is seen. */
function drawnIn(plan: Plan, pose: Pose, box: Box, unit: LengthUnit): readonly Entity[] {
	const key = keyOf(pose);
	const { entities, points, covers } = posePicture(plan, pose, box, key, unit);
	const ground: Ground = { things: [...covers], words: [], lines: [], leaders: [], within: box };
	const size = { width: 2 * TABLE_TAG + 0.8, height: 2 * TABLE_TAG + 0.8 };
	const tags = points.flatMap(({ about, at }) => {
		const set = settingOut(plan).find(({ id }) => id === about);
		const placed = set && placeOf({ ...size, wishes: around(at), ends: [at] }, ground);
		if (!placed) return [];
		keep(placed, size, ground);
		const id = `${key}/tag/${about}`;
		return [
			...leaderOf(id, placed.leader ? placed : { ...placed, leader: [placed.spot, at] }, size),
			...tag(id, set, placed.spot, TABLE_TAG)
		];
	});
	return [...entities, ...tags];
}

/** Places near a point, the nearest first. */
const around = ([x, y]: Spot): readonly Spot[] =>
	[7, 10, 14].flatMap((far) =>
		[-90, -45, -135, 0, 180, 45, 135, 90].map((turn): Spot => {
			const angle = (turn * Math.PI) / 180;
			return [x + far * Math.cos(angle), y + far * Math.sin(angle)];
		})
	);

/** What is told beside a pose, one sentence a line. */
function linesOf(plan: Plan, { tape }: OnPaper, acting: Acting, picture: PosePicture): readonly string[] {
	const { unit } = tape;
	return [
		`Scale ${scaleName(picture.scale, unit)}.`,
		whoseWords(acting, picture),
		...seatWords(plan, acting, unit),
		...shoulderWords(acting, unit),
		...feetWords(plan, acting, unit),
		...acting.holds.map((hold) => holdWords(plan, acting, hold, unit)),
		...leanWords(plan, acting).map((says) => onTape(says, tape))
	];
}

function whoseWords({ pose }: Acting, { whose, sketched }: PosePicture): string {
	const who = pose === 'helper' ? 'The helper' : 'The client';
	if (whose === 'neutral') return 'A neutral figure, not the size of anybody here.';
	return `${who}, drawn at own size${sketched ? '; dashed, because lengths are estimated' : ''}.`;
}

function seatWords({ marks }: Plan, { seat, inChair }: Acting, unit: LengthUnit): readonly string[] {
	if (!seat) return [];
	const top = signed(seat.back[2], unit);
	if (inChair) return [`Seat of the wheeled chair: ${top}.`];
	const mark = marks.find(({ accessory }) => accessory.purpose === 'sit');
	return mark ? [`Top of the seat: ${top}.`] : [];
}

/** Lengths of a neutral figure are nobody's, so they are not told. */
function shoulderWords({ d, stance }: Acting, unit: LengthUnit): readonly string[] {
	if (d.whose === 'neutral') return [];
	const [, , level] = betweenShoulders(stance);
	return [`Shoulders as drawn: ${signed(level, unit)}.`];
}

/** Less than this under the soles is the floor. Units: mm. */
const ON_FLOOR = 3;

function feetWords({ scene }: Plan, { pose, seat, d, stance, inChair }: Acting, unit: LengthUnit): readonly string[] {
	if (!seat || pose !== 'sitting') return [];
	const recorded = scene.bodies[d.id]?.dims.popliteal;
	if (d.whose === 'neutral' && recorded === undefined) return [];
	const gap = d.whose === 'own' ? soleAbove(stance, seat.floor) : seat.back[2] - seat.floor - (recorded?.value ?? 0);
	const guess = recorded?.how === 'estimated' ? ', on an estimated lower leg' : '';
	const says = d.whose === 'own' ? 'The soles' : 'By the length of the lower leg the soles';
	if (gap <= ON_FLOOR) return [`${says} reach the floor${guess}.`];
	return [`${says} are ${figure(gap, unit)} above the floor${inChair ? ', on the foot rest' : ''}${guess}.`];
}

function holdWords(plan: Plan, { d, holds }: Acting, hold: Acting['holds'][number], unit: LengthUnit): string {
	const set = settingOut(plan).find(({ id }) => id === hold.mark.accessory.id);
	const name = `${letterOf(set)}${partName(hold.mark, unit)}`;
	const { slack, at } = hold.goal;
	const where = `${hold.side} hand at ${signed(at[2], unit)}`;
	if (d.whose === 'neutral') return `${name}: ${where}.`;
	const leaning =
		holds[0] === hold && slack < 1 && slack > -1 ? ', leaning just so far' : `, ${figure(slack, unit)} to spare`;
	return `${name}: ${where}${slack < -1 ? `, ${figure(-slack, unit)} short of it` : leaning}.`;
}

const letterOf = (set: SetOut | undefined): string => (set ? `${set.letter}, ` : '');

/** The lean the plan told for what is worked from the seat. */
const leanWords = ({ probes }: Plan, { pose, holds }: Acting): readonly string[] =>
	pose === 'sitting'
		? probes.leans.filter((l) => holds.some(({ mark }) => mark.accessory.id === l.accessory)).map(({ says }) => says)
		: [];

/** A pose in words: what it is, at what scale and whose size, and what each hand is on. */
function altOf(plan: Plan, how: OnPaper, pose: Pose): string {
	const { unit } = how.tape;
	const acting = actingIn(plan, pose);
	if (!acting) return '';
	const picture = posePicture(plan, pose, { x0: 0, y0: 0, x1: ROW.picture, y1: heightOf(how) }, keyOf(pose), unit);
	const sets = settingOut(plan).filter(({ id }) => picture.points.some(({ about }) => about === id));
	const seen = sets.map((set) => `${set.letter}, ${partName(set.mark, unit)}`).join('; ');
	return `${TITLES[pose]}, seen from the side. ${linesOf(plan, how, acting, picture).join(' ')} Seen: ${seen || 'no mark'}.`;
}

const FOOT_WORDS: FootWords = {
	id: 'foot',
	title: 'A figure is no trial',
	words:
		'Joints, trunk and limbs are simplified; thickness is drawn and not computed with. A hand that does not get there is drawn at full stretch, short of it. The person\u2019s own trial on the wall outranks the drawing. For the therapist alone.'
};
