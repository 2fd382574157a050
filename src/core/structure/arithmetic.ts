import { depthIn } from '#core/geometry/rect.ts';
import { edgeOf, WOOD_SCREW, type Fastener } from './fastener.ts';
import { depthOf, holdsIn, type Fixed, type Region } from './region.ts';
import { bestTurn } from './turn.ts';
import type { Outcome, Used } from './wood.ts';

/** What a calculation at a point of a wall comes to, and its lines with the verdict in words as the last. */
export interface Arithmetic {
	readonly verdict: Outcome | 'not known';
	/** The screw that is counted in each hole. Shape: undefined where none is calculated. */
	readonly fastener?: Fastener['name'];
	/** The loads on the worst screw beside what it takes. Shape: empty where nothing here is calculated. */
	readonly used: readonly Used[];
	readonly lines: readonly string[];
}

/** A point that is asked about. Units and frame: mm, wall frame; `force` in N. */
export interface AskedAt {
	readonly bracket: Fixed;
	readonly surveyed: boolean;
	readonly force: number;
	readonly x: number;
	readonly y: number;
}

/** The verdicts in words. */
export const VERDICTS: Readonly<Record<Arithmetic['verdict'], string>> = {
	carries: 'Carries by calculation, if the wall is as recorded; the test decides.',
	marginal: 'Marginal by calculation, if the wall is as recorded: not every check beside it is met; the test decides.',
	'does not': 'Does not carry by calculation.',
	'not known': 'Not known: what is behind the wall, and what it takes, must be found out first.'
};

const NAMES: Readonly<Record<Fixed, string>> = {
	flange: 'Three-hole flange',
	'seat-plate': 'Seat plate, no legs',
	'leg-plate': 'Hinge plate of a seat with front legs',
	'rail-plate': 'Plate of a fold-down rail',
	rest: 'Rest'
};

/** The calculation for a bracket at a point, from what is behind the wall. */
export function arithmeticOf(regions: readonly Region[], asked: AskedAt): Arithmetic {
	const here = regions.filter((r) => depthOf(r, asked.x, asked.y) >= 0);
	const good = here.filter(holdsIn);
	const sure = good.filter((r) => r.member.sure && r.named);
	const best = sure.find((r) => r.check.outcome === 'carries') ?? sure[0];
	const verdict = best?.check.outcome ?? (good.length > 0 || !asked.surveyed ? 'not known' : 'does not');
	const region = best ?? good[0] ?? here[0];
	const fastener = region?.check.fastener?.name;
	const used = region?.check.used ?? [];
	return { verdict, ...(fastener && { fastener }), used, lines: [...shown(region, regions, asked), VERDICTS[verdict]] };
}

function shown(region: Region | undefined, all: readonly Region[], asked: AskedAt): readonly string[] {
	const { bracket, x, y } = asked;
	if (region) {
		const doubt = region.member.sure ? [] : ['This was told or assumed, not seen: probe before drilling.'];
		return [`${NAMES[bracket]} into ${region.member.name}.`, ...doubt, ...region.check.lines, ...turned(region, asked)];
	}
	const behind = all.find((r) => depthIn(r.member.rect, x, y) >= 0);
	return behind
		? [
				`${NAMES[bracket]} at ${behind.member.name}: not all its screws would be in it here.`,
				...(behind.member.kind === 'stud' ? behind.check.lines : [])
			]
		: [`${NAMES[bracket]}: nothing is recorded behind the wall here.`];
}

/** How the flange is turned where wood takes it, and what that spares its worst screw. */
function turned({ member, check }: Region, { bracket, force, x, y }: AskedAt): readonly string[] {
	if (bracket !== 'flange' || member.kind !== 'wood' || check.outcome === 'does not') return [];
	const best = bestTurn(member.rect, [x, y], { force, edge: edgeOf(check.fastener ?? WOOD_SCREW) });
	return best ? [best.says, `Pushed straight down its worst screw then has ${best.tension.toFixed(1)} N.`] : [];
}
