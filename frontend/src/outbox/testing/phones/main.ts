/**
 * Phones for a conductor in another process: commands come as lines of JSON on standard input, and what pages ask of the network
 * goes out as lines on standard output, with the commands' results. tests/sync/model conducts.
 */
import { createInterface } from 'node:readline';
import type { Event } from '../../events';
import { foldSessions } from '../../fold';
import { SURROUNDINGS, type Answer, type Build, type Page } from './page';
import { Phone, type Setting } from './phone';
import type { How } from './storage';

type Entries = Parameters<Page['outbox']['recordAll']>[0];
interface Command {
  call: number; do: string; phone: string; page: number; build: number; ms: number; setting: Setting; code: string;
  entries: Entries; id?: string; kill?: boolean; now?: number; ahead?: number; after: number; how: How; events: Event[];
}
type Line = Command | ({ reply: number } & Answer);

/** An open that another page blocks is given up after so long, ms (database.ts). */
const OPEN_WITHIN_MS = 5_000;
const phones = new Map<string, Phone>();
const asked = new Map<number, (answer: Answer) => void>();
let lastAsked = 0;

/** The app as it is, and as a newer build that wants a newer database. */
const source = (globalThis as unknown as { pageSource: string }).pageSource;
const buildOf = (text: string) => new Function(...SURROUNDINGS, `${text}; return outbox;`) as Build;
const builds = [buildOf(source), buildOf(source.replace('const VERSION = 1;', 'const VERSION = 2;'))];

const say = (value: unknown) => process.stdout.write(`${JSON.stringify(value)}\n`);

function network(page: Page, call: object): Promise<Answer> {
  lastAsked += 1;
  const [name] = [...phones].find(([, phone]) => phone === page.phone) ?? ['?'];
  say({ fetch: lastAsked, phone: name, page: page.phone.pages.indexOf(page), ...call });
  return new Promise((resolve) => asked.set(lastAsked, resolve));
}

/** Waits for a page's work; one that waits for nothing but the time an open may take is given that time, within reason. */
async function finished<T>(page: Page, work: Promise<T>): Promise<T> {
  let done = false;
  const settled = work.then(() => undefined, () => undefined).then(() => void (done = true));
  for (let tries = 0; tries < 6; tries += 1) {
    await Promise.race([settled, page.quiet()]);
    if (done || page.dead) return Promise.race([work, page.gone]);
    page.phone.pass(OPEN_WITHIN_MS);
  }
  throw new Error('the page waits, and nothing it waits for comes');
}

const looked = ({ outbox, dead }: Page) => ({
  dead, connection: outbox.connection.value, saved: outbox.savedCount.value, received: outbox.receivedCount.value,
  acknowledged: outbox.acknowledged.value, waiting_since: outbox.waitingSince.value, refused: outbox.refused.value.map((item) => item.id),
  unsendable: outbox.unsendable.value.map((item) => item.id),
  storage: outbox.storage.value, outdated: outbox.outdated.value, program: outbox.program.value?.number ?? null,
  messages: outbox.messages.value.map((message) => message.id), client: outbox.device.value?.client_name ?? null,
  ids: outbox.events.value.map((event) => event.id),
});

async function pair(page: Page, code: string): Promise<void> {
  await page.outbox.acceptPairing(await page.outbox.askPairing(code));
  await page.quiet();
}

async function record(page: Page, { entries, id, kill }: Command): Promise<unknown> {
  if (id) page.phone.repeat(id);
  const stored = await page.outbox.recordAll(entries);
  if (kill) page.die();
  return stored;
}

async function open(phone: Phone, build: number): Promise<unknown> {
  const page = phone.open(builds[build] as Build, network);
  await finished(page, page.outbox.start()).catch(() => undefined);
  await page.quiet();
  return phone.pages.length - 1;
}

async function pass(phone: Phone, ms: number): Promise<void> {
  phone.pass(ms);
  await Promise.all(phone.pages.map((page) => page.quiet()));
}

const DOING: Record<string, (phone: Phone, command: Command, page: Page) => unknown> = {
  open: (phone, { build }) => open(phone, build),
  record: (_phone, command, page) => finished(page, record(page, command)),
  send: (_phone, _command, page) => finished(page, page.outbox.sendNow()),
  try_again: (_phone, _command, page) => finished(page, page.outbox.tryAgain()),
  pair: (_phone, { code }, page) => finished(page, pair(page, code)),
  pass: (phone, { ms }) => pass(phone, ms),
  set: (phone, { now, ahead }) => void Object.assign(phone, now !== undefined && { now }, ahead !== undefined && { ahead }),
  close: (phone, _command, page) => (page.die(), phone.still()),
  freeze: (_phone, _command, page) => void (page.frozen = true),
  fault: (_phone, { after, how }, page) => void (page.fault = { after, how }),
  cut: (phone) => phone.cut(),
  contents: async (phone) => (await phone.committed(), phone.contents()),
  look: (_phone, _command, page) => looked(page),
};

async function reset(): Promise<void> {
  for (const phone of phones.values()) await phone.off();
  phones.clear();
}

/** Another storage under an old name is another phone: the old one's pages are gone. */
async function switchOn({ phone, setting }: Command): Promise<void> {
  await phones.get(phone)?.off();
  phones.set(phone, await Phone.make(setting));
}

async function run(command: Command): Promise<unknown> {
  if (command.do === 'reset') return reset();
  if (command.do === 'fold') return foldSessions(command.events);
  if (command.do === 'phone') return switchOn(command);
  const phone = phones.get(command.phone) as Phone;
  return DOING[command.do]?.(phone, command, phone.pages[command.page] as Page);
}

async function answer(command: Command): Promise<void> {
  try {
    say({ done: command.call, value: (await run(command)) ?? null });
  } catch (error) {
    const { name, message } = error as Error;
    say({ done: command.call, error: message === 'killed' ? 'killed' : name, message });
  }
}

createInterface({ input: process.stdin }).on('line', (text) => {
  const line = JSON.parse(text) as Line;
  if (!('reply' in line)) return void answer(line);
  asked.get(line.reply)?.(line);
  asked.delete(line.reply);
}).on('close', () => process.exit());
