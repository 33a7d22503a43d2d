/** The phone app's words, English. Whole sentences, short, no blame; `{name}` is filled in. */
const en = {
  appName: 'Steadfoot',
  today: 'Today',
  notFoundTitle: 'This page is not here',
  notFoundText: 'The link may be old. Nothing you saved is lost.',
  goToToday: 'Go to today',
} as const;
export default en;
