/** What the app and its service worker agree on about drawings: the app fills the cache, the worker answers from it. */
export const DRAWINGS = 'steadfoot-drawings';
export const isDrawing = (url: URL): boolean => /^\/api\/v1\/exercises\/[^/]+\/figure\.svg$/.test(url.pathname);
