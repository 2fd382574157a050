import { isObject, type Json } from '#core/log/json.ts';
import type { Edit } from '#core/log/change.ts';
import type { FieldPath, Whole } from '#ui/fields/spec.ts';

/** What is said so far of things that are not whole yet, by the path of each. */
export type Begun = Readonly<Record<string, Readonly<Record<string, Json>>>>;

/** A new thing of a table as it is filled in: what was typed, and what was chosen. */
export interface NewForm {
	readonly texts: Readonly<Record<string, string>>;
	readonly chosen: Readonly<Record<string, Json | undefined>>;
}

/** The thing a part belongs to. */
export const homeOf = (path: FieldPath): FieldPath => path.slice(0, -1);

/** The part as it is begun, or undefined. */
export const begunAt = (begun: Begun, path: FieldPath): Json | undefined =>
	begun[homeOf(path).join('.')]?.[path.at(-1) ?? ''];

/** With one part more, another, or one less. A thing of which nothing is said is not begun. */
export function withPart(begun: Begun, { path, to }: Edit): Begun {
	const home = homeOf(path).join('.');
	const rest = Object.entries(begun[home] ?? {}).filter(([key]) => key !== path.at(-1));
	const parts = to === undefined ? rest : [...rest, [path.at(-1) ?? '', to] as const];
	return parts.length === 0 ? without(begun, homeOf(path)) : { ...begun, [home]: Object.fromEntries(parts) };
}

/** Without a thing. */
export function without(begun: Begun, home: FieldPath): Begun {
	return Object.fromEntries(Object.entries(begun).filter(([key]) => key !== home.join('.')));
}

/** A part as an edit of its thing, with all that is said of that so far: what is recorded, else what is begun. */
export function togetherWith(
	{ path, to }: Edit,
	{ recorded, begun, whole }: { readonly recorded: Json | undefined; readonly begun: Begun; readonly whole: Whole }
): { readonly path: FieldPath; readonly to: Readonly<Record<string, Json>> } {
	const home = homeOf(path);
	const had = isObject(recorded) ? recorded : { ...whole.fixed, ...begun[home.join('.')] };
	const rest = Object.entries(had).filter(([key]) => key !== path.at(-1));
	const parts = to === undefined ? rest : [...rest, [path.at(-1) ?? '', to] as const];
	return { path: home, to: Object.fromEntries(parts) };
}
