/** The state of one program being edited: one immutable content with its history, and what the server knows of it. */
import { computed, effect, signal, untracked, type Signal } from '@preact/signals';
import type { ProgramContent } from '../../shared/program';
import type { LocalDate } from '../../shared/dates';
import type { Client } from '../api/types';
import type { Library } from '../exercises/entry';
import { Checker } from './checker';
import { firstFrom, shown, type Choice } from './choice';
import { freshKey, keysOf } from './edit';
import { apply, begin, redo, settle, undo, type History } from './history';
import { Keeper } from './keeper';
import type { Version } from './types';
import type { UnsentStore } from './unsent';

/** The published version that the draft was begun from. */
export type Base = Pick<Version, 'number' | 'content'>;
/** What was just done, to be heard. */
export interface Said {
  text: string;
  /** A button takes it back while the content is still this one; null: nothing to take back. */
  undoes: ProgramContent | null;
  /** Takes back what was done elsewhere than in the content. */
  takeBack?: () => void;
}

interface Start {
  client: Client;
  library: Library;
  today: LocalDate;
  base: Base | null;
  content: ProgramContent | null;
  /** Null while the server has no draft. */
  draft: { etag: string | null; at: Date } | null;
  store: UnsentStore;
}

const firstShown = (content: ProgramContent | null, today: LocalDate): Choice => ({ day: content ? (firstFrom(content, today)?.planned_id ?? null) : null, session: null });

export class Editor {
  readonly client: Signal<Client>;
  readonly library: Library;
  /** The client's calendar day. */
  readonly today: LocalDate;
  readonly base: Signal<Base | null>;
  readonly history: Signal<History<ProgramContent | null>>;
  readonly keeper: Keeper;
  readonly checker: Checker;
  readonly choice: Signal<Choice>;
  readonly said = signal<Said>({ text: '', undoes: null });
  /** Fields whose text is no number that fits, by id, with what they want. */
  readonly unreadable = signal<ReadonlyMap<string, string>>(new Map());
  /** A version that a colleague published meanwhile, while it is being compared. */
  readonly theirs = signal<Version | null>(null);

  constructor({ client, library, today, base, content, draft, store }: Start) {
    this.client = signal(client);
    this.library = library;
    this.today = today;
    this.base = signal(base);
    this.history = signal(begin(content));
    this.keeper = new Keeper(client.id, store, draft?.etag ?? null, draft?.at ?? null);
    this.checker = new Checker(client.id);
    this.choice = signal(firstShown(content, today));
  }

  readonly content = computed(() => this.history.value.present);
  readonly canUndo = computed(() => this.history.value.past.length > 0);
  readonly canRedo = computed(() => this.history.value.future.length > 0);
  readonly shown = computed(() => (this.content.value ? shown(this.content.value, this.choice.value) : { planned: null, session: null }));
  /** Number that the next published version will have. */
  readonly nextNumber = computed(() => (this.base.value?.number ?? 0) + 1);
  readonly changed = computed(() => this.content.value !== null && this.content.value !== this.base.value?.content);

  /** Follow the content: keep it, look it over. Answers what ends that. */
  run(): () => void {
    let first = true;
    return effect(() => {
      const content = this.content.value;
      untracked(() => {
        this.checker.want(content, first);
        if (!first) this.keep(content);
      });
      first = false;
    });
  }

  private keep(content: ProgramContent | null): void {
    const base = this.base.peek();
    const unchanged = content === null || content === base?.content;
    this.keeper.want(unchanged ? null : { content, base_number: base?.number ?? null });
  }

  /** Send again what waited in this browser from an earlier visit. */
  keepNow(): void {
    this.keep(this.content.peek());
  }

  /** One edit. Typing in the same `field` is one step of undo. */
  edit(change: (content: ProgramContent) => ProgramContent, field: string | null = null): void {
    const { present } = this.history.peek();
    if (present) this.replace(change(present), field);
  }

  /** The whole content anew, as one step; null for none. */
  replace(content: ProgramContent | null, field: string | null = null): void {
    this.step(apply(this.history.peek(), content, field));
  }

  settle = (): void => void (this.history.value = settle(this.history.peek()));
  undo = (): void => this.step(undo(this.history.peek()));
  redo = (): void => this.step(redo(this.history.peek()));

  /** Something else was done: what was said of the step before no longer holds. */
  private step(next: History<ProgramContent | null>): void {
    if (next.present !== this.content.peek()) this.said.value = { text: '', undoes: null };
    this.history.value = next;
  }

  /** Say what was done; `undo` with a button that takes it back: true by a step of the history, else by itself. */
  say(text: string, undo: boolean | (() => void) = false): void {
    const takeBack = typeof undo === 'function' ? { takeBack: undo } : {};
    this.said.value = { text, undoes: undo === true ? this.content.peek() : null, ...takeBack };
  }

  /** Keys in use, here and in the published version. */
  taken(): string[] {
    return [...keysOf(this.content.peek()), ...keysOf(this.base.peek()?.content ?? null)];
  }
  key = (prefix: 's' | 'p'): string => freshKey(prefix, this.taken());

  unreadableAt(id: string, wants: string | null): void {
    if ((this.unreadable.peek().get(id) ?? null) === wants) return;
    const next = new Map(this.unreadable.peek());
    if (wants === null) next.delete(id);
    else next.set(id, wants);
    this.unreadable.value = next;
  }

  /** A version is out: it is the new ground, and what was edited since it was sent stays a draft of the next one. */
  publishedAs(version: Version, sent: ProgramContent): void {
    this.base.value = version;
    this.keeper.published();
    if (this.content.peek() === sent) this.history.value = { ...this.history.peek(), present: version.content, open: null };
    else this.keepNow();
  }

  /** A newer version instead of what is shown, for whoever only reads it: nothing of theirs is lost, and nothing to be taken back. */
  show(version: Version): void {
    this.base.value = version;
    this.history.value = begin(version.content);
    if (this.choice.peek().day === null) this.choice.value = firstShown(version.content, this.today);
  }

  /** Go on from a colleague's version: with one's own content on top of it, or with theirs. Either way undo leads back. */
  goOnFrom(version: Version, take: 'mine' | 'theirs'): void {
    this.base.value = version;
    this.theirs.value = null;
    if (take === 'theirs') this.replace(version.content);
    else {
      this.keepNow();
      this.checker.want(this.content.peek(), true);
    }
  }
}
