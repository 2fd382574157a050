import type { Plan } from '#core/plan.ts';
import { WEIGH } from '#core/structure/carrying.ts';
import { space, stacked, indented, paragraph, type Block } from './block.ts';
import { circle, rectangle, rounded } from './path.ts';
import type { SetOut } from './setting-out.ts';
import type { Reader } from './sheet.ts';
import { widthOf, write } from './type.ts';

const TEXT = 10;
const HEAD = 11;
const PAD = 2.4;

/** A question that keeps marks of a wall from being drilled. */
export interface WallQuestion {
	readonly id: string;
	readonly asks: string;
	/** What may be ticked. */
	readonly answers: readonly string[];
	readonly sets: readonly SetOut[];
	/** What stands at its head instead of which marks are open. */
	readonly head?: string;
}

const BEHIND = ['Stud, middle at ______', 'Sheet, ______ thick', 'Neither: stop and ring'] as const;
const SETTLED = ['Settled on ____ by ____'] as const;
/** Who fits it is not told what about a person is asked. */
const ASKED_ELSEWHERE = 'The therapist is still asking somebody about it: ring before it is fitted.';

/**
 * The questions about what is behind a wall, each with all open marks it keeps; then what waits for an answer from
 * elsewhere. What is asked of a person is asked elsewhere too, for whoever fits it.
 */
export function wallQuestions(plan: Plan, sets: readonly SetOut[], reader: Reader): readonly WallQuestion[] {
	const each = sets.map((set) => ({ set, missing: set.unseen ? missingOf(plan, set) : [] }));
	const told = (says: string) => reader !== 'installer' || says !== WEIGH;
	const waiting = each.filter(({ set, missing }) => set.waits || !missing.every(told)).map(({ set }) => set);
	const asked = each
		.filter(({ set, missing }) => set.unseen && (missing.length === 0 || missing.some(told)))
		.map(({ set, missing }) => ({ set, asks: missing.filter(told).join(' ') }));
	const behind = [...new Set(asked.map((a) => a.asks))].map((asks, i): WallQuestion => ({
		id: `question/${String(i)}`,
		asks: asks === '' ? 'What is behind it?' : asks,
		answers: BEHIND,
		sets: asked.filter((a) => a.asks === asks).map((a) => a.set)
	}));
	if (waiting.length === 0) return behind;
	return [...behind, { id: 'question/elsewhere', asks: ASKED_ELSEWHERE, answers: SETTLED, sets: waiting }];
}

/** What is not known of the wall behind a mark. */
const missingOf = ({ findings }: Plan, { id }: SetOut): readonly string[] => [
	...new Set(
		findings
			.filter((f) => f.row.origin === 'wall' && f.answer === 'unknown' && f.about.includes(id))
			.flatMap((f) => f.missing ?? [])
	)
];

/** The dashed box of one question: which marks are open, what to find out, and answers to tick. */
export function questionBox({ id, asks, answers, sets, head }: WallQuestion, width: number): Block {
	const inner = width - 2 * PAD;
	const says = head ?? `${sets.length > 1 ? 'are' : 'is'} open: do not drill`;
	const tags = 6.8 * sets.length + (sets.length > 0 ? 1.2 : 0);
	const beside = tags + widthOf(says, HEAD, 'semibold') <= inner;
	const text = stacked(
		...(!beside ? [space(1.4), paragraph(`${id}/says`, says, { size: HEAD, weight: 'semibold', width: inner })] : []),
		paragraph(`${id}/asks`, asks, { size: TEXT, width: inner }),
		space(1.2),
		...answers.map((answer, i) => tickLine(`${id}/answer/${String(i)}`, answer))
	);
	const height = 9.6 + text.height + 1.6;
	return {
		height: height + 3,
		draw: (x, y) => [
			rounded(id, 'question', { x0: x, y0: y, x1: x + width, y1: y + height }, 1.2),
			...sets.flatMap((s, i) => {
				const at = [x + PAD + 3 + 6.8 * i, y + 5.4] as const;
				return [
					circle(`${id}/tag/${s.letter}`, 'tag-open', at, 2.8),
					write(`${id}/tag/${s.letter}/letter`, s.letter, [at[0], at[1] + 1.25], {
						size: 10.5,
						weight: 'semibold',
						anchor: 'middle'
					})
				];
			}),
			...(!beside ? [] : [write(`${id}/says`, says, [x + PAD + tags, y + 6.7], { size: HEAD, weight: 'semibold' })]),
			...indented(PAD, text).draw(x, y + 9.6)
		]
	};
}

const tickLine = (id: string, text: string): Block => ({
	height: 5.2,
	draw: (x, y) => [
		rectangle(`${id}/box`, 'tick-box', { x0: x + 0.2, y0: y + 0.8, x1: x + 3.4, y1: y + 4 }),
		write(id, text, [x + 5.2, y + 3.7], { size: TEXT })
	]
});
