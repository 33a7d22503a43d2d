/**
 * Keeps the draft: at once in this browser, soon after on the server. One write at a time; the newest content wins; a colleague's
 * draft is never overwritten without a word.
 */
import { signal } from '@preact/signals';
import { failureFrom, type Failure, type Reply } from '../api/request';
import { dropDraft, readDraft, saveDraft } from './calls';
import { same } from './same';
import type { Draft, DraftBody } from './types';
import type { UnsentStore } from './unsent';

export type Kept =
  | { state: 'nothing' }
  | { state: 'waiting' }
  | { state: 'kept'; at: Date }
  /** Only here until the server can be reached; `stored` false: not even that, this page must stay open. */
  | { state: 'browser'; at: Date; stored: boolean }
  | { state: 'refused'; detail: string }
  | { state: 'conflict'; theirs: Draft; etag: string | null };

/** Pause in typing after which the draft goes to the server; pause before another try. House values, milliseconds. */
export const KEEP_AFTER_MS = 900;
export const TRY_AGAIN_MS = 10_000;

export class Keeper {
  readonly status = signal<Kept>({ state: 'nothing' });
  /** Undefined: all is kept. Null: the draft is to be thrown away. */
  private wanted: DraftBody | null | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private running: Promise<void> | null = null;
  private stored = true;

  constructor(
    private readonly client: string,
    private readonly store: UnsentStore,
    private etag: string | null,
    keptAt: Date | null,
  ) {
    if (keptAt) this.status.value = { state: 'kept', at: keptAt };
  }

  /** Keep this from now on; null throws the draft away. */
  want(draft: DraftBody | null): void {
    if (draft === null && this.isEmpty()) return;
    this.wanted = draft;
    this.stored = this.store.keep({ draft, etag: this.etag, at: new Date().toISOString() });
    if (this.status.value.state === 'conflict') return; // a person decides first whose draft it is
    if (this.status.value.state !== 'browser') this.status.value = { state: 'waiting' };
    this.later(KEEP_AFTER_MS);
  }

  /** Send what waits now; resolves when nothing is under way any more. */
  async flush(): Promise<void> {
    clearTimeout(this.timer);
    if (this.wanted === undefined || this.status.value.state === 'conflict') return this.running ?? undefined;
    this.running ??= this.send().finally(() => (this.running = null));
    return this.running;
  }

  /** Nothing more is sent until something new is wanted; resolves when what is under way has ended. */
  async halt(): Promise<void> {
    clearTimeout(this.timer);
    await this.running;
    clearTimeout(this.timer);
  }

  /** The server has no draft any more: it was published. */
  published(): void {
    this.wanted = undefined;
    this.etag = null;
    this.store.clear();
    this.status.value = { state: 'nothing' };
  }

  /** Their draft has been seen: from here on the next write replaces it. */
  seen(etag: string | null): void {
    this.etag = etag;
    this.status.value = { state: 'waiting' };
    if (this.wanted !== undefined) this.later(0);
  }

  private isEmpty(): boolean {
    return this.wanted === undefined && this.etag === null && this.running === null;
  }

  private later(ms: number): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.flush(), ms);
  }

  private async send(): Promise<void> {
    try {
      while (this.wanted !== undefined && this.status.value.state !== 'conflict') await this.sendOne(this.wanted);
    } catch (error) {
      this.failed(failureFrom(error));
    }
  }

  private async sendOne(draft: DraftBody | null): Promise<void> {
    this.took(draft, draft ? await saveDraft(this.client, draft, this.etag) : (await dropDraft(this.client), null));
  }

  /** The server has this draft, or none any more. */
  private took(draft: DraftBody | null, reply: Reply<Draft> | null): void {
    this.etag = reply?.etag ?? null;
    if (this.wanted !== draft) return; // more was typed meanwhile
    this.wanted = undefined;
    this.store.clear();
    this.status.value = reply ? { state: 'kept', at: new Date(reply.data.saved_at) } : { state: 'nothing' };
  }

  /**
   * Whether the server has a draft that was not seen here. One that says just the same is this one: its answer was lost, by a page
   * that was left or a line that broke.
   */
  private async foundTheirs(draft: DraftBody | null): Promise<boolean> {
    const theirs = await readDraft(this.client);
    if (!theirs) return false;
    if (draft && same(theirs.data.content, draft.content) && theirs.data.base_number === draft.base_number) this.took(draft, theirs);
    else this.status.value = { state: 'conflict', theirs: theirs.data, etag: theirs.etag };
    return true;
  }

  private failed(failure: Failure): void {
    if (failure.kind === 'problem' && failure.problem.status === 412) return void this.lookAtTheirs();
    if (failure.kind === 'problem' && failure.problem.status < 500 && failure.retryAfterS === null) {
      this.status.value = { state: 'refused', detail: failure.problem.detail ?? failure.problem.title };
      return;
    }
    this.status.value = { state: 'browser', at: new Date(), stored: this.stored };
    this.later(TRY_AGAIN_MS);
  }

  private async lookAtTheirs(): Promise<void> {
    try {
      // Gone meanwhile: published or thrown away, so there is nothing of theirs to lose.
      if (!(await this.foundTheirs(this.wanted ?? null))) this.seen(null);
    } catch (error) {
      this.failed(failureFrom(error));
    }
  }
}
