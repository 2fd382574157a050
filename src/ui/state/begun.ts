import { isObject, type Json } from '#core/log/json.ts';
import type { Edit } from '#core/log/change.ts';
import type { FieldPath, Whole } from '#ui/fields/spec.ts';

/** What is said so far of things that are not whole yet, by the path of each and of each part below that. */
export type Begun = Readonly<Record<string, Readonly<Record<string, Json>>>>;

/** A new thing of a table as it is filled in: what was typed, and what was chosen. */
export interface NewForm {
	readonly texts: Readonly<Record<string, string>>;
	readonly chosen: Readonly<Record<string, Json | undefined>>;
}

/** The thing a value is a part of, where it holds that right below itself. */
export const homeOf = (path: FieldPath): FieldPath => path.slice(0, -1);

/** The part as it is begun, or undefined. */
export function begunAt(begun: Begun, path: FieldPath): Json | undefined {
	const ends = path.map((_, i) => i);
	const end = ends.findLast((at) => begun[keyOf(path.slice(0, at))] !== undefined);
	return end === undefined ? undefined : begun[keyOf(path.slice(0, end))]?.[keyOf(path.slice(end))];
}

/** With one part of a thing more, another, or one less. A thing of which nothing is said is not begun. */
export function withPart(begun: Begun, { path, to }: Edit, home: FieldPath): Begun {
	const part = keyOf(path.slice(home.length));
	const rest = Object.entries(begun[keyOf(home)] ?? {}).filter(([key]) => key !== part);
	const parts = to === undefined ? rest : [...rest, [part, to] as const];
	return parts.length === 0 ? without(begun, home) : { ...begun, [keyOf(home)]: Object.fromEntries(parts) };
}

/** Without a thing. */
export function without(begun: Begun, home: FieldPath): Begun {
	return Object.fromEntries(Object.entries(begun).filter(([key]) => key !== keyOf(home)));
}

/** The paths of the parts of a thing that are begun. */
export const partsBegun = (begun: Begun, home: FieldPath): readonly FieldPath[] =>
	Object.keys(begun[keyOf(home)] ?? {}).map((key) => [...home, ...key.split('.')]);

/** A part as an edit of its thing, with all that is said of that so far: what is recorded, else what is begun. */
export function togetherWith(
	{ path, to }: Edit,
	{ recorded, begun, whole }: { readonly recorded: Json | undefined; readonly begun: Begun; readonly whole: Whole }
): { readonly path: FieldPath; readonly to: Readonly<Record<string, Json>> } {
	const home = whole.path;
	const parts = Object.entries(begun[keyOf(home)] ?? {});
	const had = isObject(recorded)
		? recorded
		: parts.reduce((thing, [key, value]) => put(thing, key.split('.'), value), whole.fixed);
	return { path: home, to: put(had, path.slice(home.length), to) };
}

type Thing = Readonly<Record<string, Json>>;

/** A thing with a value below it, or without. */
function put(thing: Thing, [key = '', ...below]: FieldPath, to: Json | undefined): Thing {
	if (below.length > 0) {
		const inner = thing[key];
		return { ...thing, [key]: put(inner !== undefined && isObject(inner) ? inner : {}, below, to) };
	}
	const rest = Object.fromEntries(Object.entries(thing).filter(([name]) => name !== key));
	return to === undefined ? rest : { ...rest, [key]: to };
}

const keyOf = (path: FieldPath): string => path.join('.');
