import { parseLength } from '#core/units/parse.ts';
import type { Case, Person, Problem } from './record.ts';

/** What of a body is always less than what else of it, however she is built: where each is, and what it is called. */
const LESS: readonly (readonly [Part, Part])[] = [
	[part('shoulderStanding', 'the shoulder, standing'), part('stature', 'the stature')],
	[part('wristStanding', 'the wrist, standing'), part('shoulderStanding', 'the shoulder, standing')],
	[part('popliteal', 'the height under the knee'), part('kneeHeight', 'the height of the knee')],
	[part('popliteal', 'the height under the knee'), part('shoulderStanding', 'the shoulder, standing')],
	[part('elbowAboveSeat', 'the elbow above the seat'), part('shoulderAboveSeat', 'the shoulder above the seat')],
	[part('shoulderAboveSeat', 'the shoulder above the seat'), part('sittingHeight', 'the sitting height')],
	...(['left', 'right'] as const).flatMap((side) => [
		[limb(side, 'toGrip', 'the arm to the grip'), part('stature', 'the stature')] as const,
		[limb(side, 'upperArm', 'the upper arm'), limb(side, 'toGrip', 'the arm to the grip')] as const
	])
];

/** A value and the words it was typed in may differ by this: the words are read more finely than some tapes. Units: mm. Ours. */
const APART = 1;
/** Words that name their unit; a bare figure is in whatever unit was shown. */
const NAMES_UNIT = /\d\s*(?:mm|cm|m|in|inch|inches|ft|feet|foot|["'”’″′])\.?\s*$/iu;

interface Part {
	readonly path: readonly string[];
	readonly name: string;
	readonly of: (person: Person) => number | undefined;
}

function part(name: keyof Person['body'], words: string): Part {
	return { path: ['body', name], name: words, of: ({ body }) => body[name]?.value };
}

function limb(side: keyof Person['arms'], name: 'toGrip' | 'upperArm', words: string): Part {
	return { path: ['arms', side, name], name: words, of: ({ arms }) => arms[side][name]?.value };
}

/** Bodies nobody has, and lengths that are not what was typed: each with its path. */
export function misbuilt({ people }: Case): Problem[] {
	return Object.entries(people).flatMap(([id, person]) => [
		...LESS.flatMap(([small, large]) => {
			const [less, more] = [small.of(person), large.of(person)];
			if (less === undefined || more === undefined || less < more) return [];
			const says = `expected ${small.name} less than ${large.name}, ${String(more)} - saw ${String(less)}`;
			return [{ path: ['people', id, ...small.path].join('.'), says }];
		}),
		...(['body', 'arms', 'chair', 'walkingAid'] as const).flatMap((group) =>
			mistyped(person[group], `people.${id}.${group}`)
		)
	]);
}

function mistyped(value: unknown, path: string): Problem[] {
	if (typeof value !== 'object' || value === null) return [];
	if (!('typed' in value && 'value' in value)) {
		return Object.entries(value).flatMap(([key, inner]) => mistyped(inner, `${path}.${key}`));
	}
	const { typed, value: kept } = value;
	if (typeof typed !== 'string' || typeof kept !== 'number' || !NAMES_UNIT.test(typed)) return [];
	const read = parseLength(typed, 'mm');
	if (read.kind === 'refused' || Math.abs(read.value - kept) <= APART) return [];
	const says = `expected ${String(read.value)}, as it was typed, "${typed.trim()}" - saw ${String(kept)}`;
	return [{ path: `${path}.value`, says }];
}
