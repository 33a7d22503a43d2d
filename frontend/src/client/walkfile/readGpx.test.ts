import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FILE_MAX_BYTES } from '../../sw/shared';
import { readWalkFile, walkOf, WalkUnreadable } from './readGpx';

const folder = new URL('../../../../tests/vectors/', import.meta.url);
const vectors = JSON.parse(readFileSync(new URL('gpx_walks.json', folder), 'utf8')) as Record<string, { distance_km: number; ascent_m: number; descent_m: number }>;
const gpx = (points: string) => `<gpx version="1.1"><trk><trkseg>${points}</trkseg></trk></gpx>`;
const point = (lat: string, more = '') => `<trkpt lon="13" lat="${lat}">${more}</trkpt>`;
const at = (lat: string, time: string) => point(lat, `<time>${time}</time>`);
const fault = (text: string): unknown => {
  try {
    return walkOf(text);
  } catch (error) {
    return error instanceof WalkUnreadable ? error.fault : error;
  }
};

describe('a recorded walk', () => {
  it.each(Object.keys(vectors))('says of %s what the practice says', (name) => {
    const read = walkOf(readFileSync(new URL(`gpx/${name}`, folder), 'utf8'));
    for (const key of ['distance_km', 'ascent_m', 'descent_m'] as const) expect(read[key]).toBeCloseTo(vectors[name]?.[key] ?? NaN, 6);
  });
  it('takes its minutes and its start from the times, and not across a gap', () => {
    const text = gpx(`${at('46', '2027-05-01T07:00:00Z')}${at('46.01', '2027-05-01T07:30:00Z')}</trkseg><trkseg>${at('46.01', '2027-05-01T09:00:00Z')}${at('46.02', '2027-05-01T09:15:00Z')}`);
    expect(walkOf(text)).toMatchObject({ minutes: 45, startedAt: new Date('2027-05-01T07:00:00Z') });
  });
  it('does not count time that runs backwards', () => {
    expect(walkOf(gpx(at('46', '2027-05-01T07:30:00Z') + at('46.01', '2027-05-01T07:00:00Z'))).minutes).toBeNull();
  });
  it('says what it does not know', () => {
    expect(walkOf(gpx(point('46', '<ele/>') + point('46.01', '<extensions><ele>9</ele></extensions>')))).toMatchObject({ ascent_m: null, descent_m: null, minutes: null, startedAt: null });
  });
  it('refuses what is no walk, with the reason', () => {
    const two = point('46') + point('46.01');
    expect([fault(''), fault('<html/>'), fault(`<!DOCTYPE gpx>${gpx(two)}`)]).toEqual(['not_gpx', 'not_gpx', 'not_gpx']);
    expect([fault(gpx(point('nan') + point('46'))), fault(gpx(point('95') + point('46'))), fault(gpx('<trkpt/>'))]).toEqual(['nowhere', 'nowhere', 'nowhere']);
    expect([fault(gpx('')), fault(gpx(point('46') + point('46'))), fault(gpx(point('46') + point('50')))]).toEqual(['no_way', 'no_way', 'no_way']);
  });
  it('reads a file of unclosed points in one pass', () => {
    const began = performance.now();
    expect(fault(`<gpx><trkseg>${'<trkpt lat="46" lon="13">'.repeat(200_000)}`)).toBe('no_way');
    expect(fault(`<gpx>${'<trkpt '.repeat(200_000)}`)).toBe('no_way');
    expect(performance.now() - began).toBeLessThan(4000);
  });
  it('refuses a file larger than any walk before it reads it', async () => {
    await expect(readWalkFile({ size: FILE_MAX_BYTES + 1 } as Blob)).rejects.toMatchObject({ fault: 'too_large' });
  });
});
