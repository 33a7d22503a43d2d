import { beforeEach, describe, expect, it } from 'vitest';
import { offerAgain } from './log';
import { entry, freshStorage, Phone } from './testing/phone';
import { FakePractice, json, problem } from './testing/server';

let practice: FakePractice;
let phone: Phone;
const ids = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => entry(from + i).id);

beforeEach(async () => {
  freshStorage();
  practice = new FakePractice();
  phone = new Phone(practice);
  await phone.pair();
});

describe('sending', () => {
  it.each([
    ['too large by itself', problem(413, 'too-large')],
    ['too large by itself, as a proxy says it', new Response('<html>', { status: 413 })],
    ['a call that cannot be read', problem(400, 'repeated-name')],
    ['a call whose fields are not valid', problem(422, 'validation')],
  ])('an entry that makes every call fail (%s) is told of, kept, and stops nobody', async (_name, answer) => {
    await phone.log(1, 100);
    practice.poison.set(entry(37).id, answer);
    await phone.send();
    expect([...practice.stored.keys()]).toEqual([...ids(1, 36), ...ids(38, 100)]);
    const { events, kept } = await phone.state();
    expect(kept.sync.acknowledged).toBe(100);
    expect(kept.sync.refused).toMatchObject([{ id: entry(37).id, seq: 37, problem: { code: 'not-sent' } }]);
    expect(events[36]).toMatchObject(entry(37));
    expect(practice.calls.length).toBeLessThan(20);
    const calls = practice.calls.length;
    await phone.send();
    expect(practice.calls.slice(calls).map((call) => call.seqs)).toEqual([[]]);
  });

  it('an entry that could not be sent goes with the others once it can, when a person asks', async () => {
    await phone.log(1, 10);
    practice.poison.set(entry(4).id, problem(413, 'too-large'));
    await phone.send();
    practice.poison.clear();
    await offerAgain(phone.db);
    await phone.send();
    expect(practice.stored.size).toBe(10);
    expect((await phone.state()).kept.sync).toMatchObject({ acknowledged: 10, refused: [] });
  });

  it('an entry over which the practice itself fails is tried for ever, and those behind it are safe meanwhile', async () => {
    await phone.log(1, 100);
    practice.poison.set(entry(37).id, problem(500, 'internal'));
    for (let tries = 0; tries < 5; tries += 1) await phone.send();
    expect([...practice.stored.keys()]).toEqual([...ids(1, 36), ...ids(38, 100)]);
    expect(await phone.acknowledged()).toBe(36); // not one number more than the practice said
    expect([phone.connections.at(-1), phone.timers.length]).toEqual(['unreachable', 1]);
    practice.poison.clear();
    await phone.send();
    expect([practice.stored.size, await phone.acknowledged()]).toEqual([100, 100]);
  });

  it('a practice that fails over everything is not asked entry by entry', async () => {
    await phone.log(1, 100);
    practice.trouble = () => problem(500, 'internal');
    let asked = 0;
    const count = practice.fetch;
    practice.fetch = (...call) => ((asked += 1), count(...call));
    phone = new Phone(practice);
    for (let tries = 0; tries < 10; tries += 1) await phone.send();
    expect(asked).toBeLessThan(10 * 30);
    expect(await phone.acknowledged()).toBe(0);
    practice.trouble = () => null;
    await phone.send();
    expect(practice.stored.size).toBe(100);
  });

  it.each([
    ['breaks off in the middle', () => new Response(new ReadableStream({ start: (body) => { body.enqueue(new TextEncoder().encode('{"server_epoch":"e')); body.error(new TypeError('reset')); } }), { headers: { 'Content-Type': 'application/json' } })],
    ['is cut short', () => new Response('{"server_epoch":"epoch-1","acknowledged_through":3', { headers: { 'Content-Type': 'application/json' } })],
    ['is an old one of another moment', () => json({ server_epoch: 'epoch-1', server_time: '', acknowledged_through: 1, refused: [], changes: [], cursor: 0 })],
  ])('a reply that %s acknowledges nothing that the practice did not say', async (_name, answer) => {
    await phone.log(1, 3);
    let given = 0;
    practice.trouble = () => ((given += 1) === 1 ? answer() : 'lost-request');
    await phone.send();
    expect(await phone.acknowledged()).toBeLessThanOrEqual(1);
    practice.trouble = () => null;
    await phone.send();
    expect([practice.stored.size, await phone.acknowledged()]).toEqual([3, 3]);
  });

  it('a reply that takes too long is given up and asked for again with less', async () => {
    await phone.log(1, 40);
    let first = true;
    const real = practice.fetch;
    practice.fetch = (path, init) => (first ? ((first = false), Promise.reject(new DOMException('late', 'TimeoutError'))) : real(path, init));
    phone = new Phone(practice);
    await phone.send();
    expect(practice.calls.map((call) => call.seqs.length)).toEqual([20, 20]);
  });

  it('a practice that takes nothing at all, not even a stand-in, is asked again later, ever more seldom', async () => {
    await phone.log(1, 8);
    practice.trouble = () => problem(422, 'validation');
    await phone.send();
    expect([phone.connections.at(-1), await phone.acknowledged(), phone.timers[0]!.ms]).toEqual(['unreachable', 0, 500]);
    await phone.send();
    expect(phone.timers[0]!.ms).toBe(1000);
    practice.trouble = () => null;
    await phone.send();
    expect(practice.stored.size).toBe(8);
    expect((await phone.state()).kept.sync.refused).toEqual([]);
  });

  it('a practice that says "too many" gets everything later, when it said', async () => {
    await phone.log(1, 3);
    practice.trouble = () => problem(429, 'too-many', { 'Retry-After': '30' });
    await phone.send();
    expect([phone.timers[0]!.ms, (await phone.state()).events.length, await phone.acknowledged()]).toEqual([30_000, 3, 0]);
    practice.trouble = () => null;
    await phone.send();
    expect(practice.stored.size).toBe(3);
  });
});
