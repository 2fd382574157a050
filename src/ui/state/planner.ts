import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Answered, Asked, Said } from './messages.ts';
import planWorker from './plan-worker.ts?worker&url';
import { trustedWorker } from './trusted-worker.ts';

/** What is told while places are looked for, and when they are found. */
interface Listener {
	readonly onprogress: (nodes: number, marks: readonly Mark[] | undefined) => void;
	readonly onplanned: (answered: Answered) => void;
	readonly onfailed: (why: string) => void;
}

type SheetsAsked = Omit<Extract<Asked, { kind: 'pdf' }>, 'kind' | 'serial'>;

interface Waiting {
	readonly resolve: (bytes: Uint8Array<ArrayBuffer>) => void;
	readonly reject: (why: Error) => void;
}

/** The one Worker of the page. It looks for places for one case at a time; what it says about an older one is dropped. */
class Planner {
	private worker: Worker | undefined;
	private serial = 0;
	private listener: Listener | undefined;
	private listening = 0;
	private readonly sheets = new Map<number, Waiting>();

	/** Starts the Worker, once. */
	wake(): Worker {
		if (this.worker) return this.worker;
		const worker = trustedWorker(planWorker);
		worker.addEventListener('message', (event: MessageEvent<Said>) => {
			this.hear(event.data);
		});
		worker.addEventListener('error', (event) => {
			this.listener?.onfailed(event.message);
		});
		this.worker = worker;
		return worker;
	}

	/** Looks for places; whatever was looked for before is dropped. */
	plan(c: Case, listener: Listener): void {
		this.serial += 1;
		this.listening = this.serial;
		this.listener = listener;
		this.ask({ kind: 'plan', serial: this.serial, c });
	}

	/** The sheets as one PDF. */
	pdf(asked: SheetsAsked): Promise<Uint8Array<ArrayBuffer>> {
		this.serial += 1;
		const { serial } = this;
		return new Promise((resolve, reject) => {
			this.sheets.set(serial, { resolve, reject });
			this.ask({ kind: 'pdf', serial, ...asked });
		});
	}

	private ask(asked: Asked): void {
		this.wake().postMessage(asked);
	}

	private hear(said: Said): void {
		if (said.kind === 'ready') return;
		const waiting = this.sheets.get(said.serial);
		this.sheets.delete(said.serial);
		if (said.kind === 'pdf') waiting?.resolve(said.bytes);
		else if (waiting && said.kind === 'failed') waiting.reject(new Error(said.why));
		else if (said.serial === this.listening) this.tell(said);
	}

	private tell(said: Exclude<Said, { kind: 'ready' | 'pdf' }>): void {
		if (said.kind === 'progress') this.listener?.onprogress(said.nodes, said.marks);
		else if (said.kind === 'planned') this.listener?.onplanned(said);
		else this.listener?.onfailed(said.why);
	}
}

/** The planner of this page. */
export const planner = new Planner();
