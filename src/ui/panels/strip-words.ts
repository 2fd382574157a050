import { formatLength, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import type { Strip } from '#ui/drawing/strip.ts';

/** A strip in words, for those who do not see it. */
export function stripWords({ value, spans, easy, stretched }: Strip, what: string, tape: Tape): string {
	const length = (n: number): string => formatLength(mm(n), tape);
	const said = spans.map(({ name, min, max }) => {
		if (min !== undefined && max !== undefined) return `${name} ${length(min)} to ${length(max)}`;
		return min === undefined ? `${name} up to ${length(max ?? 0)}` : `${name} from ${length(min)}`;
	});
	const bands = [
		...(easy ? [`easy from ${length(easy[0])} to ${length(easy[1])}`] : []),
		...(stretched ? [`stretched from ${length(stretched[0])} to ${length(stretched[1])}`] : [])
	];
	return `${what} Here ${length(value)}. ${[...said, ...bands].join('; ')}.`;
}
