import type { Flange } from '#core/case/accessory.ts';
import { depthIn } from '#core/geometry/rect.ts';
import { edgeOf, WOOD_SCREW, type Fastener } from './fastener.ts';
import { depthOf, holdsIn, type Fixed, type Region } from './region.ts';
import { FLANGE } from './flange.ts';
import { bestTurn, type Turned } from './turn.ts';
import type { Outcome, Used } from './wood.ts';

/** What a calculation at a point of a wall comes to, and its lines with the verdict in words as the last. */
export interface Arithmetic {
	readonly verdict: Outcome | 'not known';
	/** The screw that is counted in each hole. Shape: undefined where none is calculated. */
	readonly fastener?: Fastener['name'];
	/** How the flange is turned where wood takes it. Units: degrees clockwise from up to its first hole. */
	readonly turn?: number;
	/** The loads on the worst screw beside what it takes. Shape: empty where nothing here is calculated. */
	readonly used: readonly Used[];
	readonly lines: readonly string[];
}

/** A point that is asked about. Units and frame: mm, wall frame; `force` in N. */
export interface AskedAt {
	readonly bracket: Fixed;
	/** The flange of a real part, once read off. */
	readonly flange?: Flange;
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
	const held = sure.find((r) => r.check.outcome === 'carries') ?? sure[0];
	const verdict = held?.check.outcome ?? (good.length > 0 || !asked.surveyed ? 'not known' : 'does not');
	const region = held ?? good[0] ?? here[0];
	const fastener = region?.check.fastener?.name;
	const used = region?.check.used ?? [];
	const best = region && turnedAt(region, asked);
	return {
		verdict,
		...(fastener && { fastener }),
		...(best && { turn: best.turn }),
		used,
		lines: [...shown(region, regions, asked), ...turned(best), VERDICTS[verdict]]
	};
}

function shown(region: Region | undefined, all: readonly Region[], asked: AskedAt): readonly string[] {
	const { bracket, flange, x, y } = asked;
	const name = flange ? `Flange as read off, ${String(flange.holes)} holes,` : NAMES[bracket];
	if (region) {
		const doubt = region.member.sure ? [] : ['This was told or assumed, not seen: probe before drilling.'];
		return [`${name} into ${region.member.name}.`, ...doubt, ...region.check.lines];
	}
	const behind = all.find((r) => depthIn(r.member.rect, x, y) >= 0);
	return behind
		? [
				`${name} at ${behind.member.name}: not all its screws would be in it here.`,
				...(behind.member.kind === 'stud' ? behind.check.lines : [])
			]
		: [`${name}: nothing is recorded behind the wall here.`];
}

/** How the flange is turned where wood takes it. */
function turnedAt({ member, check }: Region, { bracket, flange = FLANGE, force, x, y }: AskedAt): Turned | undefined {
	if (bracket !== 'flange' || member.kind !== 'wood' || check.outcome === 'does not') return undefined;
	return bestTurn(member.rect, [x, y], { force, flange, edge: edgeOf(check.fastener ?? WOOD_SCREW) });
}

/** The same in words, and what that spares its worst screw. */
const turned = (best: Turned | undefined): readonly string[] =>
	best ? [best.says, `Pushed straight down its worst screw then has ${best.tension.toFixed(1)} N.`] : [];
