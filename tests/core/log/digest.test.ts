import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sha256Hex } from '#core/log/digest.ts';

// Source: FIPS 180-4 examples and the NIST Secure Hash Standard validation set (one block, two blocks, empty, one million a).
const PUBLISHED = [
	['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
	['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
	[
		'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
		'248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'
	]
] as const;

async function platformDigest(text: string): Promise<string> {
	const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
	return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

describe('digest', () => {
	test.each(PUBLISHED)('[log R2] the published digest of "%s"', (text, digest) => {
		expect(sha256Hex(text)).toBe(digest);
	});

	test('[log R2] the published digest of a million times a', () => {
		expect(sha256Hex('a'.repeat(1_000_000))).toBe('cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0');
	});

	test('[log R2] every length around the block borders agrees with the platform', async () => {
		for (let length = 0; length <= 130; length++) {
			expect(sha256Hex('é'.repeat(length))).toBe(await platformDigest('é'.repeat(length)));
			expect(sha256Hex('a'.repeat(length))).toBe(await platformDigest('a'.repeat(length)));
		}
	});

	test('[log R2] any text agrees with the platform, in any script', async () => {
		const text = fc.oneof(
			fc.string({ unit: 'binary', maxLength: 300 }),
			fc.string({ unit: 'grapheme', maxLength: 300 })
		);
		await fc.assert(
			fc.asyncProperty(text, async (written) => {
				expect(sha256Hex(written)).toBe(await platformDigest(written));
			})
		);
	});

	test('[log R2] half of a surrogate pair counts as the replacement character', async () => {
		expect(sha256Hex('a\ud800b')).toBe(await platformDigest('a\ud800b'));
	});
});
