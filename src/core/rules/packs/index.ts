import type { Case } from '#core/case/record.ts';
import type { Pack } from '../row.ts';
import { A117_1_2003 } from './a117-1-2003.ts';
import { ADA_2010 } from './ada-2010.ts';
import { BC_BCBC_2024 } from './bc-bcbc-2024.ts';
import { CBC_11B } from './cbc-11b.ts';
import { CRAFT } from './craft.ts';
import { EVIDENCE } from './evidence.ts';
import { FR_ERP_2014 } from './fr-erp-2014.ts';
import { NEEDS } from './needs.ts';
import { ON_OBC_2012 } from './on-obc-2012.ts';
import { PERSON } from './person.ts';
import { UK_ADM_1 } from './uk-adm-1.ts';
import { UK_ADM_2 } from './uk-adm-2.ts';

/** Packs of documents in the order of their ids; one of them may be the chosen reference, the others are only compared with. */
export const DOCUMENTS: readonly Pack[] = [
	ADA_2010,
	A117_1_2003,
	CBC_11B,
	ON_OBC_2012,
	BC_BCBC_2024,
	UK_ADM_2,
	UK_ADM_1,
	FR_ERP_2014
];

/** Every pack a case is judged by: the person's, the evidence, the documents with the chosen one first, craft. */
export function packsFor(reference: Case['reference']): readonly Pack[] {
	const chosen = DOCUMENTS.filter((pack) => pack.id === reference);
	const others = DOCUMENTS.filter((pack) => pack.id !== reference);
	return [PERSON, EVIDENCE, NEEDS, ...chosen, ...others, CRAFT];
}
