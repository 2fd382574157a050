import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { person } from '#core/case/person.ts';
import { readCase } from '#core/case/read.ts';
import type { Case } from '#core/case/record.ts';
import { onTape } from '#core/units/format.ts';
import { summaryOf } from '#core/drawing/summary.ts';
import { factName, factsTold, WORDED } from '#core/fact-words.ts';
import { planFrom, questionOf, type Plan } from '#core/plan.ts';
import { worthMeasuring } from '#core/worth.ts';
import { planned } from '../placement/planned.ts';
import { client } from '../placement/reduced.ts';

const CLIENTS = readdirSync('personas/clients');

function exampleOf(name: string): Case {
	const read = readCase(readFileSync(`personas/clients/${name}/case.json`, 'utf8'));
	if (read.kind !== 'case') throw new Error(`${name} is no case`);
	return read.case;
}

/** Without places: what is known of people does not rest on them. */
function unplaced(c: Case): Plan {
	return planFrom(questionOf(c), { marks: [], status: 'impossible', cost: [], bound: [], evaluations: 0, nodes: 0 });
}

const textOf = (plan: Plan): string => summaryOf(plan, [], { unit: plan.scene.c.tape.unit });
const flowing = (text: string): string => text.replace(/\s+/g, ' ');

/** Every value with how it is known below a place of the record, by where it is. */
function factsBelow(node: unknown, path: readonly string[] = []): readonly { path: readonly string[]; how: string }[] {
	if (typeof node !== 'object' || node === null) return [];
	const { how } = node as { how?: unknown };
	if (typeof how === 'string') return [{ path, how }];
	return Object.entries(node).flatMap(([key, one]) => factsBelow(one, [...path, key]));
}

describe('[drawing R14] the text for a record', () => {
	test.each(CLIENTS)('tells every fact of everybody, with how it is known: %s', (name) => {
		const c = exampleOf(name);
		const text = flowing(textOf(unplaced(c)));
		for (const one of Object.values(c.people)) {
			const facts = factsBelow(one);
			const told = factsTold(one, { unit: c.tape.unit });
			for (const { path, how } of facts) {
				const known = told.find((fact) => fact.name === factName(path) && fact.later === (path[0] === 'later'));
				expect(known?.known, path.join('.')).toContain(how);
				expect(text).toContain(flowing(`- ${factName(path)}: ${known?.value ?? '?'} (${known?.known ?? '?'})`));
			}
		}
	});

	test.each(CLIENTS)(
		'no line is too long, nothing is said that nobody can know, no estimate among the facts: %s',
		(name) => {
			const plan = unplaced(exampleOf(name));
			const text = textOf(plan);
			for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(78);
			expect(text).not.toMatch(/complian|\bsafe\b|optimal/i);
			for (const section of text.split('\n\n')) {
				if (/: WHAT IS KNOWN/.test(section)) expect(section).not.toMatch(/estimated/);
				if (/: ESTIMATED/.test(section)) expect(section).not.toMatch(/\((measured|observed|told|declared|assumed)/);
			}
		}
	);

	test('every key of a person has words', () => {
		const keys = new Set(keysOf(z.toJSONSchema(person, { io: 'input' }) as Schema));
		expect(keys.size).toBeGreaterThan(50);
		expect([...keys].filter((key) => !WORDED.includes(key))).toEqual([]);
		expect(WORDED.filter((key) => !keys.has(key))).toEqual([]);
	});

	test('what somebody typed breaks no line and turns no text round', () => {
		const c = structuredClone(exampleOf('turns-left'));
		const her = c.people['client'];
		if (!her) throw new Error('the example has a client');
		her.initials = 'M\n- x\u202e\u0007';
		her.goals = `${'w'.repeat(200)}\r\nCAUTIONS\u2028none`;
		const text = textOf(unplaced(c));
		expect(text.replaceAll('\n', '')).not.toMatch(/[\u0000-\u001f\u007f\u2028\u202e]/);
		expect(text.split('\n').filter((line) => /^CAUTIONS/.test(line))).toHaveLength(1);
		expect(text.split('\n').some((line) => line.startsWith('- x'))).toBe(false);
		for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(78);
	});

	test('every mark with its letter, its place and why; what is worth measuring as a span', () => {
		const c = client('turns-left');
		const { marks } = planned(c, 300_000);
		const plan = planFrom(questionOf(c), { marks, status: 'bounded', cost: [], bound: [], evaluations: 0, nodes: 0 });
		const worth = worthMeasuring(plan);
		const text = summaryOf(plan, worth, { unit: 'mm' });
		const lines = flowing(text);
		const proposed = text.slice(text.indexOf('\nPROPOSED'), text.indexOf('\nNOT MET'));
		expect(proposed.match(/^- [A-Z] .*/gm)).toHaveLength(marks.length);
		for (const { accessory } of marks) expect(lines).toContain(`Why: ${flowing(accessory.reason)}`);
		expect(worth.length).toBeGreaterThan(0);
		for (const { path } of worth)
			expect(lines).toMatch(new RegExp(`${factName(path)} \\(estimated \\d+ to \\d+ mm\\)`));
		for (const { asks } of plan.probes.questions) expect(lines).toContain(flowing(asks));
		for (const { whom } of plan.probes.waits) expect(lines).toContain(`Ask ${whom}:`);
		const outside = plan.findings.filter((f) => f.answer === 'outside' && f.strength === 'should');
		expect(outside.length).toBeGreaterThan(0);
		for (const { row } of outside) expect(lines).toContain(flowing(onTape(row.says, { unit: 'mm' })));
		expect(lines).toContain('Answer: On the chair outside, towel over its back.');
		expect(text.slice(text.indexOf('\nNOT ASKED YET'))).toContain('does what is asked');
		expect(text).toContain('WHERE SOURCES DISAGREE');
		expect(text).toContain('SEAT HEIGHT');
	});
});

interface Schema {
	readonly properties?: Readonly<Record<string, Schema>>;
	readonly additionalProperties?: Schema | boolean;
	readonly oneOf?: readonly Schema[];
	readonly anyOf?: readonly Schema[];
}

/** Where facts of a person stand in the schema, as words are kept by it; what a fact is made of only where it has no one value. */
function keysOf(schema: Schema, path: readonly string[] = []): readonly string[] {
	const { properties = {}, additionalProperties } = schema;
	const key = (path[0] === 'arms' ? ['arms', ...path.slice(2)] : path).join('.');
	const forms = [...(schema.oneOf ?? []), ...(schema.anyOf ?? [])];
	if (path[0] === 'later' || key === 'role' || key === 'initials') return [];
	const below = [schema, ...forms].flatMap((one) => Object.entries(one.properties ?? {}));
	if (below.some(([name]) => name === 'how')) {
		const parts = below.map(([name]) => name).filter((name) => name !== 'how' && name !== 'when');
		return parts.includes('value') ? [key] : [key, ...parts.map((name) => `${key}.${name}`)];
	}
	if (typeof additionalProperties === 'object') return keysOf(additionalProperties, path);
	const names = Object.entries(properties);
	return names.length === 0 ? [key] : names.flatMap(([name, one]) => keysOf(one, [...path, name]));
}
