import { figure } from '#core/drawing/figure.ts';
import type { Finding } from '#core/rules/row.ts';
import { onTape, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';

/** Beyond this there is no end to what carries, or no place that does, on this wall. Units: mm. */
const ENDLESS = 2000;

/** Whether the wall carries a mark where it is, and how far it is from where that ends. */
export function loadWords({ answer, slack, missing }: Finding, tape: Tape): string {
	if (answer === 'unknown') return `Carries: not known. ${onTape(missing ?? '', tape)}`.trim();
	const apart = Math.abs(slack ?? ENDLESS);
	const length = apart < ENDLESS ? `${figure(mm(apart), tape.unit)} ${tape.unit}` : undefined;
	if (answer === 'inside') return `Carries by calculation${length ? `, ${length} to spare` : ''}.`;
	return `Does not carry by calculation${length ? `; ${length} from what does` : ''}.`;
}
