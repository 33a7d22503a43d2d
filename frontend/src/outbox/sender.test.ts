import { beforeEach, describe, expect, it } from 'vitest';
import { NO_FEED, type Feed } from './feed';
import { entry, freshStorage, Phone } from './testing/phone';
import { FakePractice, json, problem } from './testing/server';

let practice: FakePractice;
let phone: Phone;
const ids = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => entry(from + i).id);
const feed = async () => ({ ...NO_FEED, ...((await phone.state()).kept.feed as Partial<Feed>) });

beforeEach(async () => {
  freshStorage();
  practice = new FakePractice();
  phone = new Phone(practice);
  await phone.pair();
});

describe('sending', () => {
  it('brings every entry once, in batches of at most 500, packed', async () => {
    await phone.log(1, 1050);
    await phone.send();
    expect([...practice.stored.keys()]).toEqual(ids(1, 1050));
    expect(practice.calls.map((call) => call.seqs.length)).toEqual([500, 500, 50]);
    expect(practice.calls.every((call) => call.gzip)).toBe(true);
    expect(await phone.acknowledged()).toBe(1050);
    expect(phone.connections.at(-1)).toBe('ready');
  });

  it('sends an entry again after a lost reply, and it counts once', async () => {
    await phone.log(1, 3);
    practice.trouble = () => 'lost-reply';
    await phone.send();
    expect(await phone.acknowledged()).toBe(0);
    practice.trouble = () => null;
    await phone.send();
    expect(practice.stored.size).toBe(3);
    expect(await phone.acknowledged()).toBe(3);
  });

  it.each([
    ['a sign-in page', () => new Response('<html>', { status: 200, headers: { 'Content-Type': 'text/html' } })],
    ['a sign-in page that calls itself JSON', () => new Response('<html>', { headers: { 'Content-Type': 'application/json' } })],
    ['an empty object', () => json({})],
    ['a number as text', () => json({ server_epoch: 'e', acknowledged_through: '3', refused: [], changes: [], cursor: 0 })],
    ['nothing', () => new Response(null, { status: 204 })],
    ['a portal that says 401', () => new Response('log in', { status: 401 })],
    ['a portal that says 403', () => new Response('<html>', { status: 403 })],
    ['a server error', () => problem(500, 'internal')],
  ])('takes %s for no acknowledgement, and tries again later', async (_name, answer) => {
    await phone.log(1, 3);
    practice.trouble = answer;
    await phone.send();
    expect(await phone.acknowledged()).toBe(0);
    expect(phone.connections.at(-1)).toBe('unreachable');
    expect(phone.timers).toHaveLength(1);
    practice.trouble = () => null;
    phone.timers[0]!.run();
    await phone.send();
    expect(practice.stored.size).toBe(3);
  });

  it('halves a batch that is too large until it fits', async () => {
    await phone.log(1, 90);
    practice.maxEvents = 20;
    await phone.send();
    expect(practice.stored.size).toBe(90);
    expect(practice.calls.slice(0, 4).map((call) => call.seqs.length)).toEqual([90, 45, 22, 11]);
  });

  it('waits longer each time, and at least as long as it is asked to', async () => {
    await phone.log(1);
    practice.trouble = () => 'lost-request';
    const waits: number[] = [];
    for (let i = 0; i < 4; i += 1) {
      await phone.send();
      waits.push(phone.timers[0]!.ms);
    }
    expect(waits).toEqual([500, 1000, 2000, 4000]);
    practice.trouble = () => problem(503, 'busy', { 'Retry-After': '120' });
    await phone.send();
    expect(phone.timers[0]!.ms).toBe(120_000);
  });

  it('does not wake itself in the midst of a try', async () => {
    await phone.log(1);
    const wound: number[] = [];
    practice.trouble = () => {
      wound.push(phone.timers.length);
      if (wound.length === 1) void phone.send(); // an occasion meanwhile: there is a second try at once
      return 'lost-request';
    };
    await phone.send();
    expect(wound).toEqual([0, 0]);
  });

  it('keeps everything when the practice has unpaired the phone, and stops asking', async () => {
    await phone.log(1, 3);
    practice.devices.clear();
    await phone.send();
    expect(phone.connections.at(-1)).toBe('revoked');
    expect(phone.timers).toHaveLength(0);
    expect((await phone.state()).events).toHaveLength(3);
  });

  it('asks gently while the pairing is not confirmed', async () => {
    await phone.log(1);
    practice.trouble = () => problem(403, 'pairing-not-confirmed');
    await phone.send();
    expect(phone.connections.at(-1)).toBe('waiting');
    expect(phone.timers[0]!.ms).toBe(10_000);
    practice.trouble = () => null;
    await phone.send();
    expect(await phone.acknowledged()).toBe(1);
  });

  it('shows refused entries, counts them once, and goes on behind them', async () => {
    await phone.log(1, 5);
    practice.refuse.set(entry(2).id, 'unknown-field');
    await phone.send();
    const { kept } = await phone.state();
    expect(kept.sync.refused.map((item) => item.id)).toEqual([entry(2).id]);
    expect(kept.sync.acknowledged).toBe(5);
    expect(practice.stored.size).toBe(4);
  });

  it('comes back soon when another page of the phone is sending', async () => {
    phone.locked = true;
    await phone.log(1);
    await phone.send();
    expect(practice.calls).toHaveLength(0);
    expect(phone.timers[0]!.ms).toBe(10_000);
  });

  it('winds no timer while the page cannot be seen', async () => {
    phone.sender.setVisible(false);
    await phone.send();
    expect(phone.timers).toHaveLength(0);
  });
});

describe('a practice that went back in time', () => {
  it('gets everything again that its older backup does not hold', async () => {
    await phone.log(1, 10);
    await phone.send();
    const held = practice.devices.get('token-1')!;
    for (let n = 5; n <= 10; n += 1) {
      practice.stored.delete(entry(n).id);
      held.numbers.delete(n);
    }
    practice.epoch = 'epoch-2';
    await phone.send();
    expect(practice.stored.size).toBe(10);
    expect(await phone.acknowledged()).toBe(10);
  });

  it('is read again from the beginning when its epoch is new', async () => {
    practice.changes = [{ number: 1, kind: 'message', at: '', body: { id: 'm1', text: 'one' } }, { number: 2, kind: 'message', at: '', body: { id: 'm2', text: 'two' } }];
    await phone.send();
    practice.epoch = 'epoch-2';
    practice.changes = [{ number: 1, kind: 'message', at: '', body: { id: 'm3', text: 'three' } }, { number: 2, kind: 'message', at: '', body: { id: 'm2', text: 'two' } }];
    await phone.send();
    expect((await feed()).messages.map((message) => message.id).sort()).toEqual(['m1', 'm2', 'm3']);
  });
});

describe('a phone that was copied', () => {
  const copyOf = async () => {
    await phone.log(1, 3);
    await phone.send();
    practice.devices.get('token-1')!.numbers.set(4, 'id-of-the-other-phone').set(5, 'another-id');
  };

  it('takes numbers of its own when one is taken, and loses nothing', async () => {
    await copyOf();
    await phone.log(11, 13);
    await phone.send();
    expect([...practice.stored.keys()].sort()).toEqual([...ids(1, 3), ...ids(11, 13)]);
    const { kept } = await phone.state();
    expect(kept.device!.token).toBe('token-1+');
    expect(kept.sync).toMatchObject({ acknowledged: 6, refused: [] });
  });

  it('notices when the practice holds numbers it has not reached itself', async () => {
    await copyOf();
    await phone.send();
    await phone.log(11);
    await phone.send();
    expect(practice.stored.has(entry(11).id)).toBe(true);
    expect(await phone.acknowledged()).toBe(4);
  });

  it('tries again later when it gets no new numbers', async () => {
    await copyOf();
    await phone.log(11);
    practice.trouble = (path) => (path.endsWith('/successors') ? problem(503, 'busy') : null);
    await phone.send();
    expect(phone.connections.at(-1)).toBe('unreachable');
    expect(await phone.acknowledged()).toBe(3);
    practice.trouble = () => null;
    await phone.send();
    expect(practice.stored.has(entry(11).id)).toBe(true);
  });
});

describe('pairing again', () => {
  const again = { device_id: 'device-2', token: 'token-2' };
  beforeEach(() => practice.devices.set('token-2', { numbers: new Map() }));

  it('as the same person offers the whole log, and each entry counts once', async () => {
    await phone.log(1, 4);
    await phone.send();
    practice.devices.delete('token-1');
    await phone.log(5);
    await phone.send();
    const { kept } = await phone.state();
    await phone.pair({ ...kept.device!, ...again });
    await phone.send();
    expect(practice.stored.size).toBe(5);
    expect(await phone.acknowledged()).toBe(5);
  });

  it('as another person sets the log aside: not sent, not shown, not thrown away', async () => {
    await phone.log(1, 4);
    const { kept } = await phone.state();
    await phone.pair({ ...kept.device!, ...again, client_id: 'client-2', client_name: 'Sunniva' });
    await phone.send();
    expect(practice.stored.size).toBe(0);
    expect((await phone.state()).events).toEqual([]);
    const aside = await phone.db.read((tx) => tx.objectStore('keep').get('aside.2026-11-25T10:00:00Z'));
    expect(aside).toMatchObject({ events: [{ seq: 1 }, { seq: 2 }, { seq: 3 }, { seq: 4 }], kept: { device: { client_id: 'client-1' } } });
  });

  it('is not undone by a reply that was still on its way', async () => {
    await phone.log(1);
    practice.trouble = () => {
      void phone.pair({ device_id: 'device-2', token: 'token-2', client_id: 'client-1', client_name: 'Emil', practice_name: 'Thornwater', practitioner_name: 'Maren', pairing_id: 'p2', status: 'active', check_number: '1' });
      practice.trouble = () => null;
      return null;
    };
    await phone.send();
    expect((await phone.state()).kept.device!.device_id).toBe('device-2');
  });
});
