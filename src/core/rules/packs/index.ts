import type { Case } from '#core/case/record.ts';
import type { Pack } from '../row.ts';
import { ADA_2010 } from './ada-2010.ts';
import { CRAFT } from './craft.ts';
import { EVIDENCE } from './evidence.ts';
import { NEEDS } from './needs.ts';
import { PERSON } from './person.ts';

/** Packs of documents; one of them may be the chosen reference, the others are only compared with. */
export const DOCUMENTS: readonly Pack[] = [ADA_2010];

/** Every pack a case is judged by: the person's, the evidence, the documents with the chosen one first, craft. */
export function packsFor(reference: Case['reference']): readonly Pack[] {
	const chosen = DOCUMENTS.filter((pack) => pack.id === reference);
	const others = DOCUMENTS.filter((pack) => pack.id !== reference);
	return [PERSON, EVIDENCE, NEEDS, ...chosen, ...others, CRAFT];
}
