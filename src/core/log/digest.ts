/**
 * The SHA-256 of a text in UTF-8, as 64 lower-case hexadecimal digits.
 * Written out because core may neither wait nor know a platform.
 * Shape: a surrogate without its other half counts as U+FFFD, as in any UTF-8 encoder.
 * Source: FIPS 180-4, sections 4.1.2, 4.2.2, 5.3.3 and 6.2; names follow the standard.
 */
export function sha256Hex(text: string): string {
	const words = padded(text);
	const hash = Uint32Array.from(PRIMES.slice(0, 8), (prime) => fractionBits(Math.sqrt(prime)));
	const schedule = new Uint32Array(64);
	for (let block = 0; block < words.length; block += 16) {
		schedule.set(words.subarray(block, block + 16));
		extend(schedule);
		compress(hash, schedule);
	}
	return Array.from(hash, (word) => word.toString(16).padStart(8, '0')).join('');
}

const PRIMES = firstPrimes(64);
const K = Uint32Array.from(PRIMES, (prime) => fractionBits(Math.cbrt(prime)));

function extend(w: Uint32Array): void {
	for (let t = 16; t < 64; t++) {
		const w15 = at(w, t - 15);
		const w2 = at(w, t - 2);
		const s0 = rotr(w15, 7) ^ rotr(w15, 18) ^ (w15 >>> 3);
		const s1 = rotr(w2, 17) ^ rotr(w2, 19) ^ (w2 >>> 10);
		w[t] = s1 + at(w, t - 7) + s0 + at(w, t - 16);
	}
}

function compress(hash: Uint32Array, w: Uint32Array): void {
	let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = hash;
	for (let t = 0; t < 64; t++) {
		const s1 = rotr(e, 6) ^ rotr(e, 11) ^ rotr(e, 25);
		const t1 = h + s1 + ((e & f) ^ (~e & g)) + at(K, t) + at(w, t);
		const s0 = rotr(a, 2) ^ rotr(a, 13) ^ rotr(a, 22);
		const t2 = s0 + ((a & b) ^ (a & c) ^ (b & c));
		[h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0];
	}
	[a, b, c, d, e, f, g, h].forEach((word, i) => (hash[i] = at(hash, i) + word));
}

/** The message, a 1 bit, zeros, and its length in bits, as big-endian words in whole blocks of sixteen. */
function padded(text: string): Uint32Array {
	const bytes = utf8(text);
	const words = new Uint32Array(Math.ceil((bytes.length + 9) / 64) * 16);
	[...bytes, 0x80].forEach((byte, i) => (words[i >> 2] = at(words, i >> 2) | (byte << (24 - 8 * (i % 4)))));
	words[words.length - 2] = Math.floor((bytes.length * 8) / 2 ** 32);
	words[words.length - 1] = bytes.length * 8;
	return words;
}

function utf8(text: string): number[] {
	const bytes: number[] = [];
	for (const character of text) {
		const found = character.codePointAt(0) ?? 0;
		const code = found >= 0xd800 && found <= 0xdfff ? 0xfffd : found;
		if (code < 0x80) bytes.push(code);
		else if (code < 0x800) bytes.push(0xc0 | (code >> 6), tail(code));
		else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), tail(code >> 6), tail(code));
		else bytes.push(0xf0 | (code >> 18), tail(code >> 12), tail(code >> 6), tail(code));
	}
	return bytes;
}

function tail(code: number): number {
	return 0x80 | (code & 0x3f);
}

function rotr(word: number, by: number): number {
	return (word >>> by) | (word << (32 - by));
}

function at(words: Uint32Array, i: number): number {
	return words[i] ?? 0;
}

/** The first 32 bits of the part behind the point: how the standard makes its constants from primes. A double holds 50 of them. */
function fractionBits(n: number): number {
	return Math.floor((n % 1) * 2 ** 32);
}

function firstPrimes(count: number): number[] {
	const primes: number[] = [];
	for (let n = 2; primes.length < count; n++) if (primes.every((prime) => n % prime !== 0)) primes.push(n);
	return primes;
}
