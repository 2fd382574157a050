import { expect, test } from 'vitest';
import { z } from 'zod';
import { caseSchema } from '#core/case/record.ts';

test('[case R1] the published JSON Schema is the record this program reads', async () => {
	const schema = z.toJSONSchema(caseSchema, { io: 'input' });
	const published = { ...schema, title: 'Graspline case, version 1' };
	await expect(`${JSON.stringify(published, null, '\t')}\n`).toMatchFileSnapshot('../../../static/case.schema.json');
});
