/** What the app and its service worker agree on about drawings: the app fills the cache, the worker answers from it. */
export const DRAWINGS = 'steadfoot-drawings';
export const isDrawing = (url: URL): boolean => /^\/api\/v1\/exercises\/[^/]+\/figure\.svg$/.test(url.pathname);

/** Only moving drawings are kept; each holds its still one. */
export const movingOf = (address: string): string => address.replace('form=still', 'form=moving');

/**
 * A moving drawing without its movement: the pose that it rests in. The rules of the movement are the last of its style sheet,
 * behind the colors; a drawing without them is a still one already.
 */
export const stillOf = (moving: string): string => moving.replace(/g\{animation:.*?(?=<\/style>)/s, '');
